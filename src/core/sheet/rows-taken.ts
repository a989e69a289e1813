import { boundsOfPolyline } from '../math/index.ts';
import { ROW, type SheetRows } from '../pattern/index.ts';
import { clipPolygon } from './clip-polygon.ts';
import type { Rectangle } from './clip-polyline.ts';

/**
 * What a part of an outline (closed, n × 2) takes up of one cell, row by row, counted from `gap` inside the cell's upper left corner: from
 * its leftmost to its rightmost point in each row. Empty where the outline does not reach into the cell.
 */
export function rowsTaken(outline: Float64Array, cell: Rectangle, gap: number): SheetRows {
  const rows: SheetRows = [];
  for (const part of clipPolygon(outline, cell)) {
    const { minY, maxY } = boundsOfPolyline(part);
    const [first, last] = [minY, maxY].map((y) => Math.max(0, Math.floor((y - cell.minY - gap) / ROW)));
    for (let row = first; row <= last; row++) {
      const top = cell.minY + gap + row * ROW;
      // The first row holds also what lies above it, which no shape can reach.
      const band = clipPolygon(part, { ...cell, minY: row === 0 ? cell.minY : top, maxY: top + ROW });
      for (const piece of band) {
        const { minX, maxX } = boundsOfPolyline(piece);
        takeRow(rows, row, minX - cell.minX - gap, maxX - cell.minX - gap);
      }
    }
  }
  return fillGaps(rows);
}

/** Takes a rectangle of the cell as well. */
export function takeOfRows(rows: SheetRows, box: Rectangle, cell: Rectangle, gap: number): void {
  const first = Math.max(0, Math.floor((box.minY - cell.minY - gap) / ROW));
  const last = Math.floor((box.maxY - cell.minY - gap) / ROW);
  for (let row = first; row <= last; row++)
    takeRow(rows, row, box.minX - cell.minX - gap, box.maxX - cell.minX - gap);
  fillGaps(rows);
}

function takeRow(rows: SheetRows, row: number, from: number, to: number): void {
  rows[row] ??= [];
  rows[row].push({ from, to });
}

function fillGaps(rows: SheetRows): SheetRows {
  for (let row = 0; row < rows.length; row++) rows[row] ??= [];
  return rows;
}

import { measureText, TEXT_ASCENT, TEXT_DESCENT } from '../drawing/index.ts';
import { type CellGrid, findFreeRectangle, sumCells } from './free-space.ts';
import type { PieceText } from './types.ts';

const SIZES = [8, 7, 6, 5, 4.5, 4, 3.5, 3, 2.5];
/** The first row, the piece's name, is this much larger. */
const TITLE_SCALE = 1.4;
const LINE_HEIGHT = 1.3;

export interface PlacedLabel {
  readonly texts: readonly PieceText[];
  /** Font size reached, mm. */
  readonly size: number;
  /** Index of the wording used; the last is the shortest. */
  readonly wording: number;
}

/**
 * The largest label that fits into free cells, upright or turned along the piece, nearest to (x, y). `wordings`
 * are tried in order at each size; the last one, the shortest, only when none of the others fits at any size.
 * Null when nothing legible fits. Cost: O(cells) per size, wording and direction.
 */
export function placeLabel(
  grid: CellGrid,
  wordings: readonly (readonly string[])[],
  x: number,
  y: number,
): PlacedLabel | null {
  const sums = sumCells(grid);
  const attempts = [wordings.slice(0, -1).map((_, i) => i), [wordings.length - 1]];
  for (const indices of attempts) {
    for (const size of SIZES) {
      for (const wording of indices) {
        const rows = wordings[wording];
        const { width, height } = measureBlock(rows, size);
        for (const isTurned of [false, true]) {
          const place = isTurned
            ? findFreeRectangle(grid, sums, height, width, x, y)
            : findFreeRectangle(grid, sums, width, height, x, y);
          if (place) return { texts: writeRows(rows, size, place, isTurned, width, height), size, wording };
        }
      }
    }
  }
  return null;
}

function sizeOfRow(row: number, size: number): number {
  return row === 0 ? size * TITLE_SCALE : size;
}

function measureBlock(rows: readonly string[], size: number): { width: number; height: number } {
  let width = 0;
  let height = 0;
  rows.forEach((row, i) => {
    width = Math.max(width, measureText(row, sizeOfRow(i, size)));
    height += sizeOfRow(i, size) * (i === rows.length - 1 ? TEXT_ASCENT + TEXT_DESCENT : LINE_HEIGHT);
  });
  return { width, height };
}

function writeRows(
  rows: readonly string[],
  size: number,
  centre: { x: number; y: number },
  isTurned: boolean,
  width: number,
  height: number,
): PieceText[] {
  let top = height / 2;
  return rows.map((text, i) => {
    const rowSize = sizeOfRow(i, size);
    const baseline = top - TEXT_ASCENT * rowSize;
    top -= rowSize * LINE_HEIGHT;
    const start = -width / 2;
    return {
      x: centre.x + (isTurned ? -baseline : start),
      y: centre.y + (isTurned ? start : baseline),
      text,
      size: rowSize,
      anchor: 'start',
      angle: isTurned ? Math.PI / 2 : 0,
    };
  });
}

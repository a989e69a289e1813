import { letterOf } from '../base/index.ts';
import type { Drawing, DrawingPath } from '../drawing/index.ts';
import { boundsOfPoints, clamp, isInsidePolygon } from '../math/index.ts';
import { clipPolyline, type Rectangle } from './clip-polyline.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { CellWords, Division, Joint, Tile } from './types.ts';

/** A drawing may be larger than its cells by this much without needing another one, mm. */
const SLACK = 1e-6;

/**
 * Divides a drawing into the grid's cells and finds which hold something, which borders are crossed by a line (only
 * those pages are joined) and so which pages belong together. Pages run down the columns, or block by block. O(points + cells · outlines).
 */
export function divideDrawing(
  drawing: Drawing,
  grid: TileGrid,
  { captionOf = () => '', blockOf, nameByNumber }: Omit<CellWords, 'say'> = {},
): Division {
  const columns = Math.max(1, Math.ceil((drawing.width - SLACK) / grid.cellWidth));
  const rows = Math.max(1, Math.ceil((drawing.height - SLACK) / grid.cellHeight));
  const paths = drawing.layers.flatMap(({ items }) => items.filter((item) => item.kind === 'path'));
  const outlines = paths.filter((path) => path.closed);
  const cellOf = (column: number, row: number): Rectangle => ({
    minX: column * grid.cellWidth,
    minY: row * grid.cellHeight,
    maxX: (column + 1) * grid.cellWidth,
    maxY: (row + 1) * grid.cellHeight,
  });

  // 1. Cells with a line in them, or wholly inside an outline.
  const used = new Set<number>();
  for (const path of paths) {
    const bounds = boundsOfPoints([path.points]);
    if (!bounds) continue;
    const [c0, c1] = rangeOf(bounds.minX, bounds.maxX, grid.cellWidth, columns);
    const [r0, r1] = rangeOf(bounds.minY, bounds.maxY, grid.cellHeight, rows);
    for (let c = c0; c <= c1; c++) {
      for (let r = r0; r <= r1; r++) {
        if (used.has(c * rows + r)) continue;
        const isCrossed = clipPolyline(path.points, path.closed, cellOf(c, r)).length > 0;
        if (isCrossed || isCentreInside(path, cellOf(c, r))) used.add(c * rows + r);
      }
    }
  }
  const placeOf = (key: number): [number, number] => [Math.floor(key / rows), key % rows];
  const order = (a: number, b: number): number => {
    const [[ca, ra], [cb, rb]] = [placeOf(a), placeOf(b)];
    return blockOf ? blockOf(ca, ra) - blockOf(cb, rb) || ra - rb || ca - cb : a - b;
  };
  const indexOf = new Map([...used].sort(order).map((key, index) => [key, index]));

  // 2. Joints, and the groups they make.
  const joints: Joint[] = [];
  const group = Array.from({ length: indexOf.size }, (_, i) => i);
  for (const [key, first] of indexOf) {
    const [c, r] = placeOf(key);
    for (const isUpright of [true, false]) {
      const isLast = isUpright ? c + 1 === columns : r + 1 === rows;
      const second = isLast ? undefined : indexOf.get(isUpright ? key + rows : key + 1);
      if (second === undefined || !isBorderCrossed(paths, outlines, cellOf(c, r), isUpright)) continue;
      joints.push({ number: joints.length + 1, first, second, isUpright });
      const [from, to] = [group[second], group[first]];
      for (let i = 0; i < group.length; i++) if (group[i] === from) group[i] = to;
    }
  }

  // 3. What each page shows: its cell, and a strip beyond each joint that another page is laid on.
  const nameCell = createNamer(blockOf, nameByNumber !== undefined);
  const tiles = [...indexOf].map(([key, index]): Tile => {
    const [column, row] = placeOf(key);
    const cell = cellOf(column, row);
    const own = joints.filter(({ first }) => first === index);
    const right = own.some(({ isUpright }) => isUpright) ? grid.overlap : 0;
    const below = own.some(({ isUpright }) => !isUpright) ? grid.overlap : 0;
    const name = nameCell(column, row, index);
    return {
      name,
      words: nameByNumber?.(name) ?? name,
      column,
      row,
      cell,
      shown: { ...cell, maxX: cell.maxX + right, maxY: cell.maxY + below },
      group: group[index],
      caption: captionOf(column, row),
    };
  });
  return { grid, columns, rows, tiles, joints };
}

/** Names of cells in the order of pages: their number, or letter of block or column and a number. */
function createNamer(
  blockOf: CellWords['blockOf'],
  isByNumber: boolean,
): (column: number, row: number, index: number) => string {
  const counts = new Map<number, number>();
  return (column, row, index) => {
    if (isByNumber) return `${index + 1}`;
    if (!blockOf) return `${letterOf(column)}${row + 1}`;
    const block = blockOf(column, row);
    counts.set(block, (counts.get(block) ?? 0) + 1);
    return `${letterOf(block)}${counts.get(block)}`;
  };
}

function rangeOf(min: number, max: number, size: number, count: number): [number, number] {
  return [clamp(Math.floor(min / size), 0, count - 1), clamp(Math.floor(max / size), 0, count - 1)];
}

function isCentreInside(path: DrawingPath, { minX, minY, maxX, maxY }: Rectangle): boolean {
  return path.closed && isInsidePolygon(path.points, (minX + maxX) / 2, (minY + maxY) / 2);
}

/** Whether a line passes from the cell to its right (upright border) or lower neighbour, or an outline holds the border. */
function isBorderCrossed(
  paths: readonly DrawingPath[],
  outlines: readonly DrawingPath[],
  cell: Rectangle,
  isUpright: boolean,
): boolean {
  const at = isUpright ? cell.maxX : cell.maxY;
  const [low, high] = isUpright ? [cell.minY, cell.maxY] : [cell.minX, cell.maxX];
  const across = isUpright ? 0 : 1;
  for (const { points, closed } of paths) {
    const count = points.length / 2;
    for (let i = 0; i < (closed ? count : count - 1); i++) {
      const j = (i + 1) % count;
      const a = points[2 * i + across] - at;
      const b = points[2 * j + across] - at;
      if (!(a < 0 && b > 0) && !(a > 0 && b < 0) && a !== 0) continue;
      const t = a === b ? 0 : a / (a - b);
      const along =
        points[2 * i + 1 - across] + t * (points[2 * j + 1 - across] - points[2 * i + 1 - across]);
      if (along >= low && along <= high) return true;
    }
  }
  const middle = (low + high) / 2;
  return outlines.some(({ points }) =>
    isUpright ? isInsidePolygon(points, at, middle) : isInsidePolygon(points, middle, at),
  );
}

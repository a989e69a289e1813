import { boundsOfPolyline, isInsidePolygon } from '../math/index.ts';
import { isBoxNearBox, isBoxNearLine, type TurnedBox } from './text-box.ts';
import { widestFree } from './widest-free.ts';

/** What a text must keep away from: lines and boxes already taken. Grows while a piece is lettered. */
export interface Taken {
  /** The sew outline (n × 2): what is inside the piece. */
  readonly ring: Float64Array;
  readonly lines: { readonly points: Float64Array; readonly closed: boolean; readonly clearance: number }[];
  readonly boxes: TurnedBox[];
}

/** True when the box keeps its clearance from every line and `gap` mm from every box. O(total points). */
export function isBoxFree(taken: Taken, box: TurnedBox, gap: number): boolean {
  for (const other of taken.boxes) if (isBoxNearBox(box, other, gap)) return false;
  for (const line of taken.lines) {
    if (isBoxNearLine(box, line.points, line.closed, line.clearance)) return false;
  }
  return true;
}

/** The inside of a piece in square cells; 1 = taken. Row 0 is the lowest. */
export interface CellGrid {
  readonly left: number;
  readonly bottom: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly taken: Uint8Array;
}

/** Cells wholly inside the ring (n × 2) and at least `clearance` from it are free. O(cells + n·clearance). */
export function createCellGrid(ring: Float64Array, cell: number, clearance: number): CellGrid {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(ring);
  const columns = Math.max(1, Math.ceil((maxX - minX) / cell));
  const rows = Math.max(1, Math.ceil((maxY - minY) / cell));
  const grid = {
    left: minX,
    bottom: minY,
    cell,
    columns,
    rows,
    taken: new Uint8Array(columns * rows).fill(1),
  };
  crossingsByRow(ring, minY, cell, rows).forEach((crossings, row) => {
    crossings.sort((p, q) => p - q);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const from = Math.max(0, Math.ceil((crossings[k] - minX) / cell - 0.5));
      const to = Math.min(columns - 1, Math.floor((crossings[k + 1] - minX) / cell - 0.5));
      grid.taken.fill(0, row * columns + from, row * columns + Math.max(from, to + 1));
    }
  });
  takeLine(grid, ring, true, clearance);
  return grid;
}

/** Where the closed ring crosses the middle of each row, x in mm, in no order. O(n + crossings). */
function crossingsByRow(ring: Float64Array, bottom: number, cell: number, rows: number): number[][] {
  const found: number[][] = Array.from({ length: rows }, () => []);
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [x0, y0, x1, y1] = [ring[i], ring[i + 1], ring[j], ring[j + 1]];
    // One row more at either end: the comparison below decides, as rounding must not.
    const first = Math.max(0, Math.floor((Math.min(y0, y1) - bottom) / cell - 0.5) - 1);
    const last = Math.min(rows - 1, Math.ceil((Math.max(y0, y1) - bottom) / cell - 0.5) + 1);
    for (let row = first; row <= last; row++) {
      const y = bottom + (row + 0.5) * cell;
      if (y0 > y !== y1 > y) found[row].push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
    }
  }
  return found;
}

/** Takes every cell any part of which is nearer than `clearance` to the polyline. */
export function takeLine(grid: CellGrid, points: Float64Array, closed: boolean, clearance: number): void {
  const count = points.length / 2;
  for (let i = closed ? 0 : 1, j = closed ? count - 1 : 0; i < count; j = i++) {
    takeNear(grid, points[2 * j], points[2 * j + 1], points[2 * i], points[2 * i + 1], clearance);
  }
}

/** Takes every cell any part of which is nearer than `clearance` to the box. */
export function takeBox(grid: CellGrid, box: TurnedBox, clearance: number): void {
  const half = grid.cell * Math.SQRT1_2 + clearance;
  const reach = Math.hypot(box.width, box.height) / 2 + half;
  forCells(grid, box.x - reach, box.y - reach, box.x + reach, box.y + reach, (x, y, index) => {
    const dx = x - box.x;
    const dy = y - box.y;
    const along = Math.abs(dx * Math.cos(box.angle) + dy * Math.sin(box.angle)) - box.width / 2;
    const up = Math.abs(dy * Math.cos(box.angle) - dx * Math.sin(box.angle)) - box.height / 2;
    if (Math.hypot(Math.max(0, along), Math.max(0, up)) <= half) grid.taken[index] = 1;
  });
}

/** Takes every cell whose middle is inside the closed outline, or that is nearer than `clearance` to it. */
export function takeInside(grid: CellGrid, ring: Float64Array, clearance: number): void {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(ring);
  forCells(grid, minX, minY, maxX, maxY, (x, y, index) => {
    if (isInsidePolygon(ring, x, y)) grid.taken[index] = 1;
  });
  takeLine(grid, ring, true, clearance);
}

function takeNear(grid: CellGrid, ax: number, ay: number, bx: number, by: number, clearance: number): void {
  const half = grid.cell * Math.SQRT1_2 + clearance;
  const reach = half * half;
  const dx = bx - ax;
  const dy = by - ay;
  const squared = dx * dx + dy * dy;
  const [fromRow, toRow] = rowsBetween(grid, Math.min(ay, by) - half, Math.max(ay, by) + half);
  const [fromColumn, toColumn] = columnsBetween(grid, Math.min(ax, bx) - half, Math.max(ax, bx) + half);
  // Most of the time of lettering is spent here: no call per cell.
  for (let row = fromRow; row <= toRow; row++) {
    const y = grid.bottom + (row + 0.5) * grid.cell - ay;
    for (let column = fromColumn; column <= toColumn; column++) {
      const x = grid.left + (column + 0.5) * grid.cell - ax;
      const t = squared === 0 ? 0 : Math.min(1, Math.max(0, (x * dx + y * dy) / squared));
      const ex = t * dx - x;
      const ey = t * dy - y;
      if (ex * ex + ey * ey <= reach) grid.taken[row * grid.columns + column] = 1;
    }
  }
}

function columnsBetween(grid: CellGrid, minX: number, maxX: number): readonly [number, number] {
  const from = Math.max(0, Math.floor((minX - grid.left) / grid.cell));
  return [from, Math.min(grid.columns - 1, Math.floor((maxX - grid.left) / grid.cell))];
}

function rowsBetween(grid: CellGrid, minY: number, maxY: number): readonly [number, number] {
  const from = Math.max(0, Math.floor((minY - grid.bottom) / grid.cell));
  return [from, Math.min(grid.rows - 1, Math.floor((maxY - grid.bottom) / grid.cell))];
}

function forCells(
  grid: CellGrid,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
  visit: (x: number, y: number, index: number) => void,
): void {
  const [fromRow, toRow] = rowsBetween(grid, minY, maxY);
  const [fromColumn, toColumn] = columnsBetween(grid, minX, maxX);
  for (let row = fromRow; row <= toRow; row++) {
    for (let column = fromColumn; column <= toColumn; column++) {
      const x = grid.left + (column + 0.5) * grid.cell;
      const y = grid.bottom + (row + 0.5) * grid.cell;
      visit(x, y, row * grid.columns + column);
    }
  }
}

/** What is known of the free rectangles of a grid: taken cells summed up, and how wide the free ones of each height are. */
export interface FreeRoom {
  readonly sums: Uint32Array;
  readonly widest: Uint32Array;
}

/** Made once for many searches in the same grid. O(cells). */
export function measureFreeRoom(grid: CellGrid): FreeRoom {
  return { sums: sumCells(grid), widest: widestFree(grid.taken, grid.columns, grid.rows) };
}

/**
 * Summed-area table of the taken cells (Crow, SIGGRAPH 1984), (rows + 1) × (columns + 1): any rectangle is
 * then tested in O(1).
 */
function sumCells(grid: CellGrid): Uint32Array {
  const width = grid.columns + 1;
  const sums = new Uint32Array(width * (grid.rows + 1));
  for (let row = 0; row < grid.rows; row++) {
    let running = 0;
    for (let column = 0; column < grid.columns; column++) {
      running += grid.taken[row * grid.columns + column];
      sums[(row + 1) * width + column + 1] = sums[row * width + column + 1] + running;
    }
  }
  return sums;
}

/**
 * Centre of a free upright rectangle (mm) whose centre is nearest to (x, y), or null. O(1) when none is large enough, else
 * O(cells).
 */
export function findFreeRectangle(
  grid: CellGrid,
  { sums, widest }: FreeRoom,
  width: number,
  height: number,
  x: number,
  y: number,
): { x: number; y: number } | null {
  const across = Math.ceil(width / grid.cell);
  const up = Math.ceil(height / grid.cell);
  if (up > grid.rows || across > widest[up]) return null;
  const stride = grid.columns + 1;
  let best: { x: number; y: number } | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (let row = 0; row + up <= grid.rows; row++) {
    const cy = grid.bottom + (row + up / 2) * grid.cell;
    if (Math.abs(cy - y) >= bestDistance) continue;
    for (let column = 0; column + across <= grid.columns; column++) {
      const cx = grid.left + (column + across / 2) * grid.cell;
      if (Math.abs(cx - x) >= bestDistance) continue;
      const low = row * stride + column;
      const high = (row + up) * stride + column;
      if (sums[high + across] - sums[high] - sums[low + across] + sums[low] > 0) continue;
      const distance = Math.hypot(cx - x, cy - y);
      if (distance < bestDistance) {
        best = { x: cx, y: cy };
        bestDistance = distance;
      }
    }
  }
  return best;
}

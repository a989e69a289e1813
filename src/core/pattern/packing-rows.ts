import { boundsOfPolyline, clamp } from '../math/index.ts';

/** Height of the rows in which outlines are compared, mm. Pieces come to lie at multiples of it. */
export const ROW = 4;

/** Per row of a sheet the stretches that are taken, mm from its left. */
export type SheetRows = { readonly from: number; readonly to: number }[][];

/** An outline as the stretch it takes up in each row. */
export interface Shape {
  readonly minX: number;
  readonly minY: number;
  readonly width: number;
  readonly height: number;
  /** Left and right end of the outline in each row, from minX (rows × 2). */
  readonly own: Float64Array;
  /** The same grown by the gap; its first row lies `grownBefore` rows above the outline's own first. */
  readonly grown: Float64Array;
  readonly grownBefore: number;
}

/** The rows of an outline (closed, n × 2 mm), and of the same grown by the gap. O(points + rows). */
export function rowsOf(points: Float64Array, gap: number): Shape {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(points);
  const count = Math.max(1, Math.ceil((maxY - minY) / ROW));
  const before = Math.ceil(gap / ROW);
  return {
    minX,
    minY,
    width: maxX - minX,
    height: maxY - minY,
    own: measureRows(points, minX, minY, count, 0),
    grown: measureRows(points, minX, minY - before * ROW, count + 2 * before, gap),
    grownBefore: before,
  };
}

/** Ends of the outline within each row of height ROW from `top` down, rows and ends widened by `gap`. */
function measureRows(
  points: Float64Array,
  left: number,
  top: number,
  count: number,
  gap: number,
): Float64Array {
  const rows = new Float64Array(2 * count);
  for (let row = 0; row < count; row++)
    rows.set([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY], 2 * row);
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [points[j] - left, points[j + 1] - top, points[i] - left, points[i + 1] - top];
    const first = Math.max(0, Math.floor((Math.min(ay, by) - gap) / ROW));
    const last = Math.min(count - 1, Math.floor((Math.max(ay, by) + gap) / ROW));
    for (let row = first; row <= last; row++) {
      for (const y of [row * ROW - gap, (row + 1) * ROW + gap]) {
        const t = ay === by ? 0 : clamp((y - ay) / (by - ay), 0, 1);
        const x = ax + t * (bx - ax);
        rows[2 * row] = Math.min(rows[2 * row], x - gap, ay === by ? bx - gap : x - gap);
        rows[2 * row + 1] = Math.max(rows[2 * row + 1], x + gap, ay === by ? bx + gap : x + gap);
      }
    }
  }
  return rows;
}

/** The leftmost x at which the shape is clear of everything in its rows, or null. */
export function findLeft(shape: Shape, row: number, sheet: SheetRows, room: number): number | null {
  let x = 0;
  for (let isMoved = true; isMoved; ) {
    isMoved = false;
    for (let r = 0; 2 * r < shape.grown.length; r++) {
      for (const { from, to } of sheet[row + r - shape.grownBefore] ?? []) {
        if (x + shape.grown[2 * r] >= to - 1e-9 || x + shape.grown[2 * r + 1] <= from + 1e-9) continue;
        x = to - shape.grown[2 * r];
        isMoved = true;
      }
      if (x + shape.width > room + 1e-9) return null;
    }
  }
  return x;
}

/** Takes the shape's own rows on the sheet, its left end at x and its top at the row. */
export function putShape(shape: Shape, x: number, row: number, sheet: SheetRows): void {
  for (let r = 0; 2 * r < shape.own.length; r++) {
    sheet[row + r] ??= [];
    sheet[row + r].push({ from: x + shape.own[2 * r], to: x + shape.own[2 * r + 1] });
  }
}

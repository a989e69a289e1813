import { cornersOfText, type DrawingItem } from '../drawing/index.ts';
import { clamp } from '../math/index.ts';
import type { Rectangle } from './clip-polyline.ts';

/** Side of a square of the map, mm. */
const SQUARE = 1.5;

/**
 * Which places of a region of a drawing are taken, in squares of 1.5 mm. Marks and words are put only where the map is
 * free, so that they cross no line and no other words.
 */
export interface FreeMap {
  readonly box: Rectangle;
  readonly columns: number;
  readonly rows: number;
  readonly taken: Uint8Array;
}

/** The map of a region with all lines and text boxes of the items taken. O(length of the lines / 1.5 mm). */
export function createFreeMap(box: Rectangle, items: Iterable<DrawingItem>): FreeMap {
  const columns = Math.max(1, Math.ceil((box.maxX - box.minX) / SQUARE));
  const rows = Math.max(1, Math.ceil((box.maxY - box.minY) / SQUARE));
  const map: FreeMap = { box, columns, rows, taken: new Uint8Array(columns * rows) };
  for (const item of items) {
    if (item.kind === 'path') takeLine(map, item.points, item.closed);
    else takeText(map, cornersOfText(item));
  }
  return map;
}

/** True when nothing is in the rectangle and it lies wholly in the region. */
export function isFree(map: FreeMap, { minX, minY, maxX, maxY }: Rectangle): boolean {
  const { box } = map;
  if (minX < box.minX || minY < box.minY || maxX > box.maxX || maxY > box.maxY) return false;
  const [c0, r0] = squareAt(map, minX, minY);
  const [c1, r1] = squareAt(map, maxX, maxY);
  for (let r = r0; r <= r1; r++)
    for (let c = c0; c <= c1; c++) if (map.taken[r * map.columns + c] === 1) return false;
  return true;
}

/** The free place for a rectangle of that size whose middle is nearest to (x, y) and allowed, its top left corner; null when there is none. */
export function findFree(
  map: FreeMap,
  width: number,
  height: number,
  x: number,
  y: number,
  isAllowed: (middleX: number, middleY: number) => boolean = () => true,
): { readonly x: number; readonly y: number } | null {
  let best: { x: number; y: number } | null = null;
  let nearest = Number.POSITIVE_INFINITY;
  const step = 2 * SQUARE;
  for (let top = map.box.minY; top + height <= map.box.maxY; top += step) {
    for (let left = map.box.minX; left + width <= map.box.maxX; left += step) {
      const distance = Math.hypot(left + width / 2 - x, top + height / 2 - y);
      if (distance >= nearest) continue;
      if (!isFree(map, { minX: left, minY: top, maxX: left + width, maxY: top + height })) continue;
      if (!isAllowed(left + width / 2, top + height / 2)) continue;
      best = { x: left, y: top };
      nearest = distance;
    }
  }
  return best;
}

/** Marks a rectangle as taken. */
export function takeRectangle(map: FreeMap, { minX, minY, maxX, maxY }: Rectangle): void {
  const [c0, r0] = squareAt(map, minX, minY);
  const [c1, r1] = squareAt(map, maxX, maxY);
  for (let r = r0; r <= r1; r++) map.taken.fill(1, r * map.columns + c0, r * map.columns + c1 + 1);
}

function squareAt({ box, columns, rows }: FreeMap, x: number, y: number): [number, number] {
  const column = Math.floor((x - box.minX) / SQUARE);
  const row = Math.floor((y - box.minY) / SQUARE);
  return [clamp(column, 0, columns - 1), clamp(row, 0, rows - 1)];
}

function takeLine(map: FreeMap, points: Float64Array, isClosed: boolean): void {
  const count = points.length / 2;
  for (let i = 0; i < (isClosed ? count : count - 1); i++) {
    const j = (i + 1) % count;
    const [ax, ay, bx, by] = [points[2 * i], points[2 * i + 1], points[2 * j], points[2 * j + 1]];
    const steps = Math.max(1, Math.ceil((2 * Math.hypot(bx - ax, by - ay)) / SQUARE));
    for (let k = 0; k <= steps; k++)
      takePoint(map, ax + ((bx - ax) * k) / steps, ay + ((by - ay) * k) / steps);
  }
}

function takePoint(map: FreeMap, x: number, y: number): void {
  const { box } = map;
  if (x < box.minX || y < box.minY || x > box.maxX || y > box.maxY) return;
  const [column, row] = squareAt(map, x, y);
  map.taken[row * map.columns + column] = 1;
}

/** The inside of a text's box, by points spaced closer than the squares. */
function takeText(map: FreeMap, corners: Float64Array): void {
  const [x0, y0, x1, y1, , , x3, y3] = corners;
  const across = Math.max(1, Math.ceil((2 * Math.hypot(x1 - x0, y1 - y0)) / SQUARE));
  const down = Math.max(1, Math.ceil((2 * Math.hypot(x3 - x0, y3 - y0)) / SQUARE));
  for (let i = 0; i <= across; i++) {
    for (let j = 0; j <= down; j++) {
      const [s, t] = [i / across, j / down];
      takePoint(map, x0 + s * (x1 - x0) + t * (x3 - x0), y0 + s * (y1 - y0) + t * (y3 - y0));
    }
  }
}

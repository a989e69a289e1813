import { seededRandom } from '../base/index.ts';

/** Height of the rows in which outlines are compared, mm. Pieces come to lie at multiples of it. */
const ROW = 4;
/** Orders tried beyond the first ones; each costs one packing. */
const ATTEMPTS = 60;
const SEED = 1;

export interface Packing {
  /** Per outline: translation that brings it to its place. */
  readonly offsets: readonly { readonly dx: number; readonly dy: number }[];
  /** Lowest point used plus the gap, mm from the top. */
  readonly height: number;
}

/**
 * Places outlines (closed, n × 2, page coordinates) on a sheet of given width without turning them, at least
 * `gap` mm from each other and from the sheet's edges. Each goes as far up as it fits, then as far left, sliding
 * into its neighbours' hollows; several orders are tried (tallest, widest, largest first, then seeded swaps of the
 * best) and the shortest sheet is kept. `attempts` of such swaps are tried. Returns the first outline wider than the sheet instead, as `tooWide`.
 * Cost O(attempts · #outlines² · rows of the sheet · rows of an outline) at worst. Not the least length there is.
 */
export function packOutlines(
  outlines: readonly Float64Array[],
  sheetWidth: number,
  gap: number,
  attempts = ATTEMPTS,
): Packing | { readonly tooWide: number; readonly width: number } {
  const shapes = outlines.map((points) => rowsOf(points, gap));
  const room = sheetWidth - 2 * gap;
  const tooWide = shapes.findIndex(({ width }) => width > room);
  if (tooWide >= 0) return { tooWide, width: shapes[tooWide].width };

  // 1. The usual orders.
  const byFalling = (key: (shape: Shape) => number): number[] =>
    shapes.map((_, i) => i).sort((a, b) => key(shapes[b]) - key(shapes[a]) || a - b);
  const orders = [
    byFalling((s) => s.height),
    byFalling((s) => s.width),
    byFalling((s) => s.width * s.height),
  ];
  let best = orders.map((order) => ({ order, packing: packInOrder(shapes, order, room) }));
  best = best.sort((a, b) => a.packing.measure - b.packing.measure).slice(0, 1);
  let [{ order, packing }] = best;

  // 2. Swap two pieces of the best order and keep what is shorter.
  const random = seededRandom(SEED);
  for (let attempt = 0; attempt < attempts && order.length > 2; attempt++) {
    const swapped = order.slice();
    const i = Math.floor(random() * order.length);
    const j = Math.floor(random() * order.length);
    [swapped[i], swapped[j]] = [swapped[j], swapped[i]];
    const trial = packInOrder(shapes, swapped, room);
    if (trial.measure < packing.measure) [order, packing] = [swapped, trial];
  }
  return {
    offsets: packing.places.map(({ x, y }, i) => ({
      dx: gap + x - shapes[i].minX,
      dy: gap + y - shapes[i].minY,
    })),
    height: packing.height + 2 * gap,
  };
}

interface Shape {
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

function rowsOf(points: Float64Array, gap: number): Shape {
  let [minX, minY, maxX, maxY] = [points[0], points[1], points[0], points[1]];
  for (let i = 0; i < points.length; i += 2) {
    minX = Math.min(minX, points[i]);
    maxX = Math.max(maxX, points[i]);
    minY = Math.min(minY, points[i + 1]);
    maxY = Math.max(maxY, points[i + 1]);
  }
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
        const t = ay === by ? 0 : Math.min(1, Math.max(0, (y - ay) / (by - ay)));
        const x = ax + t * (bx - ax);
        rows[2 * row] = Math.min(rows[2 * row], x - gap, ay === by ? bx - gap : x - gap);
        rows[2 * row + 1] = Math.max(rows[2 * row + 1], x + gap, ay === by ? bx + gap : x + gap);
      }
    }
  }
  return rows;
}

interface Trial {
  readonly places: readonly { readonly x: number; readonly y: number }[];
  readonly height: number;
  /** What is compared: the height, and in case of a tie how far down the pieces lie on the whole. */
  readonly measure: number;
}

/** Places from (0, 0) on a sheet `room` wide, without outer gap. */
function packInOrder(shapes: readonly Shape[], order: readonly number[], room: number): Trial {
  const sheet: { from: number; to: number }[][] = [];
  const places = shapes.map(() => ({ x: 0, y: 0 }));
  let height = 0;
  let sum = 0;
  for (const index of order) {
    const shape = shapes[index];
    let row = 0;
    let x = findLeft(shape, row, sheet, room);
    while (x === null) x = findLeft(shape, ++row, sheet, room);
    for (let r = 0; 2 * r < shape.own.length; r++) {
      sheet[row + r] ??= [];
      sheet[row + r].push({ from: x + shape.own[2 * r], to: x + shape.own[2 * r + 1] });
    }
    places[index] = { x, y: row * ROW };
    height = Math.max(height, row * ROW + shape.height);
    sum += row * ROW + shape.height;
  }
  return { places, height, measure: height + (1e-3 * sum) / shapes.length };
}

/** The leftmost x at which the shape is clear of everything in its rows, or null. */
function findLeft(
  shape: Shape,
  row: number,
  sheet: readonly (readonly { from: number; to: number }[])[],
  room: number,
): number | null {
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

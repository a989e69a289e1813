import { seededRandom } from '../base/index.ts';
import { findLeft, putShape, ROW, rowsOf, type Shape, type SheetRows } from './packing-rows.ts';

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
  let [order] = orders;
  let packing: Trial = { places: [], height: 0, measure: Number.POSITIVE_INFINITY };
  for (const usual of orders) {
    const trial = packInOrder(shapes, usual, room, packing.measure);
    if (trial) [order, packing] = [usual, trial];
  }

  // 2. Swap two pieces of the best order and keep what is shorter.
  const random = seededRandom(SEED);
  for (let attempt = 0; attempt < attempts && order.length > 2; attempt++) {
    const swapped = order.slice();
    const i = Math.floor(random() * order.length);
    const j = Math.floor(random() * order.length);
    [swapped[i], swapped[j]] = [swapped[j], swapped[i]];
    const trial = packInOrder(shapes, swapped, room, packing.measure);
    if (trial) [order, packing] = [swapped, trial];
  }
  return {
    offsets: packing.places.map(({ x, y }, i) => ({
      dx: gap + x - shapes[i].minX,
      dy: gap + y - shapes[i].minY,
    })),
    height: packing.height + 2 * gap,
  };
}

interface Trial {
  readonly places: readonly { readonly x: number; readonly y: number }[];
  readonly height: number;
  /** What is compared: the height, and in case of a tie how far down the pieces lie on the whole. */
  readonly measure: number;
}

/** Places from (0, 0) on a sheet `room` wide, without outer gap. Null as soon as it cannot measure less than `toBeat`. */
function packInOrder(
  shapes: readonly Shape[],
  order: readonly number[],
  room: number,
  toBeat: number,
): Trial | null {
  const sheet: SheetRows = [];
  const places = shapes.map(() => ({ x: 0, y: 0 }));
  let height = 0;
  let sum = 0;
  for (const index of order) {
    const shape = shapes[index];
    let row = 0;
    let x = findLeft(shape, row, sheet, room);
    while (x === null) x = findLeft(shape, ++row, sheet, room);
    putShape(shape, x, row, sheet);
    places[index] = { x, y: row * ROW };
    height = Math.max(height, row * ROW + shape.height);
    sum += row * ROW + shape.height;
    // Neither grows smaller with the pieces that follow.
    if (height + (1e-3 * sum) / shapes.length >= toBeat) return null;
  }
  return { places, height, measure: height + (1e-3 * sum) / shapes.length };
}

import type { Shape } from './make-shapes.ts';
import { HEAD, type ShapeMemory } from './overlap-proxy.ts';

/** Farther off than anything reaches, near enough for its squares and products to stay finite. */
const FAR = 1e8;

/**
 * Lays shapes out as `overlapProxy` and the kernel read them. `allocate` gives at least so many bytes, zeroed. Shape k has its
 * head at HEAD · k.
 */
export function packShapes(shapes: readonly Shape[], allocate: (bytes: number) => ArrayBuffer): ShapeMemory {
  const fours = (count: number): number => (count + 3) >> 2;
  const words = shapes.reduce(
    (sum, { circles, grown }) =>
      sum + HEAD + 12 * fours(circles.length / 3) + 20 * fours(grown.length / 2) + 4,
    0,
  );
  const buffer = allocate(4 * words);
  const floats = new Float32Array(buffer);
  const heads = new Int32Array(buffer);
  let at = HEAD * shapes.length;
  const take = (count: number): number => {
    at += count;
    return at - count;
  };
  shapes.forEach((shape, k) => {
    const circleFours = fours(shape.circles.length / 3);
    const edgeFours = fours(shape.grown.length / 2);
    const places = [take(12 * circleFours), take(16 * edgeFours), take(4 * edgeFours + 4)];
    heads.set(
      [...[4 * places[0], circleFours, 4 * places[1], edgeFours, 4 * places[2]], shape.circles.length / 3],
      HEAD * k,
    );
    packCircles(shape.circles, floats, places[0], circleFours);
    packEdges(shape.grown, floats, places[1], places[2], edgeFours);
  });
  return { buffer, heads, floats };
}

function packCircles(circles: Float64Array, floats: Float32Array, at: number, fours: number): void {
  for (let k = 0; k < 4 * fours; k++) {
    const to = at + 12 * (k >> 2) + (k & 3);
    const is = 3 * k < circles.length;
    floats[to] = is ? circles[3 * k] : FAR;
    floats[to + 4] = is ? circles[3 * k + 1] : 0;
    floats[to + 8] = is ? circles[3 * k + 2] : 0;
  }
}

/** Edges, the boxes of their fours, and the box of all. */
function packEdges(
  points: Float64Array,
  floats: Float32Array,
  at: number,
  boxes: number,
  fours: number,
): void {
  const count = points.length / 2;
  const widen = (box: number, x: number, y: number): void => {
    floats[box] = Math.min(floats[box], x);
    floats[box + 1] = Math.min(floats[box + 1], y);
    floats[box + 2] = Math.min(floats[box + 2], -x);
    floats[box + 3] = Math.min(floats[box + 3], -y);
  };
  const whole = boxes + 4 * fours;
  for (let box = boxes; box <= whole; box += 4) floats.fill(Infinity, box, box + 4);
  for (let k = 0; k < 4 * fours; k++) {
    const to = at + 16 * (k >> 2) + (k & 3);
    for (const [end, place] of [k, k + 1].entries()) {
      const is = k < count;
      const from = 2 * (place % count);
      floats[to + 8 * end] = is ? points[from] : FAR;
      floats[to + 8 * end + 4] = is ? points[from + 1] : FAR;
      if (!is) continue;
      for (const box of [boxes + 4 * (k >> 2), whole])
        widen(box, floats[to + 8 * end], floats[to + 8 * end + 4]);
    }
  }
}

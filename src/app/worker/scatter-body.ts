import { type Body, surfaceOfBody } from '../../core/body/index.ts';

const ROUND = 96;
const ROWS = 260;

/** A grid of points on the whole surface, n × 3 mm. */
export function scatterBody(body: Body): Float64Array {
  const surface = surfaceOfBody(body);
  const [low, high] = surface.vRange;
  const chart = new Float64Array(2 * ROUND * ROWS);
  for (let row = 0; row < ROWS; row++) {
    for (let k = 0; k < ROUND; k++) {
      const i = 2 * (row * ROUND + k);
      chart[i] = (2 * Math.PI * k) / ROUND;
      chart[i + 1] = low + ((high - low) * row) / (ROWS - 1);
    }
  }
  return surface.evaluate(chart);
}

import type { ShapeEvaluator } from './rails.ts';
import type { TapePath } from './tape-paths.ts';

/** The gradient of a tape's length: which places of the chart carry it, and how it grows as each point moves. */
export interface TapeTouch {
  /** n × 2 (u, v). */
  readonly chart: Float64Array;
  /** n × 3, mm of tape a mm of the point. */
  readonly pulls: Float64Array;
}

/**
 * Of a taut path. To first order its corners may be taken to stay where they are in the chart: where a tape leaves the
 * surface its length is least, so that sliding does not change it.
 */
export function touchPath({ points, chart }: TapePath, closed: boolean): TapeTouch {
  const pulls = new Float64Array(points.length);
  const n = points.length / 3;
  for (let i = closed ? 0 : 1; i < n; i++) {
    const a = 3 * ((i + n - 1) % n);
    const b = 3 * i;
    const d = [points[b] - points[a], points[b + 1] - points[a + 1], points[b + 2] - points[a + 2]];
    const length = Math.hypot(d[0], d[1], d[2]);
    if (length === 0) continue;
    for (let k = 0; k < 3; k++) {
      pulls[b + k] += d[k] / length;
      pulls[a + k] -= d[k] / length;
    }
  }
  return { chart, pulls };
}

/** Of the distance along one axis from the first of two chart points to the second. */
export function touchBetween(chart: Float64Array, axis: 0 | 1 | 2): TapeTouch {
  const pulls = new Float64Array(6);
  pulls[axis] = -1;
  pulls[3 + axis] = 1;
  return { chart, pulls };
}

/** Step of u for a difference along a row, radians. */
const U_STEP = 1e-5;

/**
 * Of a front path: above the bust its corners stay in the upright plane through both ends, so as the surface moves they
 * slide along their rows. What a slide does to the length is put on the points that force it.
 */
export function touchFront(evaluator: ShapeEvaluator, path: TapePath, bustV: number): TapeTouch {
  const { chart, pulls } = touchPath(path, false);
  const { points } = path;
  const n = points.length / 3;
  let bust = 0;
  while (bust < n - 1 && chart[2 * bust + 1] > bustV) bust++;
  // A taut path may pass over the bust point; then the plane's end moves little with it.
  const end = 3 * bust;
  const slope = (points[end] - points[0]) / (points[end + 2] - points[2]);
  const near = new Float64Array(3);
  for (let i = 1; i < bust; i++) {
    evaluator.point(chart[2 * i] + U_STEP, chart[2 * i + 1], near);
    const at = 3 * i;
    const along = [near[0] - points[at], near[1] - points[at + 1], near[2] - points[at + 2]];
    const gain = pulls[at] * along[0] + pulls[at + 1] * along[1] + pulls[at + 2] * along[2];
    const leaving = along[0] - slope * along[2];
    if (Math.abs(leaving) < 1e-3 * U_STEP) continue;
    const share = (points[at + 2] - points[2]) / (points[end + 2] - points[2]);
    const push = gain / leaving;
    for (const [j, part] of [
      [at, -push],
      [0, push * (1 - share)],
      [end, push * share],
    ] as const) {
      pulls[j] += part;
      pulls[j + 2] -= slope * part;
    }
  }
  return { chart, pulls };
}

import { cubicSplineMoments, evaluateCubicSpline } from '../math/index.ts';

/** How far the chords may lie from the curve, mm. */
const SAGITTA = 0.01;
/** Points taken again over the ring's ends: what a natural end does to a spline falls by 3.7 a point. */
const OVERLAP = 8;

/**
 * The closed ring (n × 2, no point twice) as a fair curve through its points, in chords fine enough to pass for it: the
 * cubic spline by chord length, run on over both ends so that it closes as smoothly as it runs. O(points).
 */
export function fairRing(ring: Float64Array): Float64Array {
  const n = ring.length / 2;
  if (n < 4) return ring;
  const wrap = Math.min(OVERLAP, n);
  const order = Array.from({ length: n + 1 + 2 * wrap }, (_, i) => (i - wrap + 2 * n) % n);
  const [xs, ys] = [0, 1].map((axis) => Float64Array.from(order, (k) => ring[2 * k + axis]));
  const along = new Float64Array(order.length);
  for (let i = 1; i < along.length; i++)
    along[i] = along[i - 1] + Math.max(1e-9, Math.hypot(xs[i] - xs[i - 1], ys[i] - ys[i - 1]));
  const [mx, my] = [cubicSplineMoments(along, xs), cubicSplineMoments(along, ys)];
  const points: number[] = [];
  for (let i = wrap; i < wrap + n; i++) {
    const length = along[i + 1] - along[i];
    // s = κL²/8, κ from the larger of the second derivatives at both ends.
    const bend = Math.max(Math.hypot(mx[i], my[i]), Math.hypot(mx[i + 1], my[i + 1]));
    const parts = Math.max(1, Math.ceil(length * Math.sqrt(bend / (8 * SAGITTA))));
    for (let k = 0; k < parts; k++) {
      const s = along[i] + (length * k) / parts;
      points.push(evaluateCubicSpline(along, xs, mx, s), evaluateCubicSpline(along, ys, my, s));
    }
  }
  return Float64Array.from(points);
}

import { assertInvariant } from '../base/index.ts';

/**
 * Second derivatives ("moments") of the natural cubic spline through (x, y): S″ = 0 at both ends, C² inside.
 * x strictly rising, at least two. O(n).
 * Source: de Boor, A Practical Guide to Splines (1978), ch. IV, the tridiagonal moment equations.
 */
export function cubicSplineMoments(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  const n = x.length;
  assertInvariant(n >= 2 && y.length === n, 'math', 'a spline needs two or more points', n);
  const moments = new Float64Array(n);
  const upper = new Float64Array(n);
  for (let i = 1; i < n - 1; i++) {
    const before = x[i] - x[i - 1];
    const after = x[i + 1] - x[i];
    assertInvariant(before > 0 && after > 0, 'math', 'spline abscissae rise strictly', x[i]);
    const bend = (6 * ((y[i + 1] - y[i]) / after - (y[i] - y[i - 1]) / before)) / (before + after);
    const ratio = before / (before + after);
    const pivot = 2 + ratio * upper[i - 1];
    upper[i] = (ratio - 1) / pivot;
    moments[i] = (bend - ratio * moments[i - 1]) / pivot;
  }
  moments[n - 1] = 0;
  for (let i = n - 2; i > 0; i--) moments[i] += upper[i] * moments[i + 1];
  moments[0] = 0;
  return moments;
}

/** Index i with x[i] ≤ t < x[i + 1], kept inside [0, n − 2]. O(log n). */
export function findSplineInterval(x: ArrayLike<number>, t: number): number {
  let low = 0;
  let high = x.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle] <= t) low = middle;
    else high = middle;
  }
  return low;
}

/** Value of the spline at t; beyond the ends the end pieces are continued. */
export function evaluateCubicSpline(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  moments: ArrayLike<number>,
  t: number,
): number {
  const i = findSplineInterval(x, t);
  const h = x[i + 1] - x[i];
  const b = (t - x[i]) / h;
  const a = 1 - b;
  return (
    a * y[i] +
    b * y[i + 1] +
    ((a * a * a - a) * moments[i] + (b * b * b - b) * moments[i + 1]) * (h * h) * (1 / 6)
  );
}

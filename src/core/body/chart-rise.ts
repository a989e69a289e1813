import { findSplineInterval } from '../math/index.ts';

/**
 * The rise t of a chart height v: a monotone C² function with t(knots[k]) = rises[k]. Quintic Hermite pieces with no bend
 * at the knots and harmonic-mean slopes, which lie below twice either neighbouring secant: enough for every piece to
 * rise. knots and rises strictly rising, n ≥ 3. Cost O(log n) a call.
 * Source of the slopes: Fritsch and Butland, A method for constructing local monotone piecewise cubic interpolants (1984).
 */
export function makeChartRise(knots: Float64Array, rises: Float64Array): (v: number) => number {
  const slopes = harmonicSlopes(knots, rises);
  return (v) => {
    const i = findSplineInterval(knots, v);
    const h = knots[i + 1] - knots[i];
    const s = (v - knots[i]) / h;
    // Beyond the ends the end slope goes on.
    if (s <= 0) return rises[i] + slopes[i] * (v - knots[i]);
    if (s >= 1) return rises[i + 1] + slopes[i + 1] * (v - knots[i + 1]);
    const s3 = s * s * s;
    const step = s3 * (10 + s * (6 * s - 15));
    const below = s + s3 * (s * (8 - 3 * s) - 6);
    const above = s3 * (s * (7 - 3 * s) - 4);
    return rises[i] + step * (rises[i + 1] - rises[i]) + h * (below * slopes[i] + above * slopes[i + 1]);
  };
}

function harmonicSlopes(x: Float64Array, y: Float64Array): Float64Array {
  const n = x.length;
  const secants = Float64Array.from({ length: n - 1 }, (_, i) => (y[i + 1] - y[i]) / (x[i + 1] - x[i]));
  const slopes = new Float64Array(n);
  slopes[0] = secants[0];
  slopes[n - 1] = secants[n - 2];
  for (let i = 1; i < n - 1; i++) {
    const [low, high] = [secants[i - 1], secants[i]];
    slopes[i] = (2 * low * high) / (low + high);
  }
  return slopes;
}

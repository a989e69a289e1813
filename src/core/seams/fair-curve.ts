import { cubicSplineMoments, evaluateCubicSpline } from '../math/index.ts';

/** A curve in the chart: t in `range`. */
export interface ChartCurve {
  readonly range: readonly [number, number];
  readonly at: (t: number) => readonly [u: number, v: number];
}

/**
 * Radius that turns chart angles into lengths of the same order as v. Only proportions inside the chart
 * depend on it (spacing of spline parameters, angles between lines), never a length on the body.
 */
export const CHART_RADIUS = 140;

/**
 * C² curve through points of the chart: natural cubic splines over the chord length.
 * Source: de Boor, A Practical Guide to Splines (1978), ch. IV. Points n × 2, n ≥ 2, no two neighbours equal.
 */
export function fairCurve(points: readonly (readonly [number, number])[]): ChartCurve {
  const u = points.map((point) => point[0]);
  const v = points.map((point) => point[1]);
  const t = [0];
  for (let i = 1; i < points.length; i++) {
    t.push(t[i - 1] + Math.hypot(CHART_RADIUS * (u[i] - u[i - 1]), v[i] - v[i - 1]));
  }
  const uMoments = cubicSplineMoments(t, u);
  const vMoments = cubicSplineMoments(t, v);
  const end = t[t.length - 1];
  return {
    range: [0, end],
    // The ends are returned as given: they are corners other lines share.
    at: (x) => {
      if (x <= 0) return points[0];
      if (x >= end) return points[points.length - 1];
      return [evaluateCubicSpline(t, u, uMoments, x), evaluateCubicSpline(t, v, vMoments, x)];
    },
  };
}

/**
 * C² closed curve through a loop n × 2 (n ≥ 3), parametrised 0..1 from the loop's first point by chord length.
 * The loop is wrapped round by eight points at either end; what the ends do has decayed by (2 − √3)⁸ = 3e-5 there.
 */
export function fairLoop(loop: Float64Array): ChartCurve {
  const n = loop.length / 2;
  const wrap = 8;
  const t: number[] = [];
  const u: number[] = [];
  const v: number[] = [];
  let start = 0;
  let end = 0;
  for (let i = -wrap; i <= n + wrap; i++) {
    const k = ((i % n) + n) % n;
    const last = u.length - 1;
    u.push(loop[2 * k]);
    v.push(loop[2 * k + 1]);
    t.push(
      last < 0 ? 0 : t[last] + Math.hypot(CHART_RADIUS * (u[last + 1] - u[last]), v[last + 1] - v[last]),
    );
    if (i === 0) start = t[last + 1];
    if (i === n) end = t[last + 1];
  }
  const uMoments = cubicSplineMoments(t, u);
  const vMoments = cubicSplineMoments(t, v);
  return {
    range: [0, 1],
    at: (x) => {
      const s = start + (x - Math.floor(x)) * (end - start);
      return [evaluateCubicSpline(t, u, uMoments, s), evaluateCubicSpline(t, v, vMoments, s)];
    },
  };
}

/** The t at which a rising curve reaches v, by bisection to rounding; ends are exact. */
export function findRisingParameter(curve: ChartCurve, v: number): number {
  let [low, high] = curve.range;
  if (v <= curve.at(low)[1]) return low;
  if (v >= curve.at(high)[1]) return high;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (curve.at(middle)[1] < v) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** True when v rises strictly along the curve (256 samples). */
export function isRising(curve: ChartCurve): boolean {
  const [low, high] = curve.range;
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= 256; i++) {
    const v = curve.at(low + ((high - low) * i) / 256)[1];
    if (v <= before) return false;
    before = v;
  }
  return true;
}

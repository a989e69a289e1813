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

/** Heights nearer than this are the same, mm. */
const SAME_HEIGHT = 1e-7;
const HEIGHT_SAMPLES = 160;

/**
 * Every t at which a curve is at height v, rising: 160 samples, then bisection to rounding. Ends that are at v give
 * their own t exactly. A curve that only touches v between samples is not seen.
 */
export function findHeights(curve: ChartCurve, v: number): number[] {
  const [low, high] = curve.range;
  const rise = (t: number): number => curve.at(t)[1] - v;
  const found: number[] = [];
  if (Math.abs(rise(low)) < SAME_HEIGHT) found.push(low);
  const step = (high - low) / HEIGHT_SAMPLES;
  let before = rise(low);
  for (let i = 1; i <= HEIGHT_SAMPLES; i++) {
    const after = rise(low + i * step);
    const isEnd =
      (i === 1 && found.length > 0) || (i === HEIGHT_SAMPLES && Math.abs(rise(high)) < SAME_HEIGHT);
    if (!isEnd && before < 0 !== after < 0) {
      let [a, b] = [low + (i - 1) * step, low + i * step];
      for (let k = 0; k < 60; k++) {
        const middle = (a + b) / 2;
        if (rise(middle) < 0 === before < 0) a = middle;
        else b = middle;
      }
      found.push((a + b) / 2);
    }
    before = after;
  }
  if (Math.abs(rise(high)) < SAME_HEIGHT) found.push(high);
  return found;
}

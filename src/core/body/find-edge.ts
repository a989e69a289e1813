/** Writes where a picture shows the point (u, v) of the body: p, q in mm. */
export type ShowPoint = (u: number, v: number, out: Float64Array) => void;

/** A place of a silhouette, and how steep it is along its column of the chart: dp/dq of an edge, dq/dp of a shoulder; 0 at the end. */
export interface EdgePlace {
  readonly u: number;
  readonly v: number;
  readonly slope: number;
}

/** Columns of the chart tried to each side of the middle one, and how far apart, radians. */
const COLUMNS = 5;
const COLUMN_STEP = 0.18;
/** Of the second look, round the best. */
const FINE_STEP = 0.05;
/** How far from a column's row the next one's is looked for first, in v. */
const NEAR = 30;
/** A row is found to this, mm in the picture. */
const FOUND = 0.02;
/** Half step of v for a slope. */
const V_STEP = 0.5;

/**
 * Where the body's silhouette has its edge at the height q of the picture: of the columns within 0.9 rad of `middle`, each where it
 * shows at q, the one that shows furthest out, by a parabola over its neighbours. `outward` is +1 where the edge looks to the
 * picture's right. Where q lies beyond the rows from `low` to `high`, the last row's edge.
 * There p − slope · (q(u, v) − q) changes with the body as the edge at q does, for a silhouette is an extreme over u.
 */
export function findEdge(
  show: ShowPoint,
  q: number,
  middle: number,
  outward: 1 | -1,
  [low, high]: readonly [number, number],
): EdgePlace {
  const at = new Float64Array(2);
  let near: number | undefined;
  const column = (u: number): { u: number; v: number; out: number } => {
    const gap = (v: number): number => {
      show(u, v, at);
      return at[1] - q;
    };
    const v = crossing(gap, low, high, near);
    near = v;
    show(u, v, at);
    return { u, v, out: outward * at[0] };
  };
  const coarse = Array.from({ length: 2 * COLUMNS + 1 }, (_, k) =>
    column(middle + (k - COLUMNS) * COLUMN_STEP),
  );
  const best = coarse.reduce((a, b) => (b.out > a.out ? b : a));
  const k = coarse.indexOf(best);
  if (k === 0 || k === coarse.length - 1) return withSlope(show, best, 1, low, high);
  near = best.v;
  const first = summitOf(coarse[k - 1].out, best.out, coarse[k + 1].out, best.u, COLUMN_STEP);
  const fine = [first - FINE_STEP, first, first + FINE_STEP].map(column);
  const u = summitOf(fine[0].out, fine[1].out, fine[2].out, first, FINE_STEP);
  return withSlope(show, column(u), 1, low, high);
}

/** Where the ridge of a shoulder, the column u, shows at p of the picture; its height there is what is read. */
export function findRidge(
  show: ShowPoint,
  p: number,
  u: number,
  [low, high]: readonly [number, number],
): EdgePlace {
  const at = new Float64Array(2);
  const v = crossing(
    (row) => {
      show(u, row, at);
      return at[0] - p;
    },
    low,
    high,
  );
  return withSlope(show, { u, v }, 0, low, high);
}

/** How the way that is read changes with the way that is given (`given`: 0 p, 1 q). */
function withSlope(
  show: ShowPoint,
  { u, v }: { readonly u: number; readonly v: number },
  given: 0 | 1,
  low: number,
  high: number,
): EdgePlace {
  if (v === low || v === high) return { u, v, slope: 0 };
  const at = new Float64Array(4);
  show(u, v - V_STEP, at.subarray(0, 2));
  show(u, v + V_STEP, at.subarray(2));
  return { u, v, slope: (at[3 - given] - at[1 - given]) / (at[2 + given] - at[given]) };
}

/** Top of the parabola through three even places round `middle`; no further than a step from it. */
function summitOf(before: number, here: number, after: number, middle: number, step: number): number {
  const bend = 2 * here - before - after;
  if (bend <= 0) return middle;
  const shift = (0.5 * (after - before)) / bend;
  return middle + step * Math.max(-1, Math.min(1, shift));
}

/** Where f passes 0 between low and high, near `near` if it does there; else the end it is nearest to 0 at. Regula falsi, Illinois. */
function crossing(f: (v: number) => number, low: number, high: number, near?: number): number {
  let [a, b] = near === undefined ? [low, high] : [Math.max(low, near - NEAR), Math.min(high, near + NEAR)];
  let [fa, fb] = [f(a), f(b)];
  if (fa * fb > 0 && near !== undefined) {
    [a, b] = [low, high];
    [fa, fb] = [f(a), f(b)];
  }
  if (fa * fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  for (let step = 0; step < 40; step++) {
    const v = a + ((b - a) * fa) / (fa - fb);
    const fv = f(v);
    if (Math.abs(fv) < FOUND) return v;
    if (fv * fb < 0) {
      [a, fa] = [b, fb];
    } else {
      fa *= 0.5;
    }
    [b, fb] = [v, fv];
  }
  return b;
}

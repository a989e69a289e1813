import { KNOT, type ShapeEvaluator } from './rails.ts';

/** Where a tape lies: in space, and the places of the chart that carry its corners. */
export interface TapePath {
  /** n × 3, mm. */
  readonly points: Float64Array;
  /** n × 2 (u, v). */
  readonly chart: Float64Array;
}

/** How finely tapes are sampled; even, so that centres and sides are hit. */
export const GIRTH_POINTS = 144;
const PATH_POINTS = 40;

/** Length of a polyline n × 3, closed or open. */
export function pathLength(points: Float64Array, closed = false): number {
  let sum = 0;
  for (let i = 3; i < points.length; i += 3) {
    const dx = points[i] - points[i - 3];
    const dy = points[i + 1] - points[i - 2];
    const dz = points[i + 2] - points[i - 1];
    sum += Math.sqrt(dx * dx + dy * dy + dz * dz);
  }
  const e = points.length - 3;
  if (closed) sum += Math.hypot(points[0] - points[e], points[1] - points[e + 1], points[2] - points[e + 2]);
  return sum;
}

const ROW_U = Float64Array.from({ length: GIRTH_POINTS }, (_, i) => (2 * Math.PI * i) / GIRTH_POINTS);
const ROW_COS = ROW_U.map(Math.cos);
const ROW_SIN = ROW_U.map(Math.sin);

/** A whole row of the chart, n × 3, counter-clockwise from the right side. */
export function sampleRow(evaluator: ShapeEvaluator, v: number): Float64Array {
  const out = new Float64Array(3 * GIRTH_POINTS);
  for (let i = 0; i < GIRTH_POINTS; i++) evaluator.pointAt(ROW_U[i], ROW_COS[i], ROW_SIN[i], v, out, 3 * i);
  return out;
}

/** The row of `sampleRow` as a closed path. */
export function pathOfRow(row: Float64Array, v: number): TapePath {
  return {
    points: row,
    chart: Float64Array.from({ length: 2 * GIRTH_POINTS }, (_, i) => (i % 2 === 0 ? ROW_U[i >> 1] : v)),
  };
}

/** The convex hull of a level section, as a closed path: where a taut tape lies (ISO 8559-1 girths are level and taut). */
export function bridgeRow(row: Float64Array, v: number): TapePath {
  return pick(pathOfRow(row, v), hullOfRow(row));
}

/**
 * Hull of a row in its own order: a row runs counter-clockwise round its middle, so one Graham scan from an
 * extreme point is enough (Graham 1972, with the angular order already at hand). O(n).
 */
function hullOfRow(row: Float64Array): Int32Array {
  const n = row.length / 3;
  let first = 0;
  for (let i = 1; i < n; i++) if (row[3 * i] > row[3 * first]) first = i;
  const hull = new Int32Array(n + 1);
  let size = 0;
  for (let k = 0; k <= n; k++) {
    const c = 3 * ((first + k) % n);
    while (size >= 2) {
      const a = 3 * hull[size - 2];
      const b = 3 * hull[size - 1];
      const turn =
        (row[b] - row[a]) * (row[c + 1] - row[a + 1]) - (row[b + 1] - row[a + 1]) * (row[c] - row[a]);
      if (turn > 0) break;
      size--;
    }
    hull[size++] = c / 3;
  }
  return hull.subarray(0, size - 1);
}

/** Length of the taut tape round a level section. */
export function measureBridgedRow(row: Float64Array): number {
  const hull = hullOfRow(row);
  let sum = 0;
  let before = 3 * hull[hull.length - 1];
  for (let i = 0; i < hull.length; i++) {
    const here = 3 * hull[i];
    const dx = row[here] - row[before];
    const dy = row[here + 1] - row[before + 1];
    // Where hips or armpits differ in height the tape lies in the tilted row.
    const dz = row[here + 2] - row[before + 2];
    sum += Math.sqrt(dx * dx + dy * dy + dz * dz);
    before = here;
  }
  return sum;
}

/**
 * A taut open tape over a path that runs in (nearly) one plane: keeps the points of the convex hull that lie between
 * the ends on the outer side. `across` and `along` give each point's plane coordinates; outer = larger `across`.
 */
export function bridgePath(path: TapePath, across: Float64Array, along: Float64Array): TapePath {
  const kept: number[] = [];
  for (let i = 0; i < across.length; i++) {
    while (kept.length >= 2) {
      const b = kept[kept.length - 1];
      const a = kept[kept.length - 2];
      const turn =
        (along[b] - along[a]) * (across[i] - across[a]) - (across[b] - across[a]) * (along[i] - along[a]);
      if (turn * Math.sign(along[across.length - 1] - along[0]) < 0) break;
      kept.pop();
    }
    kept.push(i);
  }
  return pick(path, kept);
}

function pick(path: TapePath, indices: ArrayLike<number>): TapePath {
  const points = new Float64Array(3 * indices.length);
  const chart = new Float64Array(2 * indices.length);
  for (let i = 0; i < indices.length; i++) {
    points.set(path.points.subarray(3 * indices[i], 3 * indices[i] + 3), 3 * i);
    chart.set(path.chart.subarray(2 * indices[i], 2 * indices[i] + 2), 2 * i);
  }
  return { points, chart };
}

/** The centre back from the nape down to the waist, bridging the hollow of the back. */
export function backWaistPath(evaluator: ShapeEvaluator): TapePath {
  const path = sampleUpright(evaluator, -Math.PI / 2, KNOT.neckBase, KNOT.waist);
  const [across, along] = planeCoordinates(path.points, -1);
  return bridgePath(path, across, along);
}

/** Along constant u between two heights of the chart. */
export function sampleUpright(evaluator: ShapeEvaluator, u: number, from: number, to: number): TapePath {
  const chart = new Float64Array(2 * PATH_POINTS);
  for (let i = 0; i < PATH_POINTS; i++) {
    chart[2 * i] = u;
    chart[2 * i + 1] = from + ((to - from) * i) / (PATH_POINTS - 1);
  }
  return { points: liftLoop(evaluator, chart), chart };
}

/** Across = y (times `outward`), along = z. */
function planeCoordinates(path: Float64Array, outward: number): [Float64Array, Float64Array] {
  const n = path.length / 3;
  const across = new Float64Array(n);
  const along = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    across[i] = outward * path[3 * i + 1];
    along[i] = path[3 * i + 2];
  }
  return [across, along];
}

/**
 * From the side neck point to the bust point in the upright plane through both, taut; and with `toWaist` on to the
 * waist straight below, bridging the hollow under the bust.
 */
export function frontPath(
  evaluator: ShapeEvaluator,
  side: 'right' | 'left',
  bust: { readonly u: number; readonly v: number },
  toWaist: boolean,
): TapePath {
  const p = new Float64Array(6);
  const neckU = side === 'right' ? 0 : Math.PI;
  evaluator.point(neckU, KNOT.neckBase, p, 0);
  evaluator.point(bust.u, bust.v, p, 3);
  const points: number[] = [p[0], p[1], p[2]];
  const chart: number[] = [neckU, KNOT.neckBase];
  const out = new Float64Array(3);
  for (let i = 1; i < PATH_POINTS; i++) {
    const v = KNOT.neckBase + ((bust.v - KNOT.neckBase) * i) / PATH_POINTS;
    const u = findInPlane(evaluator, v, neckU, p, out);
    if (Number.isNaN(u)) continue;
    points.push(out[0], out[1], out[2]);
    chart.push(u, v);
  }
  points.push(p[3], p[4], p[5]);
  chart.push(bust.u, bust.v);
  if (toWaist) {
    for (let i = 1; i <= PATH_POINTS; i++) {
      const v = bust.v + ((KNOT.waist - bust.v) * i) / PATH_POINTS;
      evaluator.point(bust.u, v, out);
      points.push(out[0], out[1], out[2]);
      chart.push(bust.u, v);
    }
  }
  const path = { points: Float64Array.from(points), chart: Float64Array.from(chart) };
  const [across, along] = planeCoordinates(path.points, 1);
  return bridgePath(path, across, along);
}

/** On row v, the front point whose x lies on the straight line between the two ends: its u, NaN when the row misses it. */
function findInPlane(
  evaluator: ShapeEvaluator,
  v: number,
  neckU: number,
  ends: Float64Array,
  out: Float64Array,
): number {
  const slope = (ends[3] - ends[0]) / (ends[5] - ends[2]);
  const miss = (u: number): number => {
    evaluator.point(u, v, out);
    return out[0] - (ends[0] + slope * (out[2] - ends[2]));
  };
  let a = neckU;
  let b = Math.PI / 2;
  let fa = miss(a);
  let fb = miss(b);
  if (fa * fb > 0) return Number.NaN;
  let u = a;
  for (let i = 0; i < 50; i++) {
    u = i % 3 === 2 ? 0.5 * (a + b) : (a * fb - b * fa) / (fb - fa);
    const f = miss(u);
    if (Math.abs(f) < 1e-10) return u;
    if (f * fa > 0) {
      a = u;
      fa = f;
    } else {
      b = u;
      fb = f;
    }
  }
  return u;
}

/** Across the back or front along the mid-armhole row between two chart angles, taut over the hollow. */
export function acrossPath(
  evaluator: ShapeEvaluator,
  v: number,
  fromU: number,
  toU: number,
  outward: 1 | -1,
): TapePath {
  const chart = new Float64Array(2 * PATH_POINTS);
  for (let i = 0; i < PATH_POINTS; i++) {
    chart[2 * i] = fromU + ((toU - fromU) * i) / (PATH_POINTS - 1);
    chart[2 * i + 1] = v;
  }
  const points = liftLoop(evaluator, chart);
  const across = Float64Array.from({ length: PATH_POINTS }, (_, i) => outward * points[3 * i + 1]);
  const along = Float64Array.from({ length: PATH_POINTS }, (_, i) => points[3 * i]);
  return bridgePath({ points, chart }, across, along);
}

/** A chart loop lifted onto the surface, n × 3. */
export function liftLoop(evaluator: ShapeEvaluator, loop: Float64Array): Float64Array {
  const out = new Float64Array((loop.length / 2) * 3);
  for (let i = 0, j = 0; i < loop.length; i += 2, j += 3) evaluator.point(loop[i], loop[i + 1], out, j);
  return out;
}

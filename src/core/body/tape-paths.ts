import { KNOT, type ShapeEvaluator } from './rails.ts';

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

/** The convex hull of a level section, as a closed path: where a taut tape lies (ISO 8559-1 girths are level and taut). */
export function bridgeRow(row: Float64Array): Float64Array {
  return pick(row, hullOfRow(row));
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
    sum += Math.sqrt(dx * dx + dy * dy);
    before = here;
  }
  return sum;
}

/**
 * A taut open tape over a path that runs in (nearly) one plane: keeps the points of the convex hull that lie between
 * the ends on the outer side. `across` and `along` give each point's plane coordinates; outer = larger `across`.
 */
export function bridgePath(path: Float64Array, across: Float64Array, along: Float64Array): Float64Array {
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

function pick(points: Float64Array, indices: ArrayLike<number>): Float64Array {
  const out = new Float64Array(3 * indices.length);
  for (let i = 0; i < indices.length; i++)
    out.set(points.subarray(3 * indices[i], 3 * indices[i] + 3), 3 * i);
  return out;
}

/** The centre back from the nape down to the waist, bridging the hollow of the back. */
export function backWaistPath(evaluator: ShapeEvaluator): Float64Array {
  const path = sampleUpright(evaluator, -Math.PI / 2, KNOT.neckBase, KNOT.waist);
  const [across, along] = planeCoordinates(path, -1);
  return bridgePath(path, across, along);
}

/** Along constant u between two heights, n × 3. */
export function sampleUpright(evaluator: ShapeEvaluator, u: number, from: number, to: number): Float64Array {
  const out = new Float64Array(3 * PATH_POINTS);
  for (let i = 0; i < PATH_POINTS; i++) {
    evaluator.point(u, from + ((to - from) * i) / (PATH_POINTS - 1), out, 3 * i);
  }
  return out;
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
): Float64Array {
  const p = new Float64Array(6);
  const neckU = side === 'right' ? 0 : Math.PI;
  evaluator.point(neckU, KNOT.neckBase, p, 0);
  evaluator.point(bust.u, bust.v, p, 3);
  const points: number[] = [p[0], p[1], p[2]];
  const out = new Float64Array(3);
  for (let i = 1; i < PATH_POINTS; i++) {
    const v = KNOT.neckBase + ((bust.v - KNOT.neckBase) * i) / PATH_POINTS;
    if (!findInPlane(evaluator, v, neckU, p, out)) continue;
    points.push(out[0], out[1], out[2]);
  }
  points.push(p[3], p[4], p[5]);
  if (toWaist) {
    for (let i = 1; i <= PATH_POINTS; i++) {
      evaluator.point(bust.u, bust.v + ((KNOT.waist - bust.v) * i) / PATH_POINTS, out);
      points.push(out[0], out[1], out[2]);
    }
  }
  const path = Float64Array.from(points);
  const [across, along] = planeCoordinates(path, 1);
  return bridgePath(path, across, along);
}

/** On row v, the front point whose x lies on the straight line between the two ends; false when the row misses it. */
function findInPlane(
  evaluator: ShapeEvaluator,
  v: number,
  neckU: number,
  ends: Float64Array,
  out: Float64Array,
): boolean {
  const slope = (ends[3] - ends[0]) / (ends[5] - ends[2]);
  const miss = (u: number): number => {
    evaluator.point(u, v, out);
    return out[0] - (ends[0] + slope * (out[2] - ends[2]));
  };
  let a = neckU;
  let b = Math.PI / 2;
  let fa = miss(a);
  let fb = miss(b);
  if (fa * fb > 0) return false;
  for (let i = 0; i < 50; i++) {
    const u = i % 3 === 2 ? 0.5 * (a + b) : (a * fb - b * fa) / (fb - fa);
    const f = miss(u);
    if (Math.abs(f) < 1e-10) return true;
    if (f * fa > 0) {
      a = u;
      fa = f;
    } else {
      b = u;
      fb = f;
    }
  }
  return true;
}

/** Across the back or front along the mid-armhole row between two chart angles, taut over the hollow. */
export function acrossPath(
  evaluator: ShapeEvaluator,
  v: number,
  fromU: number,
  toU: number,
  outward: 1 | -1,
): Float64Array {
  const path = new Float64Array(3 * PATH_POINTS);
  const across = new Float64Array(PATH_POINTS);
  const along = new Float64Array(PATH_POINTS);
  for (let i = 0; i < PATH_POINTS; i++) {
    evaluator.point(fromU + ((toU - fromU) * i) / (PATH_POINTS - 1), v, path, 3 * i);
    across[i] = outward * path[3 * i + 1];
    along[i] = path[3 * i];
  }
  return bridgePath(path, across, along);
}

/** A chart loop lifted onto the surface, n × 3. */
export function liftLoop(evaluator: ShapeEvaluator, loop: Float64Array): Float64Array {
  const out = new Float64Array((loop.length / 2) * 3);
  for (let i = 0, j = 0; i < loop.length; i += 2, j += 3) evaluator.point(loop[i], loop[i + 1], out, j);
  return out;
}

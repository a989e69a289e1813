import { findTriangleStrip } from './find-triangle-strip.ts';
import { findTwins, nextHalfedge, previousHalfedge } from './halfedges.ts';
import type { SurfacePoint } from './locate-on-mesh.ts';
import type { Mesh } from './mesh.ts';
import { type Bend, type TautPath, tightenInStrip } from './tighten-in-strip.ts';

/** Less than this round the other side of a corner is a shorter way, beyond rounding. */
const STRAIGHT = Math.PI - 1e-9;
const MOST_FLIPS = 2_000;

/** The way a thread takes over the mesh. */
export interface ShortestPath {
  /** n × 3 mm, both ends included. */
  readonly points: Float64Array;
  /** mm. */
  readonly length: number;
}

/**
 * The shortest way over the mesh between two of its points, as a taut thread lies: straight wherever the triangles are
 * unfolded. Starts from a near-shortest strip of triangles and, at every corner the thread leans on, tries the other
 * side of the corner while that is less than π wide (Xin and Wang 2007, Efficiently determining a locally exact
 * shortest path on polyhedral surfaces). The result cannot be shortened by moving it a little; on the trunk of a body
 * it is the shortest of all but for ways of nearly the same length. null when the points do not hang together.
 * Cost: A* over the triangles near the way, then O(#strip) for every corner passed.
 */
export function traceShortestPath(mesh: Mesh, from: SurfacePoint, to: SurfacePoint): ShortestPath | null {
  const twins = findTwins(mesh.triangles, mesh.positions.length / 3);
  const first = findTriangleStrip(mesh, twins, from, to);
  if (!first) return null;
  let strip = first;
  let path = tightenInStrip(mesh, strip, from, to);
  const given = new Set<number>();
  for (let flips = 0; flips < MOST_FLIPS; flips++) {
    const bend = path.bends.find((one) => !given.has(one.vertex));
    if (!bend) break;
    const other = passOnOtherSide(mesh, twins, strip, bend, to.triangle);
    const shorter: TautPath | null = other && tightenInStrip(mesh, other, from, to);
    if (other && shorter && shorter.length < path.length * (1 - 1e-12)) {
      strip = other;
      path = shorter;
      given.clear();
    } else {
      given.add(bend.vertex);
    }
  }
  return { points: path.points, length: path.length };
}

/** The strip led round the other side of a corner; null when that is no shorter or the border is in the way. */
function passOnOtherSide(
  mesh: Mesh,
  twins: Int32Array,
  strip: readonly number[],
  { vertex, crossing, inside }: Bend,
  lastTriangle: number,
): number[] | null {
  const { triangles } = mesh;
  const touches = (h: number) => triangles[h] === vertex || triangles[nextHalfedge(h)] === vertex;
  // 1. The run of crossed halfedges that end at the corner.
  let first = crossing;
  let last = crossing;
  while (first > 0 && touches(strip[first - 1])) first--;
  while (last + 1 < strip.length && touches(strip[last + 1])) last++;
  // 2. Round the corner the other way, from the triangle before the run to the one after it.
  const after = last + 1 < strip.length ? Math.floor(strip[last + 1] / 3) : lastTriangle;
  const isHead = triangles[nextHalfedge(strip[first])] === vertex;
  const onward = isHead ? nextHalfedge : previousHalfedge;
  const around: number[] = [];
  let triangle = Math.floor(strip[first] / 3);
  let h = strip[first];
  while (triangle !== after) {
    h = onward(h);
    if (twins[h] === -1 || around.length > 256) return null;
    around.push(h);
    h = twins[h];
    triangle = Math.floor(h / 3);
  }
  // 3. Worth it only when the angle left on that side is less than straight.
  const outside = totalAngle(mesh, twins, strip[first], vertex) - inside;
  if (outside >= STRAIGHT) return null;
  return withoutLoops([...strip.slice(0, first), ...around, ...strip.slice(last + 1)], lastTriangle);
}

/** Sum of the angles of all triangles at a vertex inside the mesh; infinite at the border. */
function totalAngle(mesh: Mesh, twins: Int32Array, halfedge: number, vertex: number): number {
  const { triangles } = mesh;
  const start = triangles[halfedge] === vertex ? halfedge : nextHalfedge(halfedge);
  let sum = 0;
  let h = start;
  do {
    sum += cornerAngle(mesh, h);
    h = twins[previousHalfedge(h)];
    if (h === -1) return Number.POSITIVE_INFINITY;
  } while (h !== start);
  return sum;
}

/** Angle at the origin of a halfedge. */
function cornerAngle({ positions, triangles }: Mesh, h: number): number {
  const [o, a, b] = [3 * triangles[h], 3 * triangles[nextHalfedge(h)], 3 * triangles[previousHalfedge(h)]];
  let [aa, bb, ab] = [0, 0, 0];
  for (let k = 0; k < 3; k++) {
    const [u, v] = [positions[a + k] - positions[o + k], positions[b + k] - positions[o + k]];
    aa += u * u;
    bb += v * v;
    ab += u * v;
  }
  return Math.atan2(Math.sqrt(Math.max(0, aa * bb - ab * ab)), ab);
}

/** A triangle entered twice: what lies between is left out. */
function withoutLoops(strip: readonly number[], lastTriangle: number): number[] {
  const kept: number[] = [];
  const seenAt = new Map<number, number>();
  for (const h of [...strip, 3 * lastTriangle]) {
    const triangle = Math.floor(h / 3);
    const before = seenAt.get(triangle);
    if (before !== undefined) {
      for (const dropped of kept.splice(before)) seenAt.delete(Math.floor(dropped / 3));
    }
    seenAt.set(triangle, kept.length);
    kept.push(h);
  }
  kept.pop();
  return kept;
}

import Constrainautor from '@kninnug/constrainautor';
import Delaunator from 'delaunator';
import { assertInvariant } from '../base/index.ts';
import { nextHalfedge } from '../mesh/index.ts';

/**
 * Constrained Delaunay triangles inside an outline, counter-clockwise.
 * `points` #P × 2, `border`: counter-clockwise walk over point indices (a slit is walked twice); all other points lie
 * inside. Rounds of smoothing move those inner points (in place) to the middle of their neighbours.
 * Source: Sloan, Adv. Eng. Software 15 (1993) for the constraints. O(n log n).
 */
export function triangulateOutline(
  points: Float64Array,
  border: Uint32Array,
  smoothingRounds = 0,
): Uint32Array {
  if (border.length === 3 && points.length === 6) return border.slice();
  const isFixed = new Uint8Array(points.length / 2);
  for (const v of border) isFixed[v] = 1;
  let triangles = triangulateOnce(points, border);
  for (let round = 0; round < smoothingRounds; round++) {
    if (smoothPoints(points, triangles, isFixed)) triangles = triangulateOnce(points, border);
  }
  return triangles;
}

function triangulateOnce(points: Float64Array, border: Uint32Array): Uint32Array {
  const delaunay = new Delaunator(points);
  const edges: [number, number][] = [];
  for (let i = 0; i < border.length; i++) edges.push([border[i], border[(i + 1) % border.length]]);
  constrain(delaunay, edges);
  return keepInside(delaunay, edges, points.length / 2);
}

function constrain(delaunay: Delaunator<Float64Array>, edges: readonly [number, number][]): void {
  const constrainer = new Constrainautor(delaunay);
  for (const [a, b] of edges) constrainer.constrainOne(a, b);
}

/** Floods from the left of the border walk, not over border edges. */
function keepInside(
  delaunay: Delaunator<Float64Array>,
  edges: readonly [number, number][],
  pointCount: number,
): Uint32Array {
  // Delaunator counts counter-clockwise in a y-down plane: its triangles are clockwise here.
  const { triangles, halfedges } = delaunay;
  const isBorder = new Set(edges.map(([a, b]) => a * pointCount + b));
  const isKept = new Uint8Array(triangles.length / 3);
  const stack: number[] = [];
  for (let e = 0; e < triangles.length; e++) {
    // Against a clockwise triangle's direction its inside lies on the left.
    if (isBorder.has(triangles[nextHalfedge(e)] * pointCount + triangles[e])) stack.push(Math.floor(e / 3));
  }
  const out: number[] = [];
  for (let f = stack.pop(); f !== undefined; f = stack.pop()) {
    if (isKept[f]) continue;
    isKept[f] = 1;
    out.push(triangles[3 * f], triangles[3 * f + 2], triangles[3 * f + 1]);
    for (let e = 3 * f; e < 3 * f + 3; e++) {
      const a = triangles[nextHalfedge(e)];
      const b = triangles[e];
      if (isBorder.has(a * pointCount + b)) continue;
      assertInvariant(halfedges[e] !== -1, 'seams', 'an outline encloses its triangles', `${a}–${b}`);
      stack.push(Math.floor(halfedges[e] / 3));
    }
  }
  return Uint32Array.from(out);
}

/** Moves free points to the mean of their neighbours; false when there are none. */
function smoothPoints(points: Float64Array, triangles: Uint32Array, isFixed: Uint8Array): boolean {
  const sums = new Float64Array(points.length);
  const counts = new Uint32Array(points.length / 2);
  for (let e = 0; e < triangles.length; e++) {
    const a = triangles[e];
    const b = triangles[nextHalfedge(e)];
    // Inner edges come once from each side, so every neighbour of an inner point is summed once.
    sums[2 * a] += points[2 * b];
    sums[2 * a + 1] += points[2 * b + 1];
    counts[a]++;
  }
  let isAnyFree = false;
  for (let v = 0; v < counts.length; v++) {
    if (isFixed[v] || counts[v] === 0) continue;
    isAnyFree = true;
    points[2 * v] = sums[2 * v] / counts[v];
    points[2 * v + 1] = sums[2 * v + 1] / counts[v];
  }
  return isAnyFree;
}

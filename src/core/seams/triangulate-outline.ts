import Constrainautor from '@kninnug/constrainautor';
import Delaunator from 'delaunator';
import { assertInvariant } from '../base/index.ts';
import { nextHalfedge } from '../mesh/index.ts';

/**
 * Constrained Delaunay triangles inside an outline, counter-clockwise.
 * `points` #P × 2, `border`: counter-clockwise walk over point indices, which come first (a slit is walked twice);
 * all other points lie inside.
 * Source: Sloan, Adv. Eng. Software 15 (1993) for the constraints. O(n log n).
 */
export function triangulateOutline(points: Float64Array, border: Uint32Array): Uint32Array {
  if (border.length === 3 && points.length === 6) return border.slice();
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
  const last = edges.reduce((most, [a]) => Math.max(most, a), 0);
  const keys = new Set(edges.map(([a, b]) => a * pointCount + b));
  const isBorder = new Uint8Array(triangles.length);
  const isKept = new Uint8Array(triangles.length / 3);
  const stack: number[] = [];
  for (let e = 0; e < triangles.length; e++) {
    // Against a clockwise triangle's direction its inside lies on the left.
    const from = triangles[nextHalfedge(e)];
    const to = triangles[e];
    if (from > last || to > last || !keys.has(from * pointCount + to)) continue;
    isBorder[e] = 1;
    stack.push((e / 3) | 0);
  }
  const out: number[] = [];
  for (let f = stack.pop(); f !== undefined; f = stack.pop()) {
    if (isKept[f]) continue;
    isKept[f] = 1;
    out.push(triangles[3 * f], triangles[3 * f + 2], triangles[3 * f + 1]);
    for (let e = 3 * f; e < 3 * f + 3; e++) {
      if (isBorder[e]) continue;
      if (halfedges[e] === -1) assertInvariant(false, 'seams', 'an outline encloses its triangles', f);
      stack.push((halfedges[e] / 3) | 0);
    }
  }
  return Uint32Array.from(out);
}

/**
 * Moves inner points (in place) to the middle of their neighbours, `rounds` times, and triangulates anew.
 * Keeps points and triangles as they are if a point would leave the outline at a notch.
 */
export function smoothTriangles(
  points: Float64Array,
  border: Uint32Array,
  triangles: Uint32Array,
  rounds: number,
): Uint32Array {
  const isFixed = new Uint8Array(points.length / 2);
  for (const v of border) isFixed[v] = 1;
  const kept = points.slice();
  let isMoved = false;
  for (let round = 0; round < rounds; round++) isMoved = smoothPoints(points, triangles, isFixed) || isMoved;
  if (!isMoved) return triangles;
  const smoothed = triangulateOutline(points, border);
  if (smoothed.length === triangles.length) return smoothed;
  points.set(kept);
  return triangles;
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

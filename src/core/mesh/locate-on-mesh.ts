import type { Mesh } from './mesh.ts';

/** A point on a mesh: a triangle and the weights of its three corners, which sum to 1. */
export interface SurfacePoint {
  readonly triangle: number;
  readonly weights: readonly [number, number, number];
}

/** Coordinates of a point on the mesh, mm. */
export function positionOnMesh(
  { positions, triangles }: Mesh,
  point: SurfacePoint,
): [number, number, number] {
  const at: [number, number, number] = [0, 0, 0];
  for (let k = 0; k < 3; k++) {
    const v = 3 * triangles[3 * point.triangle + k];
    for (let axis = 0; axis < 3; axis++) at[axis] += point.weights[k] * positions[v + axis];
  }
  return at;
}

/**
 * Point of the mesh nearest to x, y, z (mm); null when it has no triangle. Tries every triangle: O(#F).
 * Nearest point of a triangle by regions: Ericson, Real-Time Collision Detection (2005), §5.1.5.
 */
export function locateOnMesh(mesh: Mesh, at: readonly number[]): SurfacePoint | null {
  let best = Number.POSITIVE_INFINITY;
  let found: SurfacePoint | null = null;
  for (let triangle = 0; triangle < mesh.triangles.length / 3; triangle++) {
    const point: SurfacePoint = { triangle, weights: nearestWeights(mesh, triangle, at) };
    const [x, y, z] = positionOnMesh(mesh, point);
    const distance = (x - at[0]) ** 2 + (y - at[1]) ** 2 + (z - at[2]) ** 2;
    if (distance >= best) continue;
    best = distance;
    found = point;
  }
  return found;
}

/** Weights of the point of a triangle nearest to x, y, z. */
export function nearestWeights(
  mesh: Mesh,
  triangle: number,
  at: readonly number[],
): [number, number, number] {
  const { positions, triangles } = mesh;
  const [a, b, c] = [0, 1, 2].map((k) => 3 * triangles[3 * triangle + k]);
  const dot = (from: number, to: number, origin: number) => {
    let sum = 0;
    for (let k = 0; k < 3; k++) {
      sum += (positions[to + k] - positions[from + k]) * (at[k] - positions[origin + k]);
    }
    return sum;
  };
  const [d1, d2] = [dot(a, b, a), dot(a, c, a)];
  if (d1 <= 0 && d2 <= 0) return [1, 0, 0];
  const [d3, d4] = [dot(a, b, b), dot(a, c, b)];
  if (d3 >= 0 && d4 <= d3) return [0, 1, 0];
  const vc = d1 * d4 - d3 * d2;
  if (vc <= 0 && d1 >= 0 && d3 <= 0) return [1 - d1 / (d1 - d3), d1 / (d1 - d3), 0];
  const [d5, d6] = [dot(a, b, c), dot(a, c, c)];
  if (d6 >= 0 && d5 <= d6) return [0, 0, 1];
  const vb = d5 * d2 - d1 * d6;
  if (vb <= 0 && d2 >= 0 && d6 <= 0) return [1 - d2 / (d2 - d6), 0, d2 / (d2 - d6)];
  const va = d3 * d6 - d5 * d4;
  if (va <= 0 && d4 >= d3 && d5 >= d6) {
    const w = (d4 - d3) / (d4 - d3 + (d5 - d6));
    return [0, 1 - w, w];
  }
  const sum = va + vb + vc;
  return [va / sum, vb / sum, vc / sum];
}

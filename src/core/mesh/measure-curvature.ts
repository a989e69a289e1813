import { findTwins, nextHalfedge, previousHalfedge } from './halfedges.ts';
import type { Mesh } from './mesh.ts';

/** #F × 3 corner angles in radians; entry e is the angle at vertex triangles[e]. atan2 form, exact near 0 and π. */
export function measureCornerAngles(mesh: Mesh): Float64Array {
  const { positions: p, triangles } = mesh;
  const angles = new Float64Array(triangles.length);
  for (let e = 0; e < triangles.length; e++) {
    const a = 3 * triangles[e];
    const b = 3 * triangles[nextHalfedge(e)];
    const c = 3 * triangles[previousHalfedge(e)];
    const ux = p[b] - p[a];
    const uy = p[b + 1] - p[a + 1];
    const uz = p[b + 2] - p[a + 2];
    const vx = p[c] - p[a];
    const vy = p[c + 1] - p[a + 1];
    const vz = p[c + 2] - p[a + 2];
    const cross = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    angles[e] = Math.atan2(cross, ux * vx + uy * vy + uz * vz);
  }
  return angles;
}

/**
 * #V angle defects: 2π − Σ angles inside (integrated Gaussian curvature), π − Σ angles on the border
 * (integrated geodesic curvature). Vertices without triangles give 0. O(#F).
 */
export function measureAngleDefects(mesh: Mesh, twins?: Int32Array): Float64Array {
  const vertexCount = mesh.positions.length / 3;
  const twin = twins ?? findTwins(mesh.triangles, vertexCount);
  const angles = measureCornerAngles(mesh);
  const defects = new Float64Array(vertexCount);
  const sums = new Float64Array(vertexCount);
  for (let e = 0; e < angles.length; e++) {
    const v = mesh.triangles[e];
    sums[v] += angles[e];
    if (defects[v] === 0) defects[v] = 2 * Math.PI;
  }
  for (let e = 0; e < angles.length; e++) if (twin[e] === -1) defects[mesh.triangles[e]] = Math.PI;
  for (let v = 0; v < vertexCount; v++) defects[v] -= sums[v];
  return defects;
}

/** Sum of all angle defects; Gauss–Bonnet: equals 2π χ on every manifold mesh, to rounding. */
export function measureTotalCurvature(mesh: Mesh): number {
  let sum = 0;
  for (const defect of measureAngleDefects(mesh)) sum += defect;
  return sum;
}

import { measureCornerAngles } from './measure-curvature.ts';
import type { Mesh } from './mesh.ts';

/** #F smallest corner angle of each triangle, radians; π/3 is perfect. */
export function measureSmallestAngles(mesh: Mesh): Float64Array {
  const angles = measureCornerAngles(mesh);
  const out = new Float64Array(angles.length / 3);
  for (let f = 0; f < out.length; f++) out[f] = Math.min(angles[3 * f], angles[3 * f + 1], angles[3 * f + 2]);
  return out;
}

/** #F × 3 cotangents of the corner angles; entry e is opposite halfedge nextHalfedge(e). Infinite without area. */
export function measureCornerCotangents(mesh: Mesh): Float64Array {
  const angles = measureCornerAngles(mesh);
  for (let e = 0; e < angles.length; e++) angles[e] = 1 / Math.tan(angles[e]);
  return angles;
}

import { measureCornerAngles } from './measure-curvature.ts';
import type { Mesh } from './mesh.ts';

/** #F × 3 unit normals, outward for counter-clockwise triangles; zero for triangles without area. */
export function measureTriangleNormals(mesh: Mesh): Float64Array {
  const { positions: p, triangles } = mesh;
  const normals = new Float64Array(triangles.length);
  for (let e = 0; e < triangles.length; e += 3) {
    const a = 3 * triangles[e];
    const b = 3 * triangles[e + 1];
    const c = 3 * triangles[e + 2];
    const ux = p[b] - p[a];
    const uy = p[b + 1] - p[a + 1];
    const uz = p[b + 2] - p[a + 2];
    const vx = p[c] - p[a];
    const vy = p[c + 1] - p[a + 1];
    const vz = p[c + 2] - p[a + 2];
    normals[e] = uy * vz - uz * vy;
    normals[e + 1] = uz * vx - ux * vz;
    normals[e + 2] = ux * vy - uy * vx;
  }
  return normalizeRows(normals);
}

/**
 * #V × 3 unit normals, triangles weighted by their corner angle, so that cutting a face differently
 * changes nothing. Source: Thürmer and Wüthrich, J. Graphics Tools 3 (1998).
 */
export function measureVertexNormals(mesh: Mesh): Float64Array {
  const faceNormals = measureTriangleNormals(mesh);
  const angles = measureCornerAngles(mesh);
  const normals = new Float64Array(mesh.positions.length);
  for (let e = 0; e < mesh.triangles.length; e++) {
    const v = 3 * mesh.triangles[e];
    const f = e - (e % 3);
    for (let k = 0; k < 3; k++) normals[v + k] += angles[e] * faceNormals[f + k];
  }
  return normalizeRows(normals);
}

function normalizeRows(rows: Float64Array): Float64Array {
  for (let i = 0; i < rows.length; i += 3) {
    const length = Math.hypot(rows[i], rows[i + 1], rows[i + 2]);
    if (length === 0) continue;
    for (let k = 0; k < 3; k++) rows[i + k] /= length;
  }
  return rows;
}

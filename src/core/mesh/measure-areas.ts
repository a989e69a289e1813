import type { Mesh } from './mesh.ts';

/** #F areas, mm². O(#F). */
export function measureTriangleAreas(mesh: Mesh): Float64Array {
  const { positions: p, triangles } = mesh;
  const areas = new Float64Array(triangles.length / 3);
  for (let f = 0; f < areas.length; f++) {
    const a = 3 * triangles[3 * f];
    const b = 3 * triangles[3 * f + 1];
    const c = 3 * triangles[3 * f + 2];
    const ux = p[b] - p[a];
    const uy = p[b + 1] - p[a + 1];
    const uz = p[b + 2] - p[a + 2];
    const vx = p[c] - p[a];
    const vy = p[c + 1] - p[a + 1];
    const vz = p[c + 2] - p[a + 2];
    areas[f] = 0.5 * Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
  }
  return areas;
}

/** Whole area, mm². */
export function measureArea(mesh: Mesh): number {
  let sum = 0;
  for (const area of measureTriangleAreas(mesh)) sum += area;
  return sum;
}

/** #V: a third of the area of the triangles round each vertex, mm². Sums to the area. */
export function measureVertexAreas(mesh: Mesh): Float64Array {
  const out = new Float64Array(mesh.positions.length / 3);
  const areas = measureTriangleAreas(mesh);
  for (let e = 0; e < mesh.triangles.length; e++) out[mesh.triangles[e]] += areas[Math.floor(e / 3)] / 3;
  return out;
}

/**
 * Enclosed volume of a closed, outward oriented mesh, mm³: V = ⅙ Σ a·(b × c), the divergence theorem on x/3.
 * On an open mesh this is the volume of the cone over it from the origin: meaningless as a volume.
 */
export function measureVolume(mesh: Mesh): number {
  const { positions: p, triangles } = mesh;
  if (p.length === 0) return 0;
  // Relative to one vertex, so that a body far from the origin loses no digits.
  const [ox, oy, oz] = p;
  let sum = 0;
  for (let e = 0; e < triangles.length; e += 3) {
    const a = 3 * triangles[e];
    const b = 3 * triangles[e + 1];
    const c = 3 * triangles[e + 2];
    const bx = p[b] - ox;
    const by = p[b + 1] - oy;
    const bz = p[b + 2] - oz;
    const cx = p[c] - ox;
    const cy = p[c + 1] - oy;
    const cz = p[c + 2] - oz;
    sum +=
      (p[a] - ox) * (by * cz - bz * cy) +
      (p[a + 1] - oy) * (bz * cx - bx * cz) +
      (p[a + 2] - oz) * (bx * cy - by * cx);
  }
  return sum / 6;
}

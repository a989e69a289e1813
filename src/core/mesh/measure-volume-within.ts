import type { Mesh } from './mesh.ts';

/** A slab between two heights, and optionally between two depths. mm; a missing end is open. */
export interface Slab {
  readonly zMin?: number;
  readonly zMax?: number;
  readonly yMin?: number;
  readonly yMax?: number;
}

/**
 * Volume of that part of a closed, outward oriented mesh that lies in the slab, mm³. The flux of (x, 0, 0) through the
 * clipped surface (divergence theorem): the cuts are square to y or z, so nothing flows through them and they need not be
 * made. Exact for the triangles. O(#F).
 */
export function measureVolumeWithin(mesh: Mesh, slab: Slab): number {
  const { positions: p, triangles } = mesh;
  const cuts = [
    { axis: 2, sign: 1, at: slab.zMin },
    { axis: 2, sign: -1, at: slab.zMax },
    { axis: 1, sign: 1, at: slab.yMin },
    { axis: 1, sign: -1, at: slab.yMax },
  ];
  let sum = 0;
  for (let f = 0; f < triangles.length; f += 3) {
    let polygon: number[] = [];
    for (let k = 0; k < 3; k++) {
      const v = 3 * triangles[f + k];
      polygon.push(p[v], p[v + 1], p[v + 2]);
    }
    for (const { axis, sign, at } of cuts) {
      if (at !== undefined) polygon = clipPolygon(polygon, axis, sign, at);
    }
    sum += fluxOfX(polygon);
  }
  return sum;
}

/** Sutherland and Hodgman (Comm. ACM 17, 1974) against one plane; keeps sign · (coordinate − at) ≥ 0. */
function clipPolygon(polygon: readonly number[], axis: number, sign: number, at: number): number[] {
  const kept: number[] = [];
  for (let i = 0; i < polygon.length; i += 3) {
    const j = (i + 3) % polygon.length;
    const a = sign * (polygon[i + axis] - at);
    const b = sign * (polygon[j + axis] - at);
    if (a >= 0) kept.push(polygon[i], polygon[i + 1], polygon[i + 2]);
    if (a >= 0 === b >= 0) continue;
    const t = a / (a - b);
    for (let k = 0; k < 3; k++) kept.push(polygon[i + k] + t * (polygon[j + k] - polygon[i + k]));
  }
  return kept;
}

/** ∫ x n_x dA over a flat polygon: by triangles, mean x times the area seen along x. */
function fluxOfX(polygon: readonly number[]): number {
  let sum = 0;
  for (let i = 3; i + 3 < polygon.length; i += 3) {
    const uy = polygon[i + 1] - polygon[1];
    const uz = polygon[i + 2] - polygon[2];
    const vy = polygon[i + 4] - polygon[1];
    const vz = polygon[i + 5] - polygon[2];
    sum += ((polygon[0] + polygon[i] + polygon[i + 3]) / 3) * 0.5 * (uy * vz - uz * vy);
  }
  return sum;
}

/** Triangles in space by brute force, as a judge of pictures: nothing of the room `picture` is used here. mm. */
export interface Rays {
  /** How far towards the viewer the nearest cloth lies on the ray through a point; −∞: none on it at all. */
  firstHit(point: readonly number[]): number;
}

/** Rays parallel to `toViewer` (unit) against all triangles (Möller and Trumbore, Journal of Graphics Tools 2, 1997). */
export function castRays(
  positions: ArrayLike<number>,
  triangles: ArrayLike<number>,
  toViewer: readonly number[],
): Rays {
  const [dx, dy, dz] = toViewer;
  // Corner, both edges, the ray's direction × the second edge, and the determinant: 13 numbers each.
  const prepared = new Float64Array((13 * triangles.length) / 3);
  for (let f = 0; f < triangles.length; f += 3) {
    const corner = (k: number) => [0, 1, 2].map((axis) => positions[3 * triangles[f + k] + axis]);
    const [a, b, c] = [corner(0), corner(1), corner(2)];
    const [u, v] = [b, c].map((end) => end.map((value, axis) => value - a[axis]));
    const p = [dy * v[2] - dz * v[1], dz * v[0] - dx * v[2], dx * v[1] - dy * v[0]];
    prepared.set([...a, ...u, ...v, ...p, u[0] * p[0] + u[1] * p[1] + u[2] * p[2]], (13 * f) / 3);
  }
  return {
    firstHit([px, py, pz]) {
      let nearest = -Infinity;
      for (let i = 0; i < prepared.length; i += 13) {
        const det = prepared[i + 12];
        if (Math.abs(det) < 1e-12) continue;
        const [sx, sy, sz] = [px - prepared[i], py - prepared[i + 1], pz - prepared[i + 2]];
        const x = (sx * prepared[i + 9] + sy * prepared[i + 10] + sz * prepared[i + 11]) / det;
        if (x < 0 || x > 1) continue;
        const [ux, uy, uz] = [prepared[i + 3], prepared[i + 4], prepared[i + 5]];
        const [qx, qy, qz] = [sy * uz - sz * uy, sz * ux - sx * uz, sx * uy - sy * ux];
        const y = (dx * qx + dy * qy + dz * qz) / det;
        if (y < 0 || x + y > 1) continue;
        const reach = (prepared[i + 6] * qx + prepared[i + 7] * qy + prepared[i + 8] * qz) / det;
        nearest = Math.max(nearest, reach);
      }
      return nearest;
    },
  };
}

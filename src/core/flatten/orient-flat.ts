import type { PreparedDisk } from './prepare-disk.ts';

/**
 * Turns a layout in place so that up on the body (z) is +y in the mean over the area, and moves its area
 * centre to the origin. Where the panel has no up (flat lying, or symmetric about the vertical), the front
 * (y), then the side (x) of the body decides. `flat`: #V × 2 mm. O(#F).
 */
export function orientFlat(disk: PreparedDisk, flat: Float64Array): void {
  const { corners, mesh } = disk;
  // 1. Area centre and mean gradient of the body's coordinates over the flat.
  const middle = [0, 0];
  let flatArea = 0;
  const slope = new Float64Array(6);
  for (let f = 0; f < disk.triangleCount; f++) {
    const [a, b, c] = [corners[3 * f], corners[3 * f + 1], corners[3 * f + 2]];
    const ux = flat[2 * b] - flat[2 * a];
    const uy = flat[2 * b + 1] - flat[2 * a + 1];
    const vx = flat[2 * c] - flat[2 * a];
    const vy = flat[2 * c + 1] - flat[2 * a + 1];
    const double = ux * vy - uy * vx; // sign depends on the sorted order and cancels below
    const area = Math.abs(double) / 2;
    flatArea += area;
    middle[0] += (area * (flat[2 * a] + flat[2 * b] + flat[2 * c])) / 3;
    middle[1] += (area * (flat[2 * a + 1] + flat[2 * b + 1] + flat[2 * c + 1])) / 3;
    for (let k = 0; k < 3; k++) {
      const du = mesh.positions[3 * b + k] - mesh.positions[3 * a + k];
      const dv = mesh.positions[3 * c + k] - mesh.positions[3 * a + k];
      slope[2 * k] += (area * (du * vy - dv * uy)) / double;
      slope[2 * k + 1] += (area * (dv * ux - du * vx)) / double;
    }
  }
  // 2. The first body axis with a clear mean direction.
  const axis = [2, 1, 0].find((k) => Math.hypot(slope[2 * k], slope[2 * k + 1]) > 0.05 * flatArea) ?? 2;
  const length = Math.hypot(slope[2 * axis], slope[2 * axis + 1]);
  const [sin, cos] = length > 0 ? [slope[2 * axis] / length, slope[2 * axis + 1] / length] : [0, 1];
  const [mx, my] = [middle[0] / flatArea, middle[1] / flatArea];
  for (let v = 0; v < disk.vertexCount; v++) {
    const x = flat[2 * v] - mx;
    const y = flat[2 * v + 1] - my;
    flat[2 * v] = cos * x - sin * y;
    flat[2 * v + 1] = sin * x + cos * y;
  }
}

import type { Mesh } from '../mesh/index.ts';

/**
 * A flat disk of triangles (places n × 2 mm, counter-clockwise) as a plate from z = 0 to `thickness`, moved by (dx, dy):
 * top, underside, and a wall along every border edge. Watertight when the disk is a manifold; its volume is area ×
 * thickness. O(triangles).
 */
export function thickenFlat(
  flat: Float64Array,
  triangles: Uint32Array,
  thickness: number,
  dx = 0,
  dy = 0,
): Mesh {
  const count = flat.length / 2;
  const positions = new Float64Array(6 * count);
  for (let i = 0; i < count; i++) {
    positions.set([flat[2 * i] + dx, flat[2 * i + 1] + dy, 0], 3 * i);
    positions.set([flat[2 * i] + dx, flat[2 * i + 1] + dy, thickness], 3 * (count + i));
  }
  const faces: number[] = [];
  const border = new Map<string, readonly [number, number]>();
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [triangles[t], triangles[t + 1], triangles[t + 2]];
    faces.push(corners[0], corners[2], corners[1], ...corners.map((corner) => count + corner));
    for (let k = 0; k < 3; k++) {
      const [a, b] = [corners[k], corners[(k + 1) % 3]];
      if (!border.delete(`${b} ${a}`)) border.set(`${a} ${b}`, [a, b]);
    }
  }
  for (const [a, b] of border.values()) faces.push(a, b, count + b, a, count + b, count + a);
  return { positions, triangles: Uint32Array.from(faces) };
}

import type { Mesh } from '../../src/core/mesh/index.ts';

/** An open elliptic tube standing on z = 0, outside orientation. mm; `around` × `rows` quads, two triangles each. */
export function tube(
  halfWidth: number,
  halfDepth: number,
  height: number,
  around: number,
  rows: number,
): Mesh {
  const positions = new Float64Array(3 * around * (rows + 1));
  for (let row = 0, i = 0; row <= rows; row++) {
    for (let k = 0; k < around; k++, i += 3) {
      const angle = (2 * Math.PI * k) / around;
      positions.set([halfWidth * Math.cos(angle), halfDepth * Math.sin(angle), (height * row) / rows], i);
    }
  }
  const triangles: number[] = [];
  for (let row = 0; row < rows; row++) {
    for (let k = 0; k < around; k++) {
      const [a, b] = [row * around + k, row * around + ((k + 1) % around)];
      triangles.push(a, b, b + around, a, b + around, a + around);
    }
  }
  return { positions, triangles: Uint32Array.from(triangles) };
}

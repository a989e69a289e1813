import { nextHalfedge } from './halfedges.ts';
import type { Mesh } from './mesh.ts';

/** The place on halfedge `h` a fraction of its length from its start, mm. */
export function pointOnHalfedge(
  { positions, triangles }: Mesh,
  h: number,
  fraction: number,
): [number, number, number] {
  const [a, b] = [3 * triangles[h], 3 * triangles[nextHalfedge(h)]];
  const at = (k: number): number => positions[a + k] + fraction * (positions[b + k] - positions[a + k]);
  return [at(0), at(1), at(2)];
}

import { countEdges, findTwins } from './halfedges.ts';
import type { Mesh } from './mesh.ts';

/** χ = V − E + F over the vertices in use: 2 sphere, 1 disk, 0 annulus or torus. O(#F). */
export function eulerCharacteristic(mesh: Mesh, twins?: Int32Array): number {
  const vertexCount = mesh.positions.length / 3;
  const isUsed = new Uint8Array(vertexCount);
  for (const v of mesh.triangles) isUsed[v] = 1;
  let used = 0;
  for (let v = 0; v < vertexCount; v++) used += isUsed[v];
  const twin = twins ?? findTwins(mesh.triangles, vertexCount);
  return used - countEdges(twin) + mesh.triangles.length / 3;
}

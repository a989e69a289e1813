import { assertInvariant } from '../base/index.ts';
import { findTwins, nextHalfedge } from './halfedges.ts';
import type { Mesh } from './mesh.ts';

/**
 * Border loops as vertex lists along the border halfedges: the surface lies on the left seen from outside.
 * First vertex not repeated; loops start at their smallest vertex and are ordered by it. O(#F).
 * Throws when a vertex is on two borders at once (two sheets touching in a point).
 */
export function findBoundaryLoops(mesh: Mesh, twins?: Int32Array): Uint32Array[] {
  const { triangles } = mesh;
  const vertexCount = mesh.positions.length / 3;
  const twin = twins ?? findTwins(triangles, vertexCount);
  const following = new Int32Array(vertexCount).fill(-1);
  for (let e = 0; e < triangles.length; e++) {
    if (twin[e] !== -1) continue;
    const from = triangles[e];
    assertInvariant(following[from] === -1, 'mesh', 'a vertex lies on one border only', from);
    following[from] = triangles[nextHalfedge(e)];
  }
  const loops: Uint32Array[] = [];
  for (let start = 0; start < vertexCount; start++) {
    if (following[start] === -1) continue;
    const loop: number[] = [];
    for (let v = start; following[v] !== -1; ) {
      loop.push(v);
      const next = following[v];
      following[v] = -1;
      v = next;
    }
    loops.push(Uint32Array.from(loop));
  }
  return loops;
}

import { assertInvariant } from '../base/index.ts';

/**
 * Halfedge arithmetic: halfedge e runs from triangles[e] to triangles[nextHalfedge(e)] in triangle ⌊e / 3⌋.
 */
export function nextHalfedge(e: number): number {
  return e % 3 === 2 ? e - 2 : e + 1;
}

export function previousHalfedge(e: number): number {
  return e % 3 === 0 ? e + 2 : e - 1;
}

/**
 * Twin of every halfedge, −1 on the border. O(#F) by bucketing halfedges on their smaller vertex.
 * Throws when an edge has more than two triangles or two triangles run along it the same way:
 * call `validateMesh` first on meshes from outside.
 */
export function findTwins(triangles: Uint32Array, vertexCount: number): Int32Array {
  const twins = new Int32Array(triangles.length).fill(-1);
  // heads[v] = last open halfedge whose smaller end is v; links chain them.
  const heads = new Int32Array(vertexCount).fill(-1);
  const links = new Int32Array(triangles.length).fill(-1);
  for (let e = 0; e < triangles.length; e++) {
    const from = triangles[e];
    const to = triangles[nextHalfedge(e)];
    const low = Math.min(from, to);
    const high = Math.max(from, to);
    let other = heads[low];
    while (other !== -1) {
      const otherFrom = triangles[other];
      if ((otherFrom === low ? triangles[nextHalfedge(other)] : otherFrom) === high) break;
      other = links[other];
    }
    if (other === -1) {
      links[e] = heads[low];
      heads[low] = e;
      continue;
    }
    assertInvariant(
      twins[other] === -1 && triangles[other] === to,
      'mesh',
      'every edge has at most two triangles, running opposite ways',
      `edge ${from}–${to}`,
    );
    twins[e] = other;
    twins[other] = e;
  }
  return twins;
}

/** Edges counted once. */
export function countEdges(twins: Int32Array): number {
  let borders = 0;
  for (let e = 0; e < twins.length; e++) if (twins[e] === -1) borders++;
  return (twins.length + borders) / 2;
}

/**
 * Vertex neighbours in compressed rows: those of v are `neighbours[starts[v] .. starts[v + 1])`, unordered. O(#F).
 */
export function findNeighbours(
  triangles: Uint32Array,
  twins: Int32Array,
  vertexCount: number,
): { readonly starts: Uint32Array; readonly neighbours: Uint32Array } {
  const starts = new Uint32Array(vertexCount + 1);
  // An inner edge shows once from each side; a border edge must be told to its head as well.
  for (let e = 0; e < triangles.length; e++) {
    starts[triangles[e] + 1]++;
    if (twins[e] === -1) starts[triangles[nextHalfedge(e)] + 1]++;
  }
  for (let v = 0; v < vertexCount; v++) starts[v + 1] += starts[v];
  const fill = starts.slice();
  const neighbours = new Uint32Array(starts[vertexCount]);
  for (let e = 0; e < triangles.length; e++) {
    const from = triangles[e];
    const to = triangles[nextHalfedge(e)];
    neighbours[fill[from]++] = to;
    if (twins[e] === -1) neighbours[fill[to]++] = from;
  }
  return { starts, neighbours };
}

import { distance } from '../math/index.ts';
import { positionOnMesh, type SurfacePoint } from './locate-on-mesh.ts';
import type { Mesh } from './mesh.ts';
import { pointOnHalfedge } from './point-on-halfedge.ts';

/** Where an edge may be crossed, as fractions of its length; the strip is straightened afterwards. */
const CROSSINGS = [1 / 6, 1 / 2, 5 / 6];
const M = CROSSINGS.length;

/**
 * Halfedges crossed one after the other on a short way from one point to the other; empty when both lie in one
 * triangle, null when the points lie on parts of the mesh that do not hang together. `twins` as from `findTwins`.
 * A* over three points on every edge (Hart, Nilsson and Raphael 1968) with the straight distance as bound;
 * O(n log n) in the edges visited, which lie near the way.
 */
export function findTriangleStrip(
  mesh: Mesh,
  twins: Int32Array,
  from: SurfacePoint,
  to: SurfacePoint,
): number[] | null {
  if (from.triangle === to.triangle) return [];
  const { triangles } = mesh;
  const goal = positionOnMesh(mesh, to);
  const GOAL = triangles.length * M;
  const cost = new Float64Array(GOAL + 1).fill(Number.POSITIVE_INFINITY);
  const parents = new Int32Array(GOAL + 1).fill(-1);
  const heap = new NodeHeap();

  const pointOf = (node: number): [number, number, number] => {
    return pointOnHalfedge(mesh, Math.floor(node / M), CROSSINGS[node % M]);
  };
  const offer = (node: number, total: number, bound: number, parent: number) => {
    if (total >= cost[node]) return;
    cost[node] = total;
    parents[node] = parent;
    heap.push(node, total + bound);
  };
  const leave = (
    triangle: number,
    at: readonly number[],
    travelled: number,
    parent: number,
    entered: number,
  ) => {
    for (let h = 3 * triangle; h < 3 * triangle + 3; h++) {
      if (h === entered || twins[h] === -1) continue;
      for (let node = h * M; node < (h + 1) * M; node++) {
        const next = pointOf(node);
        offer(node, travelled + distance(at, next), distance(next, goal), parent);
      }
    }
  };

  leave(from.triangle, positionOnMesh(mesh, from), 0, -1, -1);
  for (let node = heap.pop(); node !== -1; node = heap.pop()) {
    if (node === GOAL) return halfedgesTo(parents, GOAL);
    const twin = twins[Math.floor(node / M)];
    const triangle = Math.floor(twin / 3);
    const at = pointOf(node);
    if (triangle === to.triangle) offer(GOAL, cost[node] + distance(at, goal), 0, node);
    else leave(triangle, at, cost[node], node, twin);
  }
  return null;
}

function halfedgesTo(parents: Int32Array, goal: number): number[] {
  const strip: number[] = [];
  for (let node = parents[goal]; node !== -1; node = parents[node]) strip.unshift(Math.floor(node / M));
  return strip;
}

/** Binary heap of nodes by their bound; a node offered again simply stands in it twice. */
class NodeHeap {
  private readonly nodes: number[] = [];
  private readonly bounds: number[] = [];

  push(node: number, bound: number): void {
    const { nodes, bounds } = this;
    let i = nodes.length;
    nodes.push(node);
    bounds.push(bound);
    while (i > 0) {
      const parent = (i - 1) >> 1;
      if (bounds[parent] <= bound) break;
      nodes[i] = nodes[parent];
      bounds[i] = bounds[parent];
      i = parent;
    }
    nodes[i] = node;
    bounds[i] = bound;
  }

  /** −1 when empty. */
  pop(): number {
    const { nodes, bounds } = this;
    if (nodes.length === 0) return -1;
    const top = nodes[0];
    const node = nodes.pop()!;
    const bound = bounds.pop()!;
    if (nodes.length === 0) return top;
    let i = 0;
    for (let child = 1; child < nodes.length; child = 2 * i + 1) {
      if (child + 1 < nodes.length && bounds[child + 1] < bounds[child]) child++;
      if (bounds[child] >= bound) break;
      nodes[i] = nodes[child];
      bounds[i] = bounds[child];
      i = child;
    }
    nodes[i] = node;
    bounds[i] = bound;
    return top;
  }
}

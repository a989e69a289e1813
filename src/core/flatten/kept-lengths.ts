import { distanceInSpace } from '../math/index.ts';
import { type SewnEdges, sourceOf } from './sewn-edges.ts';
import type { FlattenProblem } from './types.ts';

/** A path of a solved disk whose flat length is to be its length on the body. */
export interface KeptLength {
  readonly disk: number;
  /** Vertex pairs. */
  readonly edges: Int32Array;
  /** mm on the body. */
  readonly length3d: number;
  /** Index of the kept path in the problem. */
  readonly pathIndex: number;
}

/**
 * Kept paths on the solved disks, each distinct path once, and for those that run along sewn edges the
 * partner's side as well (its free shape should know of the length too).
 */
export function collectKeptLengths(problem: FlattenProblem, sewn: SewnEdges): KeptLength[] {
  const seen = new Set<string>();
  const kept: KeptLength[] = [];
  const add = (disk: number, edges: readonly number[], length3d: number, pathIndex: number): void => {
    const key = `${disk}:${edgeKeys(edges).join()}`;
    if (edges.length === 0 || seen.has(key)) return;
    seen.add(key);
    kept.push({ disk, edges: Int32Array.from(edges), length3d, pathIndex });
  };
  problem.keptPaths.forEach((path, pathIndex) => {
    const disk = sourceOf(problem, path.disk);
    const edges: number[] = [];
    for (let k = 0; k + 1 < path.vertices.length; k++) edges.push(path.vertices[k], path.vertices[k + 1]);
    const length3d = path.length ?? measureEdges(problem, disk, edges);
    add(disk, edges, length3d, pathIndex);
    for (const [partner, partnerEdges] of partnerPaths(disk, edges, sewn)) {
      add(partner, partnerEdges, length3d, pathIndex);
    }
  });
  return kept;
}

function edgeKeys(edges: readonly number[]): string[] {
  const keys: string[] = [];
  for (let k = 0; k < edges.length; k += 2) {
    keys.push(`${Math.min(edges[k], edges[k + 1])}-${Math.max(edges[k], edges[k + 1])}`);
  }
  return keys.sort();
}

function measureEdges(problem: FlattenProblem, disk: number, edges: readonly number[]): number {
  let sum = 0;
  for (let k = 0; k < edges.length; k += 2) sum += bodyLength(problem, disk, edges[k], edges[k + 1]);
  return sum;
}

/** Length of an edge on the body, mm. */
export function bodyLength(problem: FlattenProblem, disk: number, a: number, b: number): number {
  return distanceInSpace(problem.disks[disk].positions, a, b);
}

/** The same path on every other disk that holds a partner of each of its edges. */
function partnerPaths(disk: number, edges: readonly number[], sewn: SewnEdges): Map<number, number[]> {
  const found = new Map<number, number[]>();
  for (let k = 0; k < edges.length; k += 2) {
    const group = sewn.groupOf(disk, edges[k], edges[k + 1]);
    if (group < 0) return new Map();
    for (const [other, a, b] of sewn.groups[group].members) {
      if (other === disk) continue;
      const list = found.get(other);
      if (list) list.push(a, b);
      else found.set(other, [a, b]);
    }
  }
  for (const [other, list] of found) if (list.length !== edges.length) found.delete(other);
  return found;
}

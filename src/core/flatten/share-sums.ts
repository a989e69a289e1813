import type { JobResult } from './flatten-memory.ts';
import type { KeptLength } from './kept-lengths.ts';
import { type SewnEdges, sourceOf } from './sewn-edges.ts';
import type { FlattenProblem } from './types.ts';

interface Part {
  readonly sum: string;
  /** How many paths of the problem it stands for: mirror images count. */
  times: number;
  /** Energy per mm by which the form resists a longer part, and its growth per mm; all sides and images together. */
  force: number;
  stiffness: number;
  readonly entries: KeptLength[];
}

/**
 * Where only a sum of lengths is to be kept (`KeptPath.sum`), shares it out among its parts with the least energy: from
 * the disks solved alone with every part at its own length, each part is a spring of known force and stiffness, and
 * all are brought to one force. Returns `kept` with the lengths to hold; what is in no sum stays. The sum itself is exact,
 * the share is the first Newton step towards the best one. O(edges). Source: Nocedal and Wright, Numerical Optimization
 * (2006), ch. 12: multipliers are the slope of the energy in the constraint.
 */
export function shareSums(
  problem: FlattenProblem,
  sewn: SewnEdges,
  kept: readonly KeptLength[],
  solved: ReadonlyMap<number, JobResult>,
): readonly KeptLength[] {
  if (problem.keptPaths.every((path) => path.sum === undefined)) return kept;
  const parts = gatherParts(problem, sewn, kept, solved);
  const change = new Map<KeptLength, number>();
  for (const sum of new Set([...parts.values()].map((part) => part.sum))) {
    const own = [...parts.values()].filter((part) => part.sum === sum);
    if (own.length < 2 || own.some(({ stiffness }) => !(stiffness > 0))) continue;
    let [pull, give] = [0, 0];
    for (const { times, force, stiffness } of own) {
      pull += (times * force) / stiffness;
      give += (times * times) / stiffness;
    }
    for (const { times, force, stiffness, entries } of own) {
      const grown = ((pull / give) * times - force) / stiffness;
      for (const entry of entries) change.set(entry, grown);
    }
  }
  return kept.map((path) => ({ ...path, length3d: path.length3d + (change.get(path) ?? 0) }));
}

function gatherParts(
  problem: FlattenProblem,
  sewn: SewnEdges,
  kept: readonly KeptLength[],
  solved: ReadonlyMap<number, JobResult>,
): Map<string, Part> {
  const keyOf = (disk: number, edges: ArrayLike<number>): string => {
    const keys: number[] = [];
    for (let k = 0; k < edges.length; k += 2) keys.push(sewn.groupOf(disk, edges[k], edges[k + 1]));
    return keys.includes(-1) ? `${disk}:${Array.from(edges).join()}` : keys.sort((a, b) => a - b).join();
  };
  const parts = new Map<string, Part>();
  for (const { disk, vertices, sum } of problem.keptPaths) {
    if (sum === undefined) continue;
    const edges = Array.from(vertices).flatMap((v, k) => (k === 0 ? [] : [vertices[k - 1], v]));
    const key = keyOf(sourceOf(problem, disk), edges);
    const part = parts.get(key);
    if (part) part.times++;
    else parts.set(key, { sum, times: 1, force: 0, stiffness: 0, entries: [] });
  }
  const copies = new Map<number, number>();
  problem.disks.forEach((_, d) => {
    copies.set(sourceOf(problem, d), (copies.get(sourceOf(problem, d)) ?? 0) + 1);
  });
  const placeOnDisk = new Map<number, number>();
  for (const path of kept) {
    const rule = placeOnDisk.get(path.disk) ?? 0;
    placeOnDisk.set(path.disk, rule + 1);
    const part = parts.get(keyOf(path.disk, path.edges));
    const result = solved.get(path.disk);
    if (!part || !result) continue;
    const count = copies.get(path.disk) ?? 1;
    part.force -= count * result.forces[rule];
    part.stiffness += count / result.yields[rule];
    part.entries.push(path);
  }
  return parts;
}

import type { KeptLength } from './kept-lengths.ts';
import { type SewnEdges, sourceOf } from './sewn-edges.ts';
import type { FlattenProblem } from './types.ts';

/** What one disk must obey: edges (vertex pairs) whose flat lengths sum to a target, mm. */
interface WantedLength {
  readonly edges: ArrayLike<number>;
  readonly target: number;
}

/** A disk alone: its kept paths. */
export function rulesAlone(disk: number, kept: readonly KeptLength[]): WantedLength[] {
  return kept
    .filter((path) => path.disk === disk)
    .map((path) => ({ edges: path.edges, target: path.length3d }));
}

/**
 * A disk among the others: every sewn edge its group's length; and for kept paths with edges that are not sewn, what is
 * left for those after the sewn ones have theirs.
 */
export function rulesTogether(
  disk: number,
  sewn: SewnEdges,
  targets: Float64Array,
  kept: readonly KeptLength[],
): WantedLength[] {
  const rules: WantedLength[] = [];
  sewn.groups.forEach((group, g) => {
    for (const [owner, a, b, factor] of group.members) {
      if (owner === disk) rules.push({ edges: [a, b], target: targets[g] * factor });
    }
  });
  for (const path of kept) {
    if (path.disk !== disk) continue;
    const edges: number[] = [];
    let target = path.length3d;
    for (let k = 0; k < path.edges.length; k += 2) {
      const group = sewn.groupOf(disk, path.edges[k], path.edges[k + 1]);
      if (group < 0) edges.push(path.edges[k], path.edges[k + 1]);
      else target -= targets[group];
    }
    if (edges.length > 0) rules.push({ edges, target });
  }
  return rules;
}

/** Boundary places with sewn edges on both sides that are not the end of a join: 1, else 0. */
export function findStiffPlaces(
  problem: FlattenProblem,
  boundary: Int32Array,
  d: number,
  sewn: SewnEdges,
): Uint8Array {
  const isEnd = new Uint8Array(problem.disks[d].positions.length / 3);
  for (const join of problem.joins) {
    for (const side of [join.a, join.b]) {
      if (sourceOf(problem, side.disk) !== d) continue;
      isEnd[side.vertices[0]] = 1;
      isEnd[side.vertices[side.vertices.length - 1]] = 1;
    }
  }
  const n = boundary.length;
  return Uint8Array.from(boundary, (v, k) => {
    const before = sewn.groupOf(d, boundary[(k + n - 1) % n], v);
    const after = sewn.groupOf(d, v, boundary[(k + 1) % n]);
    return before >= 0 && after >= 0 && !isEnd[v] ? 1 : 0;
  });
}

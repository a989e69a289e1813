import { assertInvariant } from '../base/index.ts';
import type { FlattenProblem } from './types.ts';

/** Edges that become one in the sewn form. Disks here are those really solved; mirror images are mapped to them. */
export interface SewnGroup {
  /**
   * disk, first vertex, second vertex, for each distinct member, and how many times the sewn length it is long: 1, or
   * more where ease is sewn in.
   */
  readonly members: readonly (readonly [number, number, number, number])[];
  readonly keepsLength: boolean;
  /** Ids of joins it belongs to, for messages. */
  readonly joinId: string;
}

export interface SewnEdges {
  readonly groups: readonly SewnGroup[];
  /** Group of an edge of a solved disk, −1 when it is not sewn. */
  groupOf(disk: number, a: number, b: number): number;
  /** How many times its sewn length an edge is long; 1 when it is not sewn. */
  factorOf(disk: number, a: number, b: number): number;
  /** Joins whose ease contradicts another join: a piece cannot be longer than itself. */
  readonly conflicts: readonly string[];
}

/** The solved disk that stands for `disk`. */
export function sourceOf(problem: FlattenProblem, disk: number): number {
  return problem.mirrorOf[disk] < 0 ? disk : problem.mirrorOf[disk];
}

/**
 * Collects which edges must be equally long. One edge may take part in several joins once mirror images are
 * mapped to their sources (and twice in one, along the centre): all of them form one group. O(edges).
 */
export function groupSewnEdges(problem: FlattenProblem): SewnEdges {
  const idOf = problem.disks.map(() => new Map<number, number>());
  const edges: [number, number, number][] = [];
  const parent: number[] = [];
  /** Length over the parent's length. */
  const factor: number[] = [];
  const conflicts = new Set<string>();
  const keeps: boolean[] = [];
  const joinIds: string[] = [];
  const keyOf = (disk: number, a: number, b: number): number =>
    Math.min(a, b) * problem.disks[disk].positions.length + Math.max(a, b);
  const find = (i: number): number => {
    while (parent[i] !== i) {
      factor[i] *= factor[parent[i]];
      parent[i] = parent[parent[i]];
      i = parent[i];
    }
    return i;
  };
  const factorToRoot = (i: number): number => {
    let product = 1;
    for (let k = i; parent[k] !== k; k = parent[k]) product *= factor[k];
    return product;
  };
  const enter = (side: { disk: number; vertices: Uint32Array }, k: number, joinId: string): number => {
    const disk = sourceOf(problem, side.disk);
    const [a, b] = [side.vertices[k], side.vertices[k + 1]];
    const key = keyOf(disk, a, b);
    const known = idOf[disk].get(key);
    if (known !== undefined) return known;
    const id = edges.length;
    idOf[disk].set(key, id);
    edges.push([disk, a, b]);
    parent.push(id);
    factor.push(1);
    keeps.push(false);
    joinIds.push(joinId);
    return id;
  };
  for (const join of problem.joins) {
    assertInvariant(
      join.a.vertices.length === join.b.vertices.length,
      'flatten',
      `both sides of join ${join.id} have the same number of vertices`,
      `${join.a.vertices.length} and ${join.b.vertices.length}`,
    );
    for (let k = 0; k + 1 < join.a.vertices.length; k++) {
      const [a, b] = [enter(join.a, k, join.id), enter(join.b, k, join.id)];
      const [one, other] = [find(a), find(b)];
      const [fromOne, fromOther] = [factorToRoot(a), factorToRoot(b)];
      // Length of b over that of a.
      const ease =
        join.ease === undefined ? 1 : (1 + join.ease.fraction) ** (join.ease.side === 'b' ? 1 : -1);
      keeps[one] = keeps[one] || keeps[other] || join.keepsLength;
      if (one === other) {
        if (Math.abs(fromOther / fromOne / ease - 1) > 1e-12) conflicts.add(join.id);
        continue;
      }
      parent[other] = one;
      factor[other] = (ease * fromOne) / fromOther;
    }
  }
  const indexOf = new Map<number, number>();
  const groups: { members: [number, number, number, number][]; keepsLength: boolean; joinId: string }[] = [];
  const groupOfEdge = edges.map((edge, id) => {
    const root = find(id);
    let index = indexOf.get(root);
    if (index === undefined) {
      index = groups.length;
      indexOf.set(root, index);
      groups.push({ members: [], keepsLength: keeps[root], joinId: joinIds[root] });
    }
    groups[index].members.push([...edge, factorToRoot(id)]);
    return index;
  });
  // The shortest member has the sewn length.
  const leasts = groups.map(({ members }) => Math.min(...members.map((member) => member[3])));
  groups.forEach(({ members }, g) => {
    for (const member of members) member[3] /= leasts[g];
  });
  return {
    groups,
    groupOf: (disk, a, b) => {
      const id = idOf[disk].get(keyOf(disk, a, b));
      return id === undefined ? -1 : groupOfEdge[id];
    },
    factorOf: (disk, a, b) => {
      const id = idOf[disk].get(keyOf(disk, a, b));
      return id === undefined ? 1 : factorToRoot(id) / leasts[groupOfEdge[id]];
    },
    conflicts: [...conflicts],
  };
}

import { assertInvariant } from '../base/index.ts';
import type { FlattenProblem } from './types.ts';

/** Edges that become one in the sewn form. Disks here are those really solved; mirror images are mapped to them. */
export interface SewnGroup {
  /** disk, first vertex, second vertex, for each distinct member. */
  readonly members: readonly (readonly [number, number, number])[];
  readonly keepsLength: boolean;
  /** Ids of joins it belongs to, for messages. */
  readonly joinId: string;
}

export interface SewnEdges {
  readonly groups: readonly SewnGroup[];
  /** Group of an edge of a solved disk, −1 when it is not sewn. */
  groupOf(disk: number, a: number, b: number): number;
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
  const keeps: boolean[] = [];
  const joinIds: string[] = [];
  const keyOf = (disk: number, a: number, b: number): number =>
    Math.min(a, b) * problem.disks[disk].positions.length + Math.max(a, b);
  const find = (i: number): number => {
    while (parent[i] !== i) {
      parent[i] = parent[parent[i]];
      i = parent[i];
    }
    return i;
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
      const [one, other] = [find(enter(join.a, k, join.id)), find(enter(join.b, k, join.id))];
      parent[other] = one;
      keeps[one] = keeps[one] || keeps[other] || join.keepsLength;
    }
  }
  const indexOf = new Map<number, number>();
  const groups: { members: [number, number, number][]; keepsLength: boolean; joinId: string }[] = [];
  const groupOfEdge = edges.map((edge, id) => {
    const root = find(id);
    let index = indexOf.get(root);
    if (index === undefined) {
      index = groups.length;
      indexOf.set(root, index);
      groups.push({ members: [], keepsLength: keeps[root], joinId: joinIds[root] });
    }
    groups[index].members.push(edge);
    return index;
  });
  return {
    groups,
    groupOf: (disk, a, b) => {
      const id = idOf[disk].get(keyOf(disk, a, b));
      return id === undefined ? -1 : groupOfEdge[id];
    },
  };
}

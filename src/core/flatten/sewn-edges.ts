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
  const forest = new EdgeForest(problem);
  const conflicts = new Set<string>();
  for (const join of problem.joins) {
    assertInvariant(
      join.a.vertices.length === join.b.vertices.length,
      'flatten',
      `both sides of join ${join.id} have the same number of vertices`,
      `${join.a.vertices.length} and ${join.b.vertices.length}`,
    );
    // Length of b over that of a.
    const ease = join.ease === undefined ? 1 : (1 + join.ease.fraction) ** (join.ease.side === 'b' ? 1 : -1);
    for (let k = 0; k + 1 < join.a.vertices.length; k++) {
      const [a, b] = [forest.enter(join.a, k, join.id), forest.enter(join.b, k, join.id)];
      if (!forest.unite(a, b, ease, join.keepsLength)) conflicts.add(join.id);
    }
  }
  const { groups, groupOfEdge, leasts } = gatherGroups(forest);
  return {
    groups,
    groupOf: (disk, a, b) => {
      const id = forest.idOf(disk, a, b);
      return id === undefined ? -1 : groupOfEdge[id];
    },
    factorOf: (disk, a, b) => {
      const id = forest.idOf(disk, a, b);
      return id === undefined ? 1 : forest.factorToRoot(id) / leasts[groupOfEdge[id]];
    },
    conflicts: [...conflicts],
  };
}

/** Edges of solved disks in trees of those sewn together (union–find), each with its length over its parent's length. */
class EdgeForest {
  /** disk, first vertex, second vertex; parallel to all lists here. */
  readonly edges: [number, number, number][] = [];
  /** Asked of roots only. */
  readonly keeps: boolean[] = [];
  readonly joinIds: string[] = [];
  private readonly parent: number[] = [];
  /** Length over the parent's length. */
  private readonly factor: number[] = [];
  private readonly ids: readonly Map<number, number>[];

  constructor(private readonly problem: FlattenProblem) {
    this.ids = problem.disks.map(() => new Map<number, number>());
  }

  /** Number of an edge of a solved disk, undefined when it is not sewn. */
  idOf(disk: number, a: number, b: number): number | undefined {
    return this.ids[disk].get(this.keyOf(disk, a, b));
  }

  /** Number of edge k of a join's side; a new tree when it was not met yet. */
  enter(side: { disk: number; vertices: Uint32Array }, k: number, joinId: string): number {
    const disk = sourceOf(this.problem, side.disk);
    const [a, b] = [side.vertices[k], side.vertices[k + 1]];
    const known = this.idOf(disk, a, b);
    if (known !== undefined) return known;
    const id = this.edges.length;
    this.ids[disk].set(this.keyOf(disk, a, b), id);
    this.edges.push([disk, a, b]);
    this.parent.push(id);
    this.factor.push(1);
    this.keeps.push(false);
    this.joinIds.push(joinId);
    return id;
  }

  /** Sews b to a, `ease` times as long; false when they are sewn already with another ease. */
  unite(a: number, b: number, ease: number, keepsLength: boolean): boolean {
    const { keeps } = this;
    const [one, other] = [this.rootOf(a), this.rootOf(b)];
    const [fromOne, fromOther] = [this.factorToRoot(a), this.factorToRoot(b)];
    keeps[one] = keeps[one] || keeps[other] || keepsLength;
    if (one === other) return Math.abs(fromOther / fromOne / ease - 1) <= 1e-12;
    this.parent[other] = one;
    this.factor[other] = (ease * fromOne) / fromOther;
    return true;
  }

  /** Shortens the way to it as it goes. */
  rootOf(edge: number): number {
    const { parent, factor } = this;
    let i = edge;
    while (parent[i] !== i) {
      factor[i] *= factor[parent[i]];
      parent[i] = parent[parent[i]];
      i = parent[i];
    }
    return i;
  }

  /** Length over the root's length. */
  factorToRoot(edge: number): number {
    let product = 1;
    for (let k = edge; this.parent[k] !== k; k = this.parent[k]) product *= this.factor[k];
    return product;
  }

  private keyOf(disk: number, a: number, b: number): number {
    return Math.min(a, b) * this.problem.disks[disk].positions.length + Math.max(a, b);
  }
}

/** The trees as groups; `leasts`: the shortest member of each over its root, which has the sewn length. */
function gatherGroups(forest: EdgeForest) {
  const indexOf = new Map<number, number>();
  const groups: { members: [number, number, number, number][]; keepsLength: boolean; joinId: string }[] = [];
  const groupOfEdge = forest.edges.map((edge, id) => {
    const root = forest.rootOf(id);
    let index = indexOf.get(root);
    if (index === undefined) {
      index = groups.length;
      indexOf.set(root, index);
      groups.push({ members: [], keepsLength: forest.keeps[root], joinId: forest.joinIds[root] });
    }
    groups[index].members.push([...edge, forest.factorToRoot(id)]);
    return index;
  });
  const leasts = groups.map(({ members }) => Math.min(...members.map((member) => member[3])));
  groups.forEach(({ members }, g) => {
    for (const member of members) member[3] /= leasts[g];
  });
  return { groups, groupOfEdge, leasts };
}

import { orderMinimumDegree } from './order-minimum-degree.ts';
import type { SparsePattern } from './sparse-pattern.ts';

/** Parts no larger are left to the minimum degree. */
const SMALLEST = 120;
/** Unknowns with more neighbours are no part of the surface: they go last. */
const MOST_NEIGHBOURS = 60;
/** A part is cut where each side keeps so much of it. */
const LEAST_SHARE = 0.3;
/** Places that distances are taken from; lines lie between any two of them. */
const PLACES = 6;

/**
 * Order of elimination for surfaces with some links across: parted again and again by short cuts, whose points go last, the parts by
 * minimum degree. Less fill than minimum degree alone where there are thousands of unknowns. Depends on the pattern alone.
 * Cuts follow lines as far (in edges) from one place as from another, turned to the least vertex cover of the edges they cross.
 * Sources: George, "Nested dissection of a regular finite element mesh", SIAM J. Numer. Anal. 10 (1973); vertex cover from matching:
 * König's theorem as in Pothen, Simon and Liou, SIAM J. Matrix Anal. Appl. 11 (1990); minimum degree in parts: Ashcraft and Liu,
 * SIAM J. Matrix Anal. Appl. 19 (1998).
 */
export function orderNestedDissection(pattern: SparsePattern): Int32Array {
  const graph = new Dissection(pattern);
  graph.dissectAll();
  return orderMinimumDegree(pattern, graph.stages());
}

class Dissection {
  private readonly start: Int32Array;
  private readonly neighbours: Int32Array;
  /** Which part an unknown belongs to; 0 for those in cuts. */
  private readonly part: Int32Array;
  /** How often the part was cut before the cut an unknown is in; −1 for those in no cut. */
  private readonly depth: Int32Array;
  private parts = 1;
  private deepest = 0;
  private readonly queue: Int32Array;
  private readonly distances: Int32Array[];
  private readonly isHigh: Uint8Array;

  constructor(private readonly pattern: SparsePattern) {
    const { size, columnStart, rowIndex } = pattern;
    this.start = new Int32Array(size + 1);
    for (let c = 0; c < size; c++) {
      for (let k = columnStart[c] + 1; k < columnStart[c + 1]; k++) {
        this.start[c + 1]++;
        this.start[rowIndex[k] + 1]++;
      }
    }
    for (let i = 0; i < size; i++) this.start[i + 1] += this.start[i];
    this.neighbours = new Int32Array(this.start[size]);
    const cursor = this.start.slice(0, size);
    for (let c = 0; c < size; c++) {
      for (let k = columnStart[c] + 1; k < columnStart[c + 1]; k++) {
        this.neighbours[cursor[c]++] = rowIndex[k];
        this.neighbours[cursor[rowIndex[k]]++] = c;
      }
    }
    this.part = new Int32Array(size).fill(1);
    this.depth = new Int32Array(size).fill(-1);
    this.queue = new Int32Array(size);
    this.distances = Array.from({ length: PLACES }, () => new Int32Array(size));
    this.isHigh = new Uint8Array(size);
  }

  /** For `orderMinimumDegree`: unknowns of no cut first, then the cuts, the last ones first. */
  stages(): Int32Array {
    return this.depth.map((depth) => (depth < 0 ? 0 : this.deepest + 1 - depth));
  }

  dissectAll(): void {
    const all: number[] = [];
    for (let i = 0; i < this.pattern.size; i++) {
      if (this.start[i + 1] - this.start[i] > MOST_NEIGHBOURS) this.putIntoCut(i, 0);
      else all.push(i);
    }
    const waiting: [Int32Array, number][] = [[Int32Array.from(all), 1]];
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      const [nodes, depth] = next;
      if (nodes.length > SMALLEST)
        for (const piece of this.dissect(nodes, depth)) waiting.push([piece, depth + 1]);
    }
  }

  private putIntoCut(i: number, depth: number): void {
    this.part[i] = 0;
    this.depth[i] = depth;
    this.deepest = Math.max(this.deepest, depth);
  }

  /** Both sides of the best cut through a part, or what hangs together and the rest. */
  private dissect(nodes: Int32Array, depth: number): Int32Array[] {
    const own = this.part[nodes[0]];
    const { distances } = this;
    this.measure(nodes, nodes[0], distances[0]);
    const apart = nodes.filter((i) => distances[0][i] < 0);
    if (apart.length > 0) return this.giveParts([nodes.filter((i) => distances[0][i] >= 0), apart]);
    // Pairs far apart: the second of each as far as can be from the first, the first from all before.
    let from = farthest(nodes, [distances[0]]);
    for (let k = 0; k < PLACES; k++) {
      this.measure(nodes, from, distances[k]);
      from = farthest(nodes, k % 2 === 0 ? [distances[k]] : distances.slice(0, k + 1));
    }
    let best: Cut | undefined;
    for (let one = 0; one < PLACES; one++) {
      for (let other = one + 1; other < PLACES; other++) {
        const cut = this.cutBetween(nodes, own, distances[one], distances[other]);
        if (cut && (!best || cut.cost < best.cost)) best = cut;
      }
    }
    if (!best) return [];
    for (const i of best.points) this.putIntoCut(i, depth);
    const { a, b, level } = best;
    const left = nodes.filter((i) => this.part[i] === own);
    return this.giveParts([
      left.filter((i) => a[i] - b[i] < level),
      left.filter((i) => a[i] - b[i] >= level),
    ]);
  }

  private giveParts(pieces: Int32Array[]): Int32Array[] {
    for (const piece of pieces) {
      this.parts++;
      for (const i of piece) this.part[i] = this.parts;
    }
    return pieces.filter(({ length }) => length > 0);
  }

  /** Edges from a node to each of its part, into `distance`; −1 where none leads. */
  private measure(nodes: Int32Array, from: number, distance: Int32Array): void {
    const { start, neighbours, part, queue } = this;
    const own = part[from];
    for (const i of nodes) distance[i] = -1;
    distance[from] = 0;
    queue[0] = from;
    let count = 1;
    for (let k = 0; k < count && count < nodes.length; k++) {
      const i = queue[k];
      for (let n = start[i]; n < start[i + 1]; n++) {
        const j = neighbours[n];
        if (part[j] !== own || distance[j] >= 0) continue;
        distance[j] = distance[i] + 1;
        queue[count++] = j;
      }
    }
  }

  /** The shortest cut along a line where the difference of two distances is the same. */
  private cutBetween(nodes: Int32Array, own: number, a: Int32Array, b: Int32Array): Cut | undefined {
    // 1. The level that fewest edges cross.
    let low = Infinity;
    let high = -Infinity;
    for (const i of nodes) {
      low = Math.min(low, a[i] - b[i]);
      high = Math.max(high, a[i] - b[i]);
    }
    const below = new Int32Array(high - low + 2);
    const crossing = new Int32Array(high - low + 2);
    const { start, neighbours, part } = this;
    for (const i of nodes) {
      const level = a[i] - b[i] - low;
      below[level + 1]++;
      for (let n = start[i]; n < start[i + 1]; n++) {
        const j = neighbours[n];
        if (part[j] !== own) continue;
        const other = a[j] - b[j] - low;
        // Crossed by every threshold above this level up to the other's.
        if (other > level) {
          crossing[level + 1]++;
          crossing[other + 1]--;
        }
      }
    }
    for (let k = 1; k < below.length; k++) {
      below[k] += below[k - 1];
      crossing[k] += crossing[k - 1];
    }
    let at = -1;
    let least = Infinity;
    for (let k = 1; k <= high - low; k++) {
      const share = Math.min(below[k], nodes.length - below[k]) / nodes.length;
      const cost = crossing[k] * (1.5 - share);
      if (share < LEAST_SHARE || cost >= least) continue;
      at = k;
      least = cost;
    }
    if (at < 0) return undefined;
    // 2. The fewest points that touch all those edges.
    const { isHigh } = this;
    for (const i of nodes) isHigh[i] = a[i] - b[i] - low >= at ? 1 : 0;
    const points = this.coverEdges(nodes, own);
    const share = Math.min(below[at], nodes.length - below[at]) / nodes.length;
    return { points, a, b, level: low + at, cost: points.length * (1.5 - share) };
  }

  /** Least vertex cover of the edges between low and high nodes: a largest matching, then König's theorem. */
  private coverEdges(nodes: Int32Array, own: number): number[] {
    const { start, neighbours, part, isHigh } = this;
    const partner = new Map<number, number>();
    const lows: number[] = [];
    for (const i of nodes) {
      if (isHigh[i]) continue;
      for (let n = start[i]; n < start[i + 1]; n++) {
        if (part[neighbours[n]] !== own || !isHigh[neighbours[n]]) continue;
        lows.push(i);
        break;
      }
    }
    let seen = new Set<number>();
    const augment = (i: number): boolean => {
      for (let n = start[i]; n < start[i + 1]; n++) {
        const j = neighbours[n];
        if (part[j] !== own || !isHigh[j] || seen.has(j)) continue;
        seen.add(j);
        const taken = partner.get(j);
        if (taken !== undefined && !augment(taken)) continue;
        partner.set(j, i);
        return true;
      }
      return false;
    };
    const free: number[] = [];
    for (const i of lows) {
      seen = new Set();
      if (!augment(i)) free.push(i);
    }
    // Reached from unmatched lows: those highs, and the lows not reached.
    seen = new Set();
    const reached = new Set(free);
    for (const i of reached) {
      for (let n = start[i]; n < start[i + 1]; n++) {
        const j = neighbours[n];
        if (part[j] !== own || !isHigh[j] || seen.has(j)) continue;
        seen.add(j);
        const taken = partner.get(j);
        if (taken !== undefined) reached.add(taken);
      }
    }
    return [...lows.filter((i) => !reached.has(i)), ...seen];
  }
}

interface Cut {
  readonly points: readonly number[];
  /** Of the far side: a[i] − b[i] ≥ level. */
  readonly a: Int32Array;
  readonly b: Int32Array;
  readonly level: number;
  readonly cost: number;
}

/** The node whose least distance is the largest, the first of them. */
function farthest(nodes: Int32Array, distances: readonly Int32Array[]): number {
  let best = nodes[0];
  let most = -1;
  for (const i of nodes) {
    let least = Infinity;
    for (const distance of distances) least = Math.min(least, distance[i]);
    if (least > most) {
      most = least;
      best = i;
    }
  }
  return best;
}

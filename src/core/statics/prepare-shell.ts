import {
  analyseLdlt,
  findSlot,
  Ldlt,
  orderMinimumDegree,
  orderNestedDissection,
  patternFromPairs,
  type SparsePattern,
  vectorFronts,
} from '../math/index.ts';
import { findOpenEdges } from './find-open-edges.ts';
import { emptyHold, readHold } from './link-ends.ts';
import type { Links, RigidBody, ShellProblem } from './types.ts';

/**
 * What depends on how a shell is joined, not on its sizes: nodes, pattern and plan of the sparse factor. A node is three
 * unknowns: a free point's move, or a body's; a free body has a second one, its turn, in radians times its `reach` so that all
 * unknowns are lengths.
 */
export interface PreparedShell {
  readonly pointCount: number;
  readonly nodeCount: number;
  /** #P: node of a free point, or −1 − body. */
  readonly nodeOf: Int32Array;
  /** #B each: node of the move and of the turn; −1 without. */
  readonly moveOf: Int32Array;
  readonly turnOf: Int32Array;
  readonly pattern: SparsePattern;
  readonly factor: Ldlt;
  /**
   * #F × 6 of each triangle of cloth on free points: twice the slots of its blocks 00, 11, 22, 10, 20, 21, plus 1 where the block
   * is stored turned. −1 where a corner belongs to a body.
   */
  readonly slots: Int32Array;
  /** Triangles of cloth and then closing, #T × 3. */
  readonly faces: Uint32Array;
  readonly clothCount: number;
  /** Faces enclose a volume. */
  readonly isClosed: boolean;
}

/** Triangles of cloth and then those that close. */
export function facesOf(cloth: Uint32Array, closing: Uint32Array = new Uint32Array()): Uint32Array {
  const faces = new Uint32Array(cloth.length + closing.length);
  faces.set(cloth);
  faces.set(closing, cloth.length);
  return faces;
}

/** Plans the sums of a shell. Cost: about that of two factors. May be kept while triangles, ends and bodies stay. */
export function prepareShell(problem: ShellProblem): PreparedShell {
  const pointCount = problem.start.length / 3;
  const { nodeOf, moveOf, turnOf, nodeCount } = numberNodes(pointCount, problem.bodies ?? []);
  const cloth = problem.membrane.triangles;
  const faces = facesOf(cloth, problem.closing);
  const pairs: number[] = [];
  const hold = emptyHold();
  const couple = (p: number, q: number): void => {
    const of = (point: number): number[] => {
      const node = nodeOf[point];
      return node >= 0 ? [node] : [moveOf[-1 - node], turnOf[-1 - node]].filter((n) => n >= 0);
    };
    for (const a of of(p)) for (const b of of(q)) pairs.push(a, b);
  };
  for (let t = 0; t < faces.length; t += 3) {
    couple(faces[t], faces[t + 1]);
    couple(faces[t + 1], faces[t + 2]);
    couple(faces[t + 2], faces[t]);
  }
  for (const links of [problem.strands, problem.strips]) {
    for (let k = 0; k < (links?.lengths.length ?? 0); k++) {
      readHold(problem, links!, k, hold);
      for (let i = 0; i < hold.count; i++) for (let j = 0; j < i; j++) couple(hold.points[i], hold.points[j]);
    }
  }
  for (let b = 0; b < moveOf.length; b++) if (turnOf[b] >= 0) pairs.push(moveOf[b], turnOf[b]);
  const pattern = patternFromPairs(nodeCount, pairs);
  return {
    pointCount,
    nodeCount,
    nodeOf,
    moveOf,
    turnOf,
    pattern,
    factor: new Ldlt(analyseLdlt(pattern, 3, orderOf(pattern)), vectorFronts),
    slots: slotsOfTriangles(cloth, nodeOf, pattern),
    faces,
    clothCount: cloth.length / 3,
    isClosed: findOpenEdges(faces).length === 0,
  };
}

/** From so many nodes on parting comes to less work than the minimum degree alone: a fifth less at 7000, a third at 10 000. */
const MANY = 5000;

function orderOf(pattern: SparsePattern): Int32Array {
  return pattern.size > MANY ? orderNestedDissection(pattern) : orderMinimumDegree(pattern);
}

/** True where `prepared` fits the problem: the same points, triangles, ends and ways of moving. */
export function isPreparedFor(prepared: PreparedShell, problem: ShellProblem): boolean {
  const { nodeOf, moveOf, turnOf } = numberNodes(problem.start.length / 3, problem.bodies ?? []);
  const cloth = problem.membrane.triangles;
  return (
    prepared.clothCount * 3 === cloth.length &&
    prepared.faces.length === cloth.length + (problem.closing?.length ?? 0) &&
    cloth.every((point, k) => prepared.faces[k] === point) &&
    (problem.closing ?? []).every((point, k) => prepared.faces[cloth.length + k] === point) &&
    isSame(prepared.nodeOf, nodeOf) &&
    isSame(prepared.moveOf, moveOf) &&
    isSame(prepared.turnOf, turnOf) &&
    hasSlots(prepared, problem, problem.strands) &&
    hasSlots(prepared, problem, problem.strips)
  );
}

function isSame(a: Int32Array, b: Int32Array): boolean {
  return a.length === b.length && a.every((value, k) => value === b[k]);
}

function hasSlots(
  { nodeOf, moveOf, pattern }: PreparedShell,
  problem: ShellProblem,
  links: Links | undefined,
): boolean {
  const nodeAt = (point: number): number => (nodeOf[point] >= 0 ? nodeOf[point] : moveOf[-1 - nodeOf[point]]);
  const hold = emptyHold();
  for (let k = 0; k < (links?.lengths.length ?? 0); k++) {
    readHold(problem, links!, k, hold);
    for (let i = 0; i < hold.count; i++) {
      for (let j = 0; j < i; j++) {
        const a = nodeAt(hold.points[i]);
        const b = nodeAt(hold.points[j]);
        if (a >= 0 && b >= 0 && findSlot(pattern, a, b) < 0) return false;
      }
    }
  }
  return true;
}

function numberNodes(pointCount: number, bodies: readonly RigidBody[]) {
  const nodeOf = new Int32Array(pointCount);
  bodies.forEach(({ points }, b) => {
    for (const point of points) nodeOf[point] = -1 - b;
  });
  let nodeCount = 0;
  for (let p = 0; p < pointCount; p++) if (nodeOf[p] === 0) nodeOf[p] = nodeCount++;
  const moveOf = new Int32Array(bodies.length).fill(-1);
  const turnOf = new Int32Array(bodies.length).fill(-1);
  bodies.forEach(({ motion }, b) => {
    if (motion.kind !== 'fixed') moveOf[b] = nodeCount++;
    if (motion.kind === 'free') turnOf[b] = nodeCount++;
  });
  return { nodeOf, moveOf, turnOf, nodeCount };
}

function slotsOfTriangles(cloth: Uint32Array, nodeOf: Int32Array, pattern: SparsePattern): Int32Array {
  const slots = new Int32Array(2 * cloth.length).fill(-1);
  const corners = [0, 0, 1, 1, 2, 2, 1, 0, 2, 0, 2, 1];
  for (let t = 0; t < cloth.length / 3; t++) {
    const nodes = [0, 1, 2].map((k) => nodeOf[cloth[3 * t + k]]);
    if (nodes.some((node) => node < 0)) continue;
    for (let k = 0; k < 6; k++) {
      const row = nodes[corners[2 * k]];
      const column = nodes[corners[2 * k + 1]];
      slots[6 * t + k] = 2 * findSlot(pattern, row, column) + (row < column ? 1 : 0);
    }
  }
  return slots;
}

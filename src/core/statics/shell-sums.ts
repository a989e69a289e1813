import { findSlot } from '../math/index.ts';
import type { BodyFrames, ShellShape } from './pose-bodies.ts';
import type { PreparedShell } from './prepare-shell.ts';

/** What the parts of a shell add up to at one shape: gradient of the energy at points, and the tangent at nodes. */
export class ShellSums {
  /** #P × 3: gradient by the points' places, N (minus the force on them). */
  readonly atPoints: Float64Array;
  /** #nodes × 3. */
  readonly gradient: Float64Array;
  /** Per entry of the pattern 9, row by row. */
  readonly tangent: Float64Array;
  private readonly arms = new Float64Array(18);
  private readonly nodes = new Int32Array(4);
  private readonly block = new Float64Array(9);
  private readonly left = new Float64Array(9);

  constructor(
    readonly shell: PreparedShell,
    readonly frames: BodyFrames,
  ) {
    this.atPoints = new Float64Array(3 * shell.pointCount);
    this.gradient = new Float64Array(3 * shell.nodeCount);
    this.tangent = new Float64Array(9 * shell.pattern.rowIndex.length);
  }

  clear(withTangent: boolean): void {
    this.atPoints.fill(0);
    if (withTangent) this.tangent.fill(0);
  }

  /**
   * Adds the second derivative by points p and q (rows p), and by q and p, to the tangent; p = q once. Points of bodies
   * hand it on to the body's move and turn.
   */
  addBlock(shape: ShellShape, p: number, q: number, block: Float64Array, at: number): void {
    const { nodeOf, pattern } = this.shell;
    const a = nodeOf[p];
    const b = nodeOf[q];
    if (a >= 0 && b >= 0) {
      addAt(this.tangent, findSlot(pattern, a, b), block, at, a < b);
      return;
    }
    this.armsOf(shape, p, 0);
    this.armsOf(shape, q, 2);
    for (let i = 0; i < 2; i++) {
      for (let j = 2; j < 4; j++) {
        const row = this.nodes[i];
        const column = this.nodes[j];
        if (row < 0 || column < 0) continue;
        this.throughArms(p, q, i, j, block, at);
        const slot = findSlot(pattern, row, column);
        // The pair (q, p) brings the same block turned: seen by itself where both are one node, or within one body.
        if (p === q) {
          if (row >= column) addAt(this.tangent, slot, this.block, 0, false);
        } else {
          addAt(this.tangent, slot, this.block, 0, row < column);
          if (row === column) addAt(this.tangent, slot, this.block, 0, true);
        }
      }
    }
  }

  /** Nodes of a point, and for a body's its arm; from place `to`. */
  private armsOf({ positions, centres }: ShellShape, p: number, to: number): void {
    const { nodeOf, moveOf, turnOf } = this.shell;
    const node = nodeOf[p];
    this.nodes[to] = node >= 0 ? node : moveOf[-1 - node];
    this.nodes[to + 1] = node >= 0 ? -1 : turnOf[-1 - node];
    if (node >= 0) return;
    const b = -1 - node;
    for (let k = 0; k < 3; k++)
      this.arms[3 * to + k] = (positions[3 * p + k] - centres[3 * b + k]) / this.frames.reaches[b];
  }

  /** block = Jᵢᵀ K Jⱼ, J the identity, a body's axis, or −[arm]× for a turn. */
  private throughArms(p: number, q: number, i: number, j: number, source: Float64Array, at: number): void {
    const { left, block, arms } = this;
    for (let k = 0; k < 9; k++) left[k] = source[at + k];
    if (i === 1) {
      // −[arm]×ᵀ K = [arm]× K, column by column.
      for (let c = 0; c < 3; c++) crossInto(arms, 0, left, c, 3);
    } else this.alongAxis(p, left, 1, 3);
    block.set(left);
    if (j === 3) {
      // K (−[arm]×): row r becomes arm × r, as r · (x × arm) = x · (arm × r).
      for (let r = 0; r < 3; r++) crossInto(arms, 6, block, 3 * r, 1);
    } else this.alongAxis(q, block, 3, 1);
  }

  private alongAxis(p: number, matrix: Float64Array, across: number, along: number): void {
    const body = -1 - this.shell.nodeOf[p];
    if (body < 0 || this.shell.turnOf[body] >= 0) return;
    const { axes } = this.frames;
    const [x, y, z] = axes.subarray(3 * body, 3 * body + 3);
    for (let k = 0; k < 3; k++) {
      const at = k * across;
      const sum = x * matrix[at] + y * matrix[at + along] + z * matrix[at + 2 * along];
      matrix[at] = sum * x;
      matrix[at + along] = sum * y;
      matrix[at + 2 * along] = sum * z;
    }
  }

  /** Gradient at nodes from that at points. With `withTangent`, also what turning adds to it; last of all sums. */
  gather({ positions, centres }: ShellShape, withTangent: boolean): void {
    const { nodeOf, moveOf, turnOf, pointCount } = this.shell;
    const { gradient, atPoints, frames } = this;
    gradient.fill(0);
    for (let p = 0; p < pointCount; p++) {
      const node = nodeOf[p];
      if (node >= 0) {
        for (let k = 0; k < 3; k++) gradient[3 * node + k] = atPoints[3 * p + k];
        continue;
      }
      const b = -1 - node;
      if (moveOf[b] >= 0) for (let k = 0; k < 3; k++) gradient[3 * moveOf[b] + k] += atPoints[3 * p + k];
      if (turnOf[b] < 0) continue;
      const arm = [0, 1, 2].map((k) => (positions[3 * p + k] - centres[3 * b + k]) / frames.reaches[b]);
      const pull = atPoints.subarray(3 * p, 3 * p + 3);
      const at = 3 * turnOf[b];
      gradient[at] += arm[1] * pull[2] - arm[2] * pull[1];
      gradient[at + 1] += arm[2] * pull[0] - arm[0] * pull[2];
      gradient[at + 2] += arm[0] * pull[1] - arm[1] * pull[0];
      if (withTangent) this.addTurning(turnOf[b], arm, pull, frames.reaches[b]);
    }
    for (let b = 0; b < moveOf.length; b++)
      if (moveOf[b] >= 0 && turnOf[b] < 0) this.holdToAxis(b, withTangent);
  }

  /** Second derivative of a turned arm, ½ ω × (ω × arm), under a pull. */
  private addTurning(node: number, arm: number[], pull: Float64Array, reach: number): void {
    const slot = 9 * findSlot(this.shell.pattern, node, node);
    const along = arm[0] * pull[0] + arm[1] * pull[1] + arm[2] * pull[2];
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        const value = (arm[i] * pull[j] + arm[j] * pull[i]) / 2 - (i === j ? along : 0);
        this.tangent[slot + 3 * i + j] += value / reach;
      }
    }
  }

  /** A sliding body's node may only move along its axis: the two other directions are given a stiffness of their own. */
  private holdToAxis(b: number, withTangent: boolean): void {
    const node = this.shell.moveOf[b];
    const axis = this.frames.axes.subarray(3 * b, 3 * b + 3);
    const { gradient, tangent } = this;
    let along = 0;
    for (let k = 0; k < 3; k++) along += axis[k] * gradient[3 * node + k];
    for (let k = 0; k < 3; k++) gradient[3 * node + k] = along * axis[k];
    if (!withTangent) return;
    const slot = 9 * findSlot(this.shell.pattern, node, node);
    const stiffness = Math.max(1, Math.abs(tangent[slot] + tangent[slot + 4] + tangent[slot + 8]));
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++)
        tangent[slot + 3 * i + j] += stiffness * ((i === j ? 1 : 0) - axis[i] * axis[j]);
  }
}

/** Adds a block to the values of a slot, turned if asked. */
export function addAt(
  values: Float64Array,
  slot: number,
  block: Float64Array,
  from: number,
  isTurned: boolean,
): void {
  const to = 9 * slot;
  if (isTurned) {
    values[to] += block[from];
    values[to + 1] += block[from + 3];
    values[to + 2] += block[from + 6];
    values[to + 3] += block[from + 1];
    values[to + 4] += block[from + 4];
    values[to + 5] += block[from + 7];
    values[to + 6] += block[from + 2];
    values[to + 7] += block[from + 5];
    values[to + 8] += block[from + 8];
  } else for (let k = 0; k < 9; k++) values[to + k] += block[from + k];
}

/** The three numbers of `values` from `at` in steps of `stride` become arm × them. */
function crossInto(arms: Float64Array, from: number, values: Float64Array, at: number, stride: number): void {
  const x = values[at];
  const y = values[at + stride];
  const z = values[at + 2 * stride];
  values[at] = arms[from + 1] * z - arms[from + 2] * y;
  values[at + stride] = arms[from + 2] * x - arms[from] * z;
  values[at + 2 * stride] = arms[from] * y - arms[from + 1] * x;
}

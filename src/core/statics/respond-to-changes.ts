import { failure, type Result, success } from '../base/index.ts';
import { addMembrane, type RestTriangles, restTriangles } from './add-membrane.ts';
import { checkShell } from './check-shell.ts';
import { emptyHold, readHold, spanHold } from './link-ends.ts';
import { phrase } from './phrases.ts';
import { isPreparedFor, type PreparedShell, prepareShell } from './prepare-shell.ts';
import { readyShell, type ShellState, startShape, sumShell } from './shell-state.ts';
import type { EquilibriumOptions, ShellProblem } from './types.ts';

/** A small change of what a shell is made of, or of what pulls at it; several at once add up. */
export interface ShellChange {
  /** #F × 4, mm: as `restEdges`. */
  readonly restEdges?: Float64Array;
  /** #strands, mm. */
  readonly strandLengths?: Float64Array;
  /** #P × 3, N. */
  readonly forces?: Float64Array;
}

/**
 * How the points of a shell in balance move with each change, #P × 3 mm, to the first order: the tangent solved for what the
 * change does to the forces. `problem.start` is the balance. One factor for all changes, then two passes over the triangles
 * a change touches and one solve each. A start moved by the answer saves `findEquilibrium` most of its steps. Where zones press unlike, only the symmetric half of their tangent counts.
 *
 * Fails as `findEquilibrium` does, and as stalled where the shape is no minimum: not in balance, or held by nothing.
 * Source: implicit function theorem; rest edges by central differences of the triangles' forces.
 */
export function respondToChanges(
  problem: ShellProblem,
  changes: readonly ShellChange[],
  options: Pick<EquilibriumOptions, 'pushed'> = {},
  prepared?: PreparedShell,
): Result<Float64Array[]> {
  const faults = checkShell(problem, options);
  if (faults.length > 0) return failure(faults);
  const shell = prepared && isPreparedFor(prepared, problem) ? prepared : prepareShell(problem);
  const state = readyShell(problem, shell, options.pushed ?? 0.001);
  sumShell(state, startShape(state), true);
  if (!shell.factor.factor(state.sums.tangent, { stopAtNegative: true }).isUsable) {
    const force = state.sums.gradient.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
    const message = phrase('statics.stalled', { steps: 0, force });
    return failure([{ code: 'statics-stalled', path: '', message, severity: 'error' }]);
  }
  const steps = shell.factor.solveMany(changes.map((change) => gradientOf(state, change)));
  return success(steps.map((step) => movesOf(state, step)));
}

/** What a change adds to the gradient at the nodes. */
function gradientOf(state: ShellState, change: ShellChange): Float64Array {
  const { sums, problem, frames } = state;
  const { atPoints } = sums;
  atPoints.fill(0);
  if (change.restEdges) addRestChange(state, change.restEdges);
  if (change.strandLengths && problem.strands) {
    const { lengths, stiffness } = problem.strands;
    const hold = emptyHold();
    const along = new Float64Array(3);
    for (let k = 0; k < lengths.length; k++) {
      readHold(problem, problem.strands, k, hold);
      const length = spanHold(hold, problem.start, along);
      if (length <= lengths[k]) continue;
      const pull = (stiffness[k] * change.strandLengths[k]) / length;
      for (let i = 0; i < hold.count; i++)
        for (let axis = 0; axis < 3; axis++)
          atPoints[3 * hold.points[i] + axis] -= pull * hold.shares[i] * along[axis];
    }
  }
  if (change.forces) for (let k = 0; k < atPoints.length; k++) atPoints[k] -= change.forces[k];
  const here = { positions: problem.start, centres: frames.centres };
  sums.gather(here, false);
  return sums.gradient.slice();
}

/** Moves of all points by a step of the nodes, to the first order: minus the step, and minus its turn × the arm. */
function movesOf({ shell, frames, problem }: ShellState, step: Float64Array): Float64Array {
  const { nodeOf, moveOf, turnOf, pointCount } = shell;
  const moves = new Float64Array(3 * pointCount);
  for (let p = 0; p < pointCount; p++) {
    const node = nodeOf[p];
    const b = -1 - node;
    const move = node >= 0 ? node : moveOf[b];
    if (move >= 0) for (let k = 0; k < 3; k++) moves[3 * p + k] = -step[3 * move + k];
    if (node >= 0 || turnOf[b] < 0) continue;
    const x = (problem.start[3 * p] - frames.centres[3 * b]) / frames.reaches[b];
    const y = (problem.start[3 * p + 1] - frames.centres[3 * b + 1]) / frames.reaches[b];
    const z = (problem.start[3 * p + 2] - frames.centres[3 * b + 2]) / frames.reaches[b];
    const a = step[3 * turnOf[b]];
    const c = step[3 * turnOf[b] + 1];
    const d = step[3 * turnOf[b] + 2];
    moves[3 * p] -= c * z - d * y;
    moves[3 * p + 1] -= d * x - a * z;
    moves[3 * p + 2] -= a * y - c * x;
  }
  return moves;
}

/** Of the size of a triangle, that its edges are changed by to see what that does. */
const PROBE = 1e-5;

/** Adds the change of the cloth's gradient with its rest edges, by central differences over the triangles that change. */
function addRestChange(state: ShellState, change: Float64Array): void {
  const { problem, sums, pushed, pressure } = state;
  const { membrane } = problem;
  const touched: number[] = [];
  let largest = 0;
  for (let t = 0; t < membrane.triangles.length / 3; t++) {
    if (isNothing(change, 4 * t)) continue;
    let most = 0;
    let size = 0;
    for (let k = 4 * t; k < 4 * t + 4; k++) {
      most = Math.max(most, Math.abs(change[k]));
      size = Math.max(size, Math.abs(membrane.restEdges[k]));
    }
    touched.push(t);
    largest = Math.max(largest, most / size);
  }
  if (touched.length === 0) return;
  const probe = PROBE / largest;
  const here = { positions: problem.start, centres: state.frames.centres };
  const before = sums.atPoints.slice();
  sums.atPoints.fill(0);
  const sumWith = (share: number): void => {
    addMembrane(
      sums,
      pickTriangles(state.rest, membrane.restEdges, change, share, touched),
      here,
      pushed,
      pressure,
      false,
    );
  };
  sumWith(-probe);
  for (let k = 0; k < before.length; k++) sums.atPoints[k] = -sums.atPoints[k];
  sumWith(probe);
  for (let k = 0; k < before.length; k++) sums.atPoints[k] = before[k] + sums.atPoints[k] / (2 * probe);
}

function isNothing(change: Float64Array, at: number): boolean {
  return change[at] === 0 && change[at + 1] === 0 && change[at + 2] === 0 && change[at + 3] === 0;
}

/** The touched triangles alone, their rest edges changed by a share. */
function pickTriangles(
  { triangles, clothOf, laws }: RestTriangles,
  edges: Float64Array,
  change: Float64Array,
  share: number,
  touched: readonly number[],
): RestTriangles {
  const picked = new Uint32Array(3 * touched.length);
  const restEdges = new Float64Array(4 * touched.length);
  const cloths = new Uint8Array(touched.length);
  touched.forEach((t, n) => {
    for (let k = 0; k < 3; k++) picked[3 * n + k] = triangles[3 * t + k];
    for (let k = 0; k < 4; k++) restEdges[4 * n + k] = edges[4 * t + k] + share * change[4 * t + k];
    cloths[n] = clothOf[t];
  });
  return { ...restTriangles({ triangles: picked, restEdges, cloths: [], clothOf: cloths }), laws };
}

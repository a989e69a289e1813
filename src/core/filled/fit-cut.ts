import { failure, type Issue, type Result, success } from '../base/index.ts';
import { factorDense, solveDense } from '../math/index.ts';
import { type Equilibrium, findEquilibrium, prepareShell, respondToChanges } from '../statics/index.ts';
import { type CutChange, type CutGiven, changedProblem, changeOfCut } from './change-cut.ts';
import { residualsOfCut } from './cut-residuals.ts';
import { type CutUnknowns, cutUnknowns } from './cut-unknowns.ts';
import { filledProblem } from './filled-problem.ts';
import { holdOfCut } from './hold-of-cut.ts';
import { residualsOfSeams } from './seam-halves.ts';
import type { FilledShell } from './types.ts';

export interface FitCutOptions {
  /** How many shapes are tried at most; default 9. */
  readonly most?: number;
  /** Asked before every Newton step. */
  readonly shouldStop?: () => boolean;
  /** After every shape tried. */
  readonly onRound?: (round: FitRound) => void;
}

export interface FitRound {
  readonly round: number;
  readonly most: number;
  /** Of the weighted squares; undefined where the shell found no balance. */
  readonly cost?: number;
  readonly foretold: number;
}

/** A cut that fills out to the body: amounts of its unknowns, and the balance they were found in. */
export interface FittedCut {
  readonly unknowns: CutUnknowns;
  readonly amounts: Float64Array;
  readonly balance: Equilibrium;
  readonly filled: FilledShell;
  /** Shapes tried. */
  readonly rounds: number;
}

/** Share of its stiffness pushed cloth keeps meanwhile: enough that creases do not come and go from step to step. */
const PUSHED = 0.01;
/** A balance need not be closer: it leaves places right to a hundredth of a millimetre. */
const TOLERANCE = 1e-3;
const MOST_STEPS = 40;
/** Steps are held back by this share of what the unknowns do in the mean, and by so many times what a change costs. */
const FIRST_DAMPING = 0.03;
const HOLD_DAMPING = 100;
/** It is good enough when nothing more than this share of the cost is to be won. */
const LEAST_GAIN = 0.02;

/** The cut with the best shape so far, and its cost near there: cost + aᵀ N a − 2 rᵀ a for a step a. */
interface Stand {
  readonly amounts: Float64Array;
  readonly balance: Equilibrium;
  readonly cost: number;
  readonly normal: Float64Array;
  readonly right: Float64Array;
  /** How the points move with each unknown, #P × 3 each. */
  readonly moves: readonly Float64Array[];
}

/**
 * Re-cuts panels and braces so that the filled form comes out as the body: distances, girths (a little over), widths, depths,
 * and the halves of seams in least squares over the unknowns, by Levenberg and Marquardt's method; what a change does is told
 * by the tangent of the balance (one factor a round). Panels' partners come out nearly equal only; `flattenTogether` makes them so.
 *
 * Fails as `findEquilibrium` does where the shell as it is cut finds no balance, and when stopped. Deterministic. Cost per
 * round: one balance from near, as many solves as unknowns.
 * Source: Marquardt, SIAM J. Appl. Math. 11 (1963); the tangent by the implicit function theorem.
 */
export function fitCut(given: CutGiven, options: FitCutOptions = {}): Result<FittedCut> {
  const search = new CutSearch(given, options.shouldStop);
  const most = options.most ?? 9;
  let damping = FIRST_DAMPING;
  let stand = search.tryOut(search.start, search.filled.problem.start);
  if ('issues' in stand) return failure(stand.issues);
  let rounds = 1;
  options.onRound?.({ round: rounds, most, cost: stand.cost, foretold: stand.cost });
  while (rounds < most) {
    const { step, gain } = search.stepFrom(stand, damping);
    if (gain < LEAST_GAIN * stand.cost) break;
    const amounts = stand.amounts.map((x, k) => x + step[k]);
    const next = search.tryOut(amounts, startedFrom(stand, step), stand.cost);
    rounds++;
    const cost = 'issues' in next ? undefined : next.cost;
    options.onRound?.({
      round: rounds,
      most,
      ...(cost === undefined ? {} : { cost }),
      foretold: stand.cost - gain,
    });
    if (options.shouldStop?.()) return failure('issues' in next ? next.issues : []);
    if ('issues' in next || !next.isBetter) {
      damping *= 5;
      continue;
    }
    const share = (stand.cost - next.cost) / gain;
    damping *= share > 0.7 ? 0.3 : share > 0.3 ? 1 : 2;
    stand = next;
  }
  const { amounts, balance } = stand;
  return success({ unknowns: search.unknowns, amounts, balance, filled: search.filled, rounds });
}

/** Where the points will be after a step, to the first order. */
function startedFrom({ balance, moves }: Stand, step: Float64Array): Float64Array {
  const start = balance.positions.slice();
  moves.forEach((move, k) => {
    for (let i = 0; i < start.length; i++) start[i] += step[k] * move[i];
  });
  return start;
}

class CutSearch {
  readonly filled: FilledShell;
  readonly unknowns: CutUnknowns;
  readonly start: Float64Array;
  private readonly changes: readonly CutChange[];
  private readonly hold: Float64Array;
  private readonly residualsAt;
  private readonly seamsOf;
  private readonly prepared;

  constructor(
    private readonly given: CutGiven,
    private readonly shouldStop: () => boolean = () => false,
  ) {
    this.filled = filledProblem(given);
    const braces = this.filled.braces.map(({ brace }) => brace);
    this.unknowns = cutUnknowns(given.shell.panels, given.upright, braces);
    const n = this.unknowns.moves.length;
    this.start = new Float64Array(n);
    this.changes = this.unknowns.moves.map((_, k) => {
      const alone = new Float64Array(n);
      alone[k] = 1;
      return changeOfCut(given, this.filled, this.unknowns, alone);
    });
    this.hold = holdOfCut(given, this.unknowns, this.changes);
    this.residualsAt = residualsOfCut(this.filled);
    this.seamsOf = residualsOfSeams(given.shell);
    this.prepared = prepareShell(this.filled.problem);
  }

  /** The balance of a changed cut and what it costs; with its surroundings where that is less than `best`. */
  tryOut(
    amounts: Float64Array,
    start: Float64Array,
    best = Number.POSITIVE_INFINITY,
  ): (Stand & { readonly isBetter: boolean }) | { readonly issues: readonly Issue[] } {
    const change = changeOfCut(this.given, this.filled, this.unknowns, amounts);
    const problem = changedProblem(this.filled, change, start);
    const found = findEquilibrium(
      problem,
      { tolerance: TOLERANCE, maxSteps: MOST_STEPS, pushed: PUSHED, shouldStop: this.shouldStop },
      this.prepared,
    );
    if (!found.ok) return { issues: found.issues };
    const balance = found.value;
    const shape = this.residualsAt(balance.positions);
    const flats = this.given.upright.map((flat, p) => flat.map((x, i) => x + change.panels[p][i]));
    const seams = this.seamsOf(flats);
    const held = multiply(this.hold, amounts);
    const cost = dot(shape.values, shape.values) + dot(seams.values, seams.values) + dot(held, amounts);
    const none = { amounts, balance, cost, normal: held, right: held, moves: [] };
    if (!(cost < best)) return { ...none, isBetter: false };
    const moves = respondToChanges(
      { ...problem, start: balance.positions },
      this.changes,
      { pushed: PUSHED },
      this.prepared,
    );
    if (!moves.ok) return { issues: moves.issues };
    const columns = moves.value.map((move, k) => {
      const column = new Float64Array(shape.values.length + seams.values.length);
      shape.changeOf(move, column);
      seams.changeOf(this.changes[k].panels, column.subarray(shape.values.length));
      return column;
    });
    const residuals = Float64Array.from([...shape.values, ...seams.values]);
    const normal = this.hold.slice();
    const right = Float64Array.from(columns, (column, k) => -dot(column, residuals) - held[k]);
    addProducts(normal, columns);
    return { amounts, balance, cost, normal, right, moves: moves.value, isBetter: true };
  }

  /** The damped step, and by how much the cost will fall by it. */
  stepFrom({ normal, right }: Stand, damping: number): { step: Float64Array; gain: number } {
    const n = right.length;
    let mean = 0;
    for (let k = 0; k < n; k++) mean += normal[k * n + k] / n;
    const step = new Float64Array(n);
    for (let more = damping; ; more *= 10) {
      const damped = normal.map((x, k) => x + more * HOLD_DAMPING * this.hold[k]);
      for (let k = 0; k < n; k++) damped[k * n + k] += more * mean;
      if (!factorDense(damped, n)) continue;
      solveDense(damped, right, step);
      return { step, gain: 2 * dot(right, step) - dot(multiply(normal, step), step) };
    }
  }
}

function addProducts(normal: Float64Array, columns: readonly Float64Array[]): void {
  const n = columns.length;
  columns.forEach((column, i) => {
    for (let j = 0; j <= i; j++) {
      const product = dot(column, columns[j]);
      normal[i * n + j] += product;
      if (j < i) normal[j * n + i] += product;
    }
  });
}

function multiply(matrix: Float64Array, vector: Float64Array): Float64Array {
  const n = vector.length;
  return vector.map((_, i) => dot(matrix.subarray(i * n, i * n + n), vector));
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k] * b[k];
  return sum;
}

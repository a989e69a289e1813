import { assertInvariant } from '../base/index.ts';
import { factorDense, solveDense } from './solve-dense.ts';

export interface LeastSquaresProblem {
  readonly start: Float64Array;
  readonly residualCount: number;
  /** Fills `out` (#residuals) at the point `p`. */
  readonly residuals: (p: Float64Array, out: Float64Array) => void;
  /** Step for forward differences, one per unknown; used when `jacobian` is absent. */
  readonly steps?: Float64Array;
  /** Fills `out` (#residuals × #unknowns, row-major) at `p`. */
  readonly jacobian?: (p: Float64Array, residuals: Float64Array, out: Float64Array) => void;
}

export interface LeastSquaresOptions {
  readonly maxIterations?: number;
  /** Stop when the relative fall of the sum of squares is below this; default 1e-12. */
  readonly tolerance?: number;
  /** How many steps a Jacobian may serve beyond its first while it foretells the fall well; default 0. */
  readonly jacobianReuse?: number;
  /** Of the first step; default 1e-4. Less suits a start near the end of a stiff problem. */
  readonly damping?: number;
}

export interface LeastSquaresSolution {
  readonly point: Float64Array;
  readonly residuals: Float64Array;
  readonly sumOfSquares: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/** Beyond this damping a step is too short to matter. */
const MAX_DAMPING = 1e16;
/** Share of the foretold fall that must come true for the Jacobian to be kept. */
const REUSE_GAIN = 0.8;

/**
 * Levenberg–Marquardt on a dense problem: minimises Σ rᵢ(p)². Priors are simply more residuals,
 * (p − mean)/σ. O(iterations · (m n² + n³)).
 * Source: Marquardt, SIAM J. Appl. Math. 11 (1963); damping update after Nielsen, IMM-REP-1999-05.
 * Not converging is told in `converged`, never hidden.
 */
export function minimiseLeastSquares(
  problem: LeastSquaresProblem,
  options: LeastSquaresOptions = {},
): LeastSquaresSolution {
  const n = problem.start.length;
  const m = problem.residualCount;
  const maxIterations = options.maxIterations ?? 60;
  const tolerance = options.tolerance ?? 1e-12;
  const maxAge = options.jacobianReuse ?? 0;
  const point = Float64Array.from(problem.start);
  const trial = new Float64Array(n);
  let residuals = new Float64Array(m);
  let trialResiduals = new Float64Array(m);
  const jacobian = new Float64Array(m * n);
  const normal = new Float64Array(n * n);
  const gradient = new Float64Array(n);
  const step = new Float64Array(n);
  problem.residuals(point, residuals);
  let sum = sumOfSquares(residuals);
  let damping = options.damping ?? 1e-4;
  let growth = 2;
  let converged = false;
  let iterations = 0;
  let age = 0;
  while (iterations < maxIterations && !converged) {
    iterations++;
    if (age === 0) fillJacobian(problem, point, residuals, trialResiduals, jacobian);
    formNormalEquations(jacobian, residuals, m, n, normal, gradient);
    let accepted = false;
    while (!accepted && damping <= MAX_DAMPING) {
      if (!solveDamped(normal, gradient, damping, n, step)) {
        damping *= growth;
        growth *= 2;
        continue;
      }
      for (let i = 0; i < n; i++) trial[i] = point[i] + step[i];
      problem.residuals(trial, trialResiduals);
      const trialSum = sumOfSquares(trialResiduals);
      const predicted = predictFall(normal, gradient, step, n);
      if (trialSum <= sum) {
        const gain = (sum - trialSum) / Math.max(predicted, 1e-300);
        converged = sum - trialSum <= tolerance * (1 + sum);
        point.set(trial);
        [residuals, trialResiduals] = [trialResiduals, residuals];
        sum = trialSum;
        damping = Math.max(1e-12, damping * Math.max(1 / 10, 1 - (2 * gain - 1) ** 3));
        growth = 2;
        // A model that foretold the fall well serves once more: a step costs one reading instead of n.
        age = gain > REUSE_GAIN && age < maxAge ? age + 1 : 0;
        accepted = true;
      } else if (age > 0) {
        age = 0;
        break;
      } else {
        // Uphill or not a number: trust a shorter step.
        converged = predicted <= tolerance * (1 + sum);
        damping *= growth;
        growth *= 2;
        if (converged) break;
      }
    }
    if (!accepted && !converged && damping > MAX_DAMPING) break;
  }
  return { point, residuals, sumOfSquares: sum, iterations, converged };
}

function sumOfSquares(r: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < r.length; i++) sum += r[i] * r[i];
  return Number.isFinite(sum) ? sum : Number.POSITIVE_INFINITY;
}

function fillJacobian(
  problem: LeastSquaresProblem,
  point: Float64Array,
  residuals: Float64Array,
  scratch: Float64Array,
  jacobian: Float64Array,
): void {
  if (problem.jacobian) {
    problem.jacobian(point, residuals, jacobian);
    return;
  }
  const { steps } = problem;
  assertInvariant(steps !== undefined, 'math', 'a problem brings a jacobian or difference steps', steps);
  const n = point.length;
  for (let j = 0; j < n; j++) {
    const kept = point[j];
    point[j] = kept + steps[j];
    const taken = point[j] - kept;
    problem.residuals(point, scratch);
    point[j] = kept;
    for (let i = 0; i < residuals.length; i++) jacobian[i * n + j] = (scratch[i] - residuals[i]) / taken;
  }
}

/** normal = JᵀJ (upper half filled, mirrored), gradient = Jᵀr. Zero entries are skipped: rows are sparse. */
function formNormalEquations(
  jacobian: Float64Array,
  residuals: Float64Array,
  m: number,
  n: number,
  normal: Float64Array,
  gradient: Float64Array,
): void {
  normal.fill(0);
  gradient.fill(0);
  for (let i = 0; i < m; i++) {
    const row = i * n;
    for (let j = 0; j < n; j++) {
      const value = jacobian[row + j];
      if (value === 0) continue;
      gradient[j] += value * residuals[i];
      for (let k = j; k < n; k++) normal[j * n + k] += value * jacobian[row + k];
    }
  }
  for (let j = 0; j < n; j++) for (let k = 0; k < j; k++) normal[j * n + k] = normal[k * n + j];
}

/** Solves (N + μ diag N) step = −gradient by Cholesky; false when not positive definite. */
function solveDamped(
  normal: Float64Array,
  gradient: Float64Array,
  damping: number,
  n: number,
  step: Float64Array,
): boolean {
  const factor = Float64Array.from(normal);
  for (let i = 0; i < n; i++) factor[i * n + i] += damping * Math.max(normal[i * n + i], 1e-12);
  if (!factorDense(factor, n)) return false;
  for (let i = 0; i < n; i++) step[i] = -gradient[i];
  solveDense(factor, step, step);
  return true;
}

function predictFall(normal: Float64Array, gradient: Float64Array, step: Float64Array, n: number): number {
  let linear = 0;
  let quadratic = 0;
  for (let i = 0; i < n; i++) {
    linear += gradient[i] * step[i];
    let row = 0;
    for (let j = 0; j < n; j++) row += normal[i * n + j] * step[j];
    quadratic += step[i] * row;
  }
  return -2 * linear - quadratic;
}

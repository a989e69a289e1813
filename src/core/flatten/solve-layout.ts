import { addDirichlet, limitStep, measureDirichlet } from './dirichlet-energy.ts';
import {
  addRules,
  changeOfRules,
  type LengthRules,
  measureRules,
  noRules,
  writeRuleGradient,
} from './length-rules.ts';
import { addBending, measureBending, noBending, type OutlineBending } from './outline-bending.ts';
import type { PreparedDisk } from './prepare-disk.ts';

export interface LayoutSolution {
  readonly isConverged: boolean;
  readonly iterations: number;
  readonly factors: number;
  /** Symmetric Dirichlet energy alone, mm²; 4 × area when nothing is strained. */
  readonly energy: number;
  /** Energy the last Newton step still promised, per mm² of area. */
  readonly decrement: number;
  /** Largest |length − target| over the rules, mm. */
  readonly largestError: number;
}

export interface LayoutOptions {
  readonly rules?: LengthRules;
  readonly bending?: OutlineBending;
  /** Stop when a step promises less than this per mm² of area. 1e-10 is a strain error of about 1e-5. */
  readonly tolerance?: number;
  /** mm on every rule. */
  readonly lengthTolerance?: number;
  readonly maxIterations?: number;
  readonly trace?: (line: Readonly<Record<string, number>>) => void;
}

/** A step that promises less than this share of the one before: the Hessian hardly changes any more. */
const FAST = 0.02;

/** Share of the tolerance that a step by a kept factor has to fall below. */
const KEPT_CARE = 1e-9;

/** Energy per mm² that a step promises: below it the Hessian will hardly change either (a strain change under 1 %). */
const NEAR = 3e-4;

/** Energy per mm² that a step promises: above it the end is far, and a positive Hessian unlikely where it was not. */
const FAR = 1e-3;

/**
 * Minimises symmetric Dirichlet energy plus outline bending under length rules, moving `flat` (#V × 2, no
 * flipped triangle) in place; multipliers in `rules` are updated as well.
 * Newton on the primal–dual augmented Lagrangian: each step solves (H + ρ AᵀA) d = −∇ and takes
 * λ ← λ + ρ (c + A d). The exact Hessian is tried first; where it is not positive, its negative parts are
 * lifted. Steps stop short of the first flip (× 0.9), then Armijo's rule.
 * Where a step promises less than a fiftieth of the one before, the next one takes the same factor (Shamanskii's way),
 * which saves about one factor in four. Cost per step: one sparse factor (about 8 ms for 2500 triangles). Rigid motion is held by the disk's pins.
 * Sources: Nocedal and Wright, Numerical Optimization (2006), ch. 17; Gill and Robinson, "A primal-dual
 * augmented Lagrangian", Comput. Optim. Appl. 51 (2012); Smith and Schaefer 2015 for the step limit.
 */
export function solveLayout(
  disk: PreparedDisk,
  flat: Float64Array,
  options: LayoutOptions = {},
): LayoutSolution {
  const rules = options.rules ?? noRules;
  const bending = options.bending ?? noBending;
  const tolerance = options.tolerance ?? 1e-10;
  const lengthTolerance = options.lengthTolerance ?? 1e-5;
  const maxIterations = options.maxIterations ?? 60;
  const system = new LayoutSystem(disk, rules, bending);
  let decrement = Infinity;
  let previousDecrement = 0;
  let iterations = 0;
  let isConverged = false;
  let isFallingFast = false;
  for (; iterations < maxIterations && !isConverged; iterations++) {
    // 1. The step, by the last factor once more where steps fall off so fast that it will do.
    const keepsFactor: boolean = isFallingFast;
    isFallingFast = false;
    const energy = keepsFactor ? system.measureGradient(flat) : system.linearise(flat);
    if (!system.findStep(flat, keepsFactor)) break;
    decrement = system.decrement / disk.totalArea;
    // 2. Longest step that lowers the merit function.
    let t = limitStep(disk, flat, system.step);
    let accepted = false;
    for (let halvings = 0; halvings < 30; halvings++, t *= 0.5) {
      system.moveTrial(flat, t);
      const trial = system.merit(system.trial);
      const noise = 1e-13 * Math.abs(energy);
      if (trial <= energy - 1e-4 * t * system.decrement + noise) {
        accepted = true;
        break;
      }
    }
    options.trace?.({
      iteration: iterations,
      energy,
      decrement,
      t,
      factors: system.factors,
      error: system.largestError(),
    });
    if (!accepted && keepsFactor) continue;
    if (!accepted) break;
    system.updateMultipliers(flat, t);
    flat.set(system.trial);
    // 3. Done when the step was full and the next one, fallen off like this one or faster, promises next to nothing; a
    // kept factor falls off more slowly and another step by it is cheap, so there its own promise must be far smaller.
    measureRules(rules, flat, system.errors);
    const ratio = Math.min(1, decrement / previousDecrement);
    const left = keepsFactor ? decrement / KEPT_CARE : decrement * ratio;
    isConverged = t === 1 && left <= tolerance && system.largestError() <= lengthTolerance;
    isFallingFast = t === 1 && (ratio < FAST || (decrement < NEAR && !keepsFactor));
    previousDecrement = decrement;
  }
  measureRules(rules, flat, system.errors);
  return {
    isConverged,
    iterations,
    factors: system.factors,
    energy: measureDirichlet(disk, flat),
    decrement,
    largestError: system.largestError(),
  };
}

class LayoutSystem {
  readonly step: Float64Array;
  readonly trial: Float64Array;
  readonly errors: Float64Array;
  decrement = 0;
  factors = 0;
  private readonly gradient: Float64Array;
  private readonly changes: Float64Array;
  private readonly pins: PinnedEntries;
  /** Half solved right side. */
  private readonly lower: Float64Array;
  /** Rules of several edges, and L⁻¹ times their gradients. */
  private readonly wide: Int32Array;
  private readonly wideLower: Float64Array[];
  private isProjected = false;
  /** The last exact Hessian was not positive. */
  private wasLifted = false;
  private readonly farAway: number;

  constructor(
    private readonly disk: PreparedDisk,
    private readonly rules: LengthRules,
    private readonly bending: OutlineBending,
  ) {
    const n = 2 * disk.vertexCount;
    this.farAway = FAR * disk.totalArea;
    this.step = new Float64Array(n);
    this.trial = new Float64Array(n);
    this.gradient = new Float64Array(n);
    this.errors = new Float64Array(rules.targets.length);
    this.changes = new Float64Array(rules.targets.length);
    this.pins = findPinnedEntries(disk, [2 * disk.pinA, 2 * disk.pinA + 1, 2 * disk.pinB + 1]);
    const wide: number[] = [];
    for (let r = 0; r < rules.targets.length; r++)
      if (rules.ruleStart[r + 1] - rules.ruleStart[r] > 1) wide.push(r);
    this.wide = Int32Array.from(wide);
    this.lower = new Float64Array(n);
    this.wideLower = wide.map(() => new Float64Array(n));
  }

  largestError(): number {
    let largest = 0;
    for (const e of this.errors) largest = Math.max(largest, Math.abs(e));
    return largest;
  }

  merit(flat: Float64Array): number {
    return (
      measureDirichlet(this.disk, flat) +
      measureRules(this.rules, flat, this.errors) +
      measureBending(this.bending, flat)
    );
  }

  moveTrial(flat: Float64Array, t: number): void {
    const { trial, step } = this;
    for (let i = 0; i < trial.length; i++) trial[i] = flat[i] + t * step[i];
  }

  /** While far from the end, a Hessian that had to be lifted once is not tried unlifted again. */
  linearise(flat: Float64Array, isProjected = this.wasLifted && this.decrement > this.farAway): number {
    const { disk, gradient } = this;
    this.isProjected = isProjected;
    gradient.fill(0);
    disk.values.fill(0);
    const energy =
      addDirichlet(disk, flat, gradient, disk.values, isProjected) +
      addRules(this.rules, flat, gradient, disk.values, this.errors, isProjected) +
      addBending(this.bending, flat, gradient, disk.values, isProjected);
    applyPins(this.pins, gradient, disk.values);
    return energy;
  }

  /** As `linearise`, without the Hessian's largest part: enough when the last factor is kept. */
  measureGradient(flat: Float64Array): number {
    const { disk, gradient } = this;
    gradient.fill(0);
    const energy =
      addDirichlet(disk, flat, gradient, undefined, false) +
      addRules(this.rules, flat, gradient, disk.values, this.errors, false) +
      addBending(this.bending, flat, gradient, disk.values, false);
    for (const i of this.pins.unknowns) gradient[i] = 0;
    return energy;
  }

  /** Factors, or keeps the last factor, and solves for the step; false when even the lifted Hessian cannot be factored. */
  findStep(flat: Float64Array, keepsFactor: boolean): boolean {
    const { disk, gradient, step } = this;
    if (!keepsFactor && !this.factorHessian(flat)) return false;
    for (let i = 0; i < step.length; i++) step[i] = -gradient[i];
    disk.solver.solveLower(step, this.lower);
    this.correctForWideRules(flat);
    disk.solver.solveUpper(this.lower, step);
    this.decrement = -dot(gradient, step);
    return this.decrement >= 0;
  }

  private factorHessian(flat: Float64Array): boolean {
    const { disk } = this;
    this.factors++;
    let report = disk.solver.factor(disk.values, { stopAtNegative: true });
    if (!this.isProjected) this.wasLifted = false;
    if (!report.isUsable && !this.isProjected) {
      this.wasLifted = true;
      this.linearise(flat, true);
      this.factors++;
      report = disk.solver.factor(disk.values, { stopAtNegative: true });
    }
    for (let shift = 1e-6; !report.isUsable && shift < 1; shift *= 100) {
      this.factors++;
      report = disk.solver.factor(disk.values, { stopAtNegative: true, shift });
    }
    return report.isUsable;
  }

  /**
   * Woodbury between the two halves of the solve: with B = L D Lᵀ, W = L⁻¹G and y = L⁻¹(−∇),
   * y −= W (1/ρ + Wᵀ D⁻¹ W)⁻¹ Wᵀ D⁻¹ y gives the step of B + ρ G Gᵀ. Halves of few entries are cheap.
   */
  private correctForWideRules(flat: Float64Array): void {
    const { wide, wideLower: w, rules, disk, lower, pins } = this;
    const count = wide.length;
    if (count === 0) return;
    const matrix = new Float64Array(count * count);
    const right = new Float64Array(count);
    for (let k = 0; k < count; k++) {
      writeRuleGradient(rules, wide[k], flat, this.step);
      for (const i of pins.unknowns) this.step[i] = 0;
      disk.solver.solveLower(this.step, w[k]);
      right[k] = disk.solver.innerProduct(w[k], lower);
      for (let q = 0; q <= k; q++) {
        matrix[k * count + q] = disk.solver.innerProduct(w[k], w[q]);
        matrix[q * count + k] = matrix[k * count + q];
      }
      rules.yields[wide[k]] = matrix[k * count + k];
      matrix[k * count + k] += 1 / rules.penalties[wide[k]];
    }
    eliminate(matrix, right);
    for (let k = 0; k < count; k++) {
      for (let i = 0; i < lower.length; i++) lower[i] -= right[k] * w[k][i];
    }
  }

  /** λ ← λ + t ρ (c + A d), with c at the point the step started from. */
  updateMultipliers(flat: Float64Array, t: number): void {
    const { rules, errors, changes } = this;
    measureRules(rules, flat, errors);
    changeOfRules(rules, flat, this.step, changes);
    for (let r = 0; r < errors.length; r++) {
      rules.multipliers[r] += t * rules.penalties[r] * (errors[r] + changes[r]);
    }
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** Gaussian elimination for the few wide rules (symmetric positive definite), answer in `right`. */
function eliminate(matrix: Float64Array, right: Float64Array): void {
  const n = right.length;
  for (let k = 0; k < n; k++) {
    for (let i = k + 1; i < n; i++) {
      const factor = matrix[i * n + k] / matrix[k * n + k];
      for (let j = k; j < n; j++) matrix[i * n + j] -= factor * matrix[k * n + j];
      right[i] -= factor * right[k];
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let j = k + 1; j < n; j++) right[k] -= matrix[k * n + j] * right[j];
    right[k] /= matrix[k * n + k];
  }
}

/** Where held unknowns sit in the matrix values. */
export interface PinnedEntries {
  readonly unknowns: readonly number[];
  readonly off: Int32Array;
  readonly diagonal: Int32Array;
}

/** Finds all values in rows and columns of the held unknowns. O(pattern). */
export function findPinnedEntries(disk: PreparedDisk, unknowns: readonly number[]): PinnedEntries {
  const { pattern } = disk;
  const isHeld = new Uint8Array(2 * disk.vertexCount);
  for (const i of unknowns) isHeld[i] = 1;
  const off: number[] = [];
  const diagonal: number[] = [];
  for (let c = 0; c < pattern.size; c++) {
    const isColumnHeld = isHeld[2 * c] || isHeld[2 * c + 1];
    for (let k = pattern.columnStart[c]; k < pattern.columnStart[c + 1]; k++) {
      const r = pattern.rowIndex[k];
      if (!isColumnHeld && !isHeld[2 * r] && !isHeld[2 * r + 1]) continue;
      for (let a = 0; a < 2; a++) {
        for (let b = 0; b < 2; b++) {
          if (!isHeld[2 * r + a] && !isHeld[2 * c + b]) continue;
          if (r === c && a === b) diagonal.push(4 * k + 2 * a + b);
          else off.push(4 * k + 2 * a + b);
        }
      }
    }
  }
  return { unknowns, off: Int32Array.from(off), diagonal: Int32Array.from(diagonal) };
}

/** Holds unknowns still: clears their rows, columns and gradient, 1 on the diagonal. */
export function applyPins(pins: PinnedEntries, gradient: Float64Array, values: Float64Array): void {
  for (const k of pins.off) values[k] = 0;
  for (const k of pins.diagonal) values[k] = 1;
  for (const i of pins.unknowns) gradient[i] = 0;
}

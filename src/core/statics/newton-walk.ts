import { volumeOfFaces, workOfPressure } from './add-pressure.ts';
import { moveShape, type ShellShape } from './pose-bodies.ts';
import { type ShellState, startShape, sumShell, usualForce } from './shell-state.ts';
import { solveNear } from './solve-near.ts';

/** Of the fall the slope foretells, that a step must bring (Armijo). */
const ENOUGH = 1e-4;
/** With more of the force left after a step, the next is not tried with the old factor: wrinkles come and go. */
const FALTERS = 0.1;
/** Where the tangent of the start is not positive, the first shift, of the usual ones: pressure has yet to find its pull. */
const FIRST = 200;
/** Shorter shares of a step are not tried. */
const SHORTEST = 1e-6;

/** Newton's walk: where it is, and how careful it has become. */
export class NewtonWalk {
  shape: ShellShape;
  residual = 0;
  steps = 0;
  /** True when the last step was kept short because the volume would have been lost. */
  wouldEvert = false;
  private trial: ShellShape;
  private energy = 0;
  private shift = 0;
  /** Share of the last step that was gone; 0 while there is no factor. */
  private lastShare = 0;
  /** Force left after the last step, as a share of that before. */
  private left = 1;
  private readonly direction: Float64Array;
  private readonly longest: number;
  private readonly usualShift: number;
  private readonly hasVolume: boolean;

  constructor(private readonly state: ShellState) {
    const { shell, rest } = state;
    this.shape = startShape(state);
    this.trial = startShape(state);
    this.direction = new Float64Array(3 * shell.nodeCount);
    this.longest = spanOf(state.problem.start) / 4;
    const edge = Math.sqrt(rest.areas.reduce((sum, area) => sum + area, 0) / Math.max(1, rest.areas.length));
    this.usualShift = (0.05 * usualForce(state)) / edge;
    this.hasVolume = shell.isClosed && state.pressure.some((p) => p > 0);
    this.energy = sumShell(state, this.shape, true);
    this.residual = largestForce(state.sums.gradient);
  }

  /** One step down; false when none is to be had. */
  step(): boolean {
    this.steps++;
    for (;;) {
      const slope = this.pointDown();
      if (slope === undefined) return false;
      const before = this.residual;
      const share = this.goAlong(slope);
      this.lastShare = share;
      this.left = this.residual / before;
      if (share > 0) {
        if (share < 0.2) this.shift = Math.max(4 * this.shift, this.usualShift);
        else if (share > 0.9) this.shift = this.shift > this.usualShift / 20 ? this.shift / 6 : 0;
        return true;
      }
      this.energy = sumShell(this.state, this.shape, true);
      if (!this.shiftMore()) return false;
    }
  }

  private shiftMore(): boolean {
    const least = this.steps === 1 ? FIRST * this.usualShift : this.usualShift;
    this.shift = this.shift === 0 ? least : 5 * this.shift;
    return this.shift < 1e7 * this.usualShift;
  }

  /** Newton's direction; returns the slope along it, below 0, or nothing where there is none. */
  private pointDown(): number | undefined {
    const { direction, longest, state } = this;
    const { gradient } = state.sums;
    if (!this.solveWithOldFactor() && !this.solveWithNewFactor()) return undefined;
    let farthest = 0;
    for (let k = 0; k < direction.length; k++) farthest = Math.max(farthest, Math.abs(direction[k]));
    const scale = farthest > longest ? -longest / farthest : -1;
    let slope = 0;
    for (let k = 0; k < direction.length; k++) {
      direction[k] *= scale;
      slope += gradient[k] * direction[k];
    }
    return slope < 0 ? slope : undefined;
  }

  /** With the last factor and a few conjugate gradients, while steps go well. */
  private solveWithOldFactor(): boolean {
    const { pattern, factor } = this.state.shell;
    const { tangent, gradient } = this.state.sums;
    if (this.lastShare < 1 || this.left > FALTERS) return false;
    const exactness = Math.min(0.1, Math.max(1e-6, this.left));
    return solveNear(pattern, tangent, this.shift, factor, gradient, exactness, this.direction);
  }

  /** With the least shift tried that makes the tangent positive. */
  private solveWithNewFactor(): boolean {
    const { factor } = this.state.shell;
    const { tangent, gradient } = this.state.sums;
    while (!factor.factor(tangent, { shift: this.shift, stopAtNegative: true }).isUsable) {
      if (!this.shiftMore()) return false;
    }
    factor.solve(gradient, this.direction);
    return true;
  }

  /** Goes the largest share of the direction, halving, at which the energy falls enough; 0 when it stays. */
  private goAlong(slope: number): number {
    const { state, trial, shape, direction } = this;
    const { shell, frames, pressure, sums } = state;
    const noise = 1e-13 * Math.abs(this.energy);
    this.wouldEvert = false;
    for (let share = 1; share >= SHORTEST; ) {
      moveShape(shell, frames, shape, direction, share, trial);
      const isLost = this.hasVolume && volumeOfFaces(shell.faces, trial.positions) <= 0;
      if (isLost) this.wouldEvert = true;
      const energy = isLost ? Infinity : sumShell(state, trial, true);
      const change =
        energy - this.energy - workOfPressure(shell.faces, pressure, shape.positions, trial.positions);
      const residual = largestForce(sums.gradient);
      if (change <= ENOUGH * share * slope || (change <= noise && residual < this.residual)) {
        [this.shape, this.trial] = [trial, shape];
        this.energy = energy;
        this.residual = residual;
        return share;
      }
      const least = (-slope * share * share) / (2 * (change - slope * share));
      share = Math.max(0.1 * share, Math.min(0.5 * share, Number.isFinite(least) ? least : 0));
    }
    return 0;
  }
}

function largestForce(gradient: Float64Array): number {
  let largest = 0;
  for (let k = 0; k < gradient.length; k += 3) {
    const force = Math.hypot(gradient[k], gradient[k + 1], gradient[k + 2]);
    if (!(force <= largest)) largest = force;
  }
  return largest;
}

/** Longest side of the box round all points. */
function spanOf(positions: Float64Array): number {
  let span = 0;
  for (let k = 0; k < 3; k++) {
    let low = Infinity;
    let high = -Infinity;
    for (let p = k; p < positions.length; p += 3) {
      low = Math.min(low, positions[p]);
      high = Math.max(high, positions[p]);
    }
    span = Math.max(span, high - low);
  }
  return span;
}

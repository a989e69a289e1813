import { assertInvariant } from '../base/index.ts';
import { findSlot } from '../math/index.ts';
import type { PreparedDisk } from './prepare-disk.ts';

/**
 * Equalities on flat lengths: rule r says that its edges' lengths sum to `targets[r]`.
 * A rule of one edge enters the sparse matrix itself; a rule of several stays a rank-one term beside it.
 */
export interface LengthRules {
  /** Vertex pairs of all rules' edges, 2 per edge. */
  readonly edges: Int32Array;
  /** #R + 1 first edge of each rule. */
  readonly ruleStart: Int32Array;
  /** #R mm. */
  readonly targets: Float64Array;
  /** #R: force on the sum, energy per mm; updated by the solver and good for a warm start. */
  readonly multipliers: Float64Array;
  /** Per edge: slots of blocks first-first, second-second, and the coupling. */
  readonly slots: Int32Array;
  readonly penalties: Float64Array;
  /** #R mm per unit of force by which the length gives way, the other rules let go; 0 for rules of one edge. Written by the solver. */
  readonly yields: Float64Array;
}

/** Energy per mm² of length error. Large: multiplier steps then converge in a few solves. */
const edgePenalty = 3e3;
/** Softer: a panel as a whole resists a change of a level's total far less than its edges do. */
const pathPenalty = 3e2;

export const noRules: LengthRules = {
  edges: new Int32Array(0),
  ruleStart: new Int32Array(1),
  targets: new Float64Array(0),
  multipliers: new Float64Array(0),
  slots: new Int32Array(0),
  penalties: new Float64Array(0),
  yields: new Float64Array(0),
};

/** Builds rules from vertex chains: each list of vertex pairs with its total. Throws when a pair is no mesh edge. */
export function makeLengthRules(
  disk: PreparedDisk,
  rules: readonly { readonly edges: ArrayLike<number>; readonly target: number }[],
): LengthRules {
  const edgeCount = rules.reduce((sum, rule) => sum + rule.edges.length / 2, 0);
  const edges = new Int32Array(2 * edgeCount);
  const slots = new Int32Array(3 * edgeCount);
  const ruleStart = new Int32Array(rules.length + 1);
  const targets = Float64Array.from(rules, (rule) => rule.target);
  const penalties = Float64Array.from(rules, (rule) => (rule.edges.length === 2 ? edgePenalty : pathPenalty));
  let e = 0;
  rules.forEach((rule, r) => {
    for (let k = 0; k < rule.edges.length; k += 2, e++) {
      const [a, b] = [rule.edges[k], rule.edges[k + 1]];
      edges[2 * e] = a;
      edges[2 * e + 1] = b;
      slots[3 * e] = findSlot(disk.pattern, a, a);
      slots[3 * e + 1] = findSlot(disk.pattern, b, b);
      slots[3 * e + 2] = findSlot(disk.pattern, a, b);
      assertInvariant(slots[3 * e + 2] >= 0, 'flatten', 'paths run along mesh edges', `${a}–${b}`);
    }
    ruleStart[r + 1] = e;
  });
  const [multipliers, yields] = [new Float64Array(rules.length), new Float64Array(rules.length)];
  return { edges, ruleStart, targets, multipliers, slots, penalties, yields };
}

/** Length errors (mm) into `errors`; returns Σ λ c + ρ c² / 2. */
export function measureRules(rules: LengthRules, flat: Float64Array, errors: Float64Array): number {
  const { edges, ruleStart, targets, multipliers, penalties } = rules;
  let energy = 0;
  for (let r = 0; r < targets.length; r++) {
    let length = 0;
    for (let e = ruleStart[r]; e < ruleStart[r + 1]; e++) {
      const a = 2 * edges[2 * e];
      const b = 2 * edges[2 * e + 1];
      const x = flat[b] - flat[a];
      const y = flat[b + 1] - flat[a + 1];
      length += Math.sqrt(x * x + y * y);
    }
    const c = length - targets[r];
    errors[r] = c;
    energy += c * (multipliers[r] + 0.5 * penalties[r] * c);
  }
  return energy;
}

/**
 * Adds gradient and sparse part of the Hessian of Σ λ c + ρ c² / 2, and writes errors.
 * The turning term takes λ ∇²ℓ, not (λ + ρ c) ∇²ℓ: after a tangential step ρ c is mostly curvature error and
 * would spoil the next step (20 steps where this takes 5). With `isProjected` it is dropped where negative.
 * Leaves out ρ ∇c ∇cᵀ of rules with several edges: the solver adds those by the Woodbury identity.
 */
export function addRules(
  rules: LengthRules,
  flat: Float64Array,
  gradient: Float64Array,
  values: Float64Array,
  errors: Float64Array,
  isProjected: boolean,
): number {
  const energy = measureRules(rules, flat, errors);
  const { edges, ruleStart, multipliers, penalties, slots } = rules;
  for (let r = 0; r < errors.length; r++) {
    const isSingle = ruleStart[r + 1] - ruleStart[r] === 1;
    const force = multipliers[r] + penalties[r] * errors[r];
    const turning = isProjected ? Math.max(multipliers[r], 0) : multipliers[r];
    for (let e = ruleStart[r]; e < ruleStart[r + 1]; e++) {
      const a = 2 * edges[2 * e];
      const b = 2 * edges[2 * e + 1];
      const x = flat[b] - flat[a];
      const y = flat[b + 1] - flat[a + 1];
      const length = Math.sqrt(x * x + y * y);
      const tx = x / length;
      const ty = y / length;
      gradient[a] -= force * tx;
      gradient[a + 1] -= force * ty;
      gradient[b] += force * tx;
      gradient[b + 1] += force * ty;
      const across = turning / length;
      const along = isSingle ? penalties[r] : 0;
      const xx = along * tx * tx + across * ty * ty;
      const yy = along * ty * ty + across * tx * tx;
      const xy = (along - across) * tx * ty;
      for (let s = 0; s < 3; s++) {
        const k = 4 * slots[3 * e + s];
        const sign = s === 2 ? -1 : 1;
        values[k] += sign * xx;
        values[k + 1] += sign * xy;
        values[k + 2] += sign * xy;
        values[k + 3] += sign * yy;
      }
    }
  }
  return energy;
}

/** ∇c of rule r into `out` (2 #V, cleared). */
export function writeRuleGradient(
  rules: LengthRules,
  r: number,
  flat: Float64Array,
  out: Float64Array,
): void {
  out.fill(0);
  for (let e = rules.ruleStart[r]; e < rules.ruleStart[r + 1]; e++) {
    const a = 2 * rules.edges[2 * e];
    const b = 2 * rules.edges[2 * e + 1];
    const x = flat[b] - flat[a];
    const y = flat[b + 1] - flat[a + 1];
    const length = Math.sqrt(x * x + y * y);
    out[a] -= x / length;
    out[a + 1] -= y / length;
    out[b] += x / length;
    out[b + 1] += y / length;
  }
}

/** ∇c · step of every rule into `out`. */
export function changeOfRules(
  rules: LengthRules,
  flat: Float64Array,
  step: Float64Array,
  out: Float64Array,
): void {
  const { edges, ruleStart } = rules;
  for (let r = 0; r < out.length; r++) {
    let change = 0;
    for (let e = ruleStart[r]; e < ruleStart[r + 1]; e++) {
      const a = 2 * edges[2 * e];
      const b = 2 * edges[2 * e + 1];
      const x = flat[b] - flat[a];
      const y = flat[b + 1] - flat[a + 1];
      change += ((step[b] - step[a]) * x + (step[b + 1] - step[a + 1]) * y) / Math.sqrt(x * x + y * y);
    }
    out[r] = change;
  }
}

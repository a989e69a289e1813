import { factorDense, solveDense } from '../math/index.ts';
import { BUMP_STRIDE } from './bump-reaches.ts';
import type { Demand } from './fair-demands.ts';
import type { FairUnknowns } from './fair-unknowns.ts';
import type { FittedShape } from './fit-problem.ts';
import { KNOTS, ShapeEvaluator } from './rails.ts';
import { NET_COLUMNS, TrunkNetEvaluator, weightsRound } from './trunk-net.ts';
import type { BodyShape, TrunkNet } from './types.ts';

export interface Fairing {
  readonly rough: FittedShape;
  /** Where the search starts. */
  readonly net: TrunkNet;
  readonly unknowns: FairUnknowns;
  readonly demands: readonly Demand[];
  /** Where the energy alone would go. */
  readonly rest: Float64Array;
}

export interface FairedShape extends FittedShape {
  readonly steps: number;
  /** The farthest a hard demand was left, mm. */
  readonly residual: number;
}

/** One place of the search, and what it leaves open. */
interface Trial {
  readonly values: Float64Array;
  readonly surface: FittedShape;
  /** What each demand lacks, mm. */
  readonly misses: Float64Array;
  readonly energy: number;
}

const MAX_STEPS = 14;
/** Hard demands end within this, mm. */
const EXACT = 0.03;
/** The last step lowers the energy by less than this share. */
const LITTLE = 0.005;
const LEAST_STRIDE = 0.02;

/**
 * Least energy under the demands: range-space Gauss–Newton with a second-order correction and an exact penalty as merit
 * (Nocedal and Wright, Numerical Optimization, 2006, sections 16.2, 18.3 and 18.4). A step costs one banded solve a demand.
 */
export function solveFairing(problem: Fairing): FairedShape {
  const { demands, unknowns } = problem;
  const chart = new TrunkNetEvaluator(problem.net, KNOTS);
  let now = tryAt(problem, new Float64Array(unknowns.count));
  let price = 0;
  let steps = 0;
  let isDone = false;
  while (steps < MAX_STEPS && !isDone) {
    steps++;
    const model = linearise(problem, chart, now.surface);
    const { aim, highestPrice } = aimAt(problem, model, now);
    price = Math.max(price, 2 * highestPrice);
    const before = meritOf(demands, now, price);
    let stride = 1;
    let next = tryAt(problem, aim);
    if (worstOf(demands, next.misses) > EXACT) {
      const corrected = tryAt(problem, correct(problem, model, next));
      if (meritOf(demands, corrected, price) < meritOf(demands, next, price)) next = corrected;
    }
    while (meritOf(demands, next, price) > before && stride > LEAST_STRIDE) {
      stride *= 0.5;
      next = tryAt(
        problem,
        now.values.map((value, i) => value + stride * (aim[i] - value)),
      );
    }
    isDone = Math.abs(now.energy / next.energy - 1) < LITTLE && worstOf(demands, next.misses) < EXACT;
    now = next;
  }
  return { ...now.surface, steps, residual: worstOf(demands, now.misses) };
}

function tryAt(problem: Fairing, values: Float64Array): Trial {
  const { demands, unknowns, rest } = problem;
  const surface = surfaceAt(problem, values);
  const misses = Float64Array.from(demands, (demand) => demand.wanted - demand.read(surface.context));
  const energy = unknowns.measureEnergy(values.map((value, i) => value - rest[i]));
  return { values, surface, misses, energy };
}

/** The surface and its tape places at a point of the search. */
function surfaceAt({ rough, net, unknowns }: Fairing, values: Float64Array): FittedShape {
  const bumps = rough.shape.bumps.slice();
  for (let k = 0; k < bumps.length / BUMP_STRIDE; k++) {
    bumps[k * BUMP_STRIDE + 6] += unknowns.changeOfBump(k, values);
  }
  const controls = unknowns.move(net.controls, values);
  const shape: BodyShape = { ...rough.shape, bumps, net: { ...net, controls } };
  return { shape, context: { ...rough.context, evaluator: new ShapeEvaluator(shape), rows: new Map() } };
}

function worstOf(demands: readonly Demand[], misses: Float64Array): number {
  return demands.reduce((most, { give }, i) => (give === 0 ? Math.max(most, Math.abs(misses[i])) : most), 0);
}

function meritOf(demands: readonly Demand[], { energy, misses }: Trial, price: number): number {
  return demands.reduce(
    (sum, { give }, i) => sum + (give === 0 ? price * Math.abs(misses[i]) : (0.5 * misses[i] ** 2) / give),
    energy,
  );
}

/** Demands made linear: their gradients g, y = L⁻¹ g, and the factor of Y Yᵀ + give. */
interface Model {
  readonly gradients: readonly Float64Array[];
  readonly lowered: readonly Float64Array[];
  readonly factor: Float64Array;
}

function linearise({ demands, unknowns }: Fairing, chart: TrunkNetEvaluator, surface: FittedShape): Model {
  const m = demands.length;
  const gradients = demands.map((demand) => differentiate(demand, unknowns, chart, surface));
  const lowered = gradients.map((gradient) => {
    const y = gradient.slice();
    unknowns.solveLower(y);
    return y;
  });
  const factor = new Float64Array(m * m);
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) factor[i * m + j] = dot(lowered[i], lowered[j]);
    // Two tapes that ask for the same thing must not stop the solve.
    factor[i * m + i] = factor[i * m + i] * (1 + 1e-10) + demands[i].give + 1e-12;
  }
  factorDense(factor, m);
  return { gradients, lowered, factor };
}

/** Where the linear problem has its least energy, and the highest price of a hard demand there. */
function aimAt(
  { demands, unknowns, rest }: Fairing,
  { gradients, lowered, factor }: Model,
  { values, misses }: Trial,
): { aim: Float64Array; highestPrice: number } {
  const away = values.map((value, i) => value - rest[i]);
  const prices = Float64Array.from(gradients, (gradient, i) => misses[i] + dot(gradient, away));
  solveDense(factor, prices, prices);
  const aim = combine(lowered, prices, unknowns.count);
  unknowns.solveUpper(aim);
  for (let k = 0; k < aim.length; k++) aim[k] += rest[k];
  const hard = prices.filter((_, i) => demands[i].give === 0);
  return { aim, highestPrice: hard.reduce((most, value) => Math.max(most, Math.abs(value)), 0) };
}

/** The nearest place, in energy, where the same linear demands would take what the trial still lacks. */
function correct({ demands, unknowns }: Fairing, { lowered, factor }: Model, trial: Trial): Float64Array {
  const lacks = trial.misses.map((value, i) => (demands[i].give === 0 ? value : 0));
  solveDense(factor, lacks, lacks);
  const step = combine(lowered, lacks, unknowns.count);
  unknowns.solveUpper(step);
  return step.map((value, i) => value + trial.values[i]);
}

function combine(rows: readonly Float64Array[], shares: Float64Array, size: number): Float64Array {
  const out = new Float64Array(size);
  rows.forEach((row, i) => {
    const share = shares[i];
    for (let k = 0; k < size; k++) out[k] += share * row[k];
  });
  return out;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k] * b[k];
  return sum;
}

/** The gradient of what a demand reads, first on the net's controls, then on the unknowns. */
function differentiate(
  demand: Demand,
  unknowns: FairUnknowns,
  chart: TrunkNetEvaluator,
  { shape, context }: FittedShape,
): Float64Array {
  const out = new Float64Array(unknowns.count);
  const pulls = new Float64Array(shape.net!.controls.length);
  const along = new Float64Array(4);
  const round = new Float64Array(4);
  demand.pull(
    context,
    (u, v, x, y, z) => {
      const row = chart.weightsAlong(v, along);
      let column = weightsRound(u, round);
      for (let b = 0; b < 4; b++) {
        let k = 3 * (row * NET_COLUMNS + column);
        for (let a = 0; a < 4; a++, k += 3 * NET_COLUMNS) {
          const weight = along[a] * round[b];
          pulls[k] += weight * x;
          pulls[k + 1] += weight * y;
          pulls[k + 2] += weight * z;
        }
        if (++column === NET_COLUMNS) column = 0;
      }
    },
    (bump, pull) => unknowns.pullBump(bump, pull, out),
  );
  unknowns.pullControls(pulls, out);
  return out;
}

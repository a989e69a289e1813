import { factorDense, solveDense } from '../math/index.ts';
import { type Demand, listDemands } from './fair-demands.ts';
import { assembleEnergy, holdPoint } from './fair-energy.ts';
import { type BumpUnknown, FairUnknowns } from './fair-unknowns.ts';
import { makeFairWeights } from './fair-weights.ts';
import { MET_WITHIN } from './fit-issues.ts';
import type { FittedShape, Target } from './fit-problem.ts';
import { BUMP_STRIDE, KNOTS, ShapeEvaluator } from './rails.ts';
import { type SampledNet, sampleNet } from './sample-net.ts';
import type { TapeContext } from './tapes.ts';
import { NET_COLUMNS, TrunkNetEvaluator, weightsRound } from './trunk-net.ts';
import type { BodyShape } from './types.ts';

export interface FairedShape extends FittedShape {
  readonly steps: number;
  /** The farthest a hard demand was left, mm. */
  readonly residual: number;
}

/** Hold of a point on the armhole's rim: lighter, and the armhole shrinks and shoulders slump. */
const RIM_HOLD = 1.5;
const MAX_STEPS = 14;
/** Hard demands end within this, mm. */
const EXACT = 0.03;
/** The last step lowers the energy by less than this share. */
const LITTLE = 0.005;
const BREAST_STIFFNESS = 5;

/**
 * The rough shape with a fair trunk: a B-spline net takes the place of the rails, as near to them as fairness lets it and
 * under the tapes as hard demands. Breasts, blades, seat and collar bones ride on it as before.
 * Range-space Gauss–Newton (Nocedal and Wright, Numerical Optimization, 2006, sections 16.2 and 18.4) with an exact
 * penalty as merit. Null when it does not get there: some demand is missed by more than 0.5 mm.
 */
export function fairTrunk(rough: FittedShape, targets: readonly Target[]): FairedShape | null {
  const sampled = sampleNet(rough.shape);
  if (!sampled) return null;
  const problem = stateFairing(rough, sampled, targets);
  const solved = solveFairing(problem);
  if (!(solved.residual <= MET_WITHIN)) return null;
  return solved;
}

interface Fairing {
  readonly rough: FittedShape;
  readonly sampled: SampledNet;
  readonly unknowns: FairUnknowns;
  readonly demands: readonly Demand[];
  readonly rest: Float64Array;
}

function stateFairing(rough: FittedShape, sampled: SampledNet, targets: readonly Target[]): Fairing {
  const { net, firstTilted } = sampled;
  const { shape, context } = rough;
  const energies = assembleEnergy(net.knots, makeFairWeights(shape, net));
  const chart = new TrunkNetEvaluator(net, KNOTS);
  const along = new Float64Array(4);
  const round = new Float64Array(4);
  const rim = context.armholes.right;
  for (let i = 0; i < rim.length; i += 4) {
    const row = chart.weightsAlong(rim[i + 1], along);
    // The right half begins at the centre back, column −6.
    const column = weightsRound(rim[i] + 0.5 * Math.PI, round);
    holdPoint(
      energies,
      row,
      along,
      column > 12 ? column - NET_COLUMNS : column,
      round,
      (RIM_HOLD * 4) / rim.length,
    );
  }
  const rows = net.knots.length - 4;
  const unknowns = new FairUnknowns(
    energies,
    rows,
    firstTilted,
    shape.isMirrorSymmetric,
    breastUnknowns(shape),
  );
  const rest = unknowns.findRest(net.controls);
  return { rough, sampled, unknowns, demands: listDemands(rough, targets), rest };
}

/** Breasts are the first two bumps. */
function breastUnknowns({ isMirrorSymmetric }: BodyShape): BumpUnknown[] {
  if (isMirrorSymmetric) return [{ bumps: [0, 1], stiffness: BREAST_STIFFNESS }];
  return [0, 1].map((bump) => ({ bumps: [bump], stiffness: BREAST_STIFFNESS }));
}

/** The surface and its tape places at a point of the search. */
function surfaceAt({ rough, sampled, unknowns }: Fairing, values: Float64Array): FittedShape {
  const controls = unknowns.move(sampled.net.controls, values);
  const bumps = rough.shape.bumps.slice();
  for (let k = 0; k < bumps.length / BUMP_STRIDE; k++) {
    bumps[k * BUMP_STRIDE + 6] += unknowns.changeOfBump(k, values);
  }
  const shape: BodyShape = { ...rough.shape, bumps, net: { ...sampled.net, controls } };
  const context: TapeContext = { ...rough.context, evaluator: new ShapeEvaluator(shape), rows: new Map() };
  return { shape, context };
}

function solveFairing(problem: Fairing): FairedShape {
  const { demands, unknowns, rest } = problem;
  let point: Float64Array = new Float64Array(unknowns.count);
  let surface = surfaceAt(problem, point);
  let misses = readMisses(demands, surface);
  let price = 0;
  let steps = 0;
  for (; steps < MAX_STEPS; steps++) {
    const { aim, prices } = aimAt(problem, point, surface, misses);
    price = Math.max(price, 2 * prices);
    const merit = (at: Float64Array, left: Float64Array): number => {
      return unknowns.measureEnergy(subtract(at, rest)) + costOf(demands, left, price);
    };
    const before = merit(point, misses);
    let stride = 1;
    let moved = aim;
    for (;;) {
      const from = point;
      moved = aim.map((value, i) => from[i] + stride * (value - from[i]));
      surface = surfaceAt(problem, moved);
      misses = readMisses(demands, surface);
      if (stride < 0.02 || merit(moved, misses) <= before) break;
      stride *= 0.5;
    }
    const gain =
      unknowns.measureEnergy(subtract(point, rest)) / unknowns.measureEnergy(subtract(moved, rest)) - 1;
    point = moved;
    if (Math.abs(gain) < LITTLE && worstOf(demands, misses) < EXACT) break;
  }
  return { ...surface, steps: steps + 1, residual: worstOf(demands, misses) };
}

function subtract(a: Float64Array, b: Float64Array): Float64Array {
  return a.map((value, i) => value - b[i]);
}

function readMisses(demands: readonly Demand[], surface: FittedShape): Float64Array {
  return Float64Array.from(demands, (demand) => demand.wanted - demand.read(surface.context));
}

function worstOf(demands: readonly Demand[], misses: Float64Array): number {
  return demands.reduce((most, { give }, i) => (give === 0 ? Math.max(most, Math.abs(misses[i])) : most), 0);
}

function costOf(demands: readonly Demand[], misses: Float64Array, price: number): number {
  return demands.reduce(
    (sum, { give }, i) => sum + (give === 0 ? price * Math.abs(misses[i]) : (0.5 * misses[i] ** 2) / give),
    0,
  );
}

/** Where the linearised problem has its least energy, and the highest price of a hard demand. */
function aimAt(
  { demands, unknowns, rest }: Fairing,
  point: Float64Array,
  surface: FittedShape,
  misses: Float64Array,
): { aim: Float64Array; prices: number } {
  const m = demands.length;
  const rows = demands.map((demand) => differentiate(demand, unknowns, surface));
  const wanted = Float64Array.from(rows, (row, i) => {
    let value = misses[i];
    for (let k = 0; k < row.length; k++) value += row[k] * (point[k] - rest[k]);
    return value;
  });
  for (const row of rows) unknowns.solveLower(row);
  const normal = new Float64Array(m * m);
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      let value = 0;
      for (let k = 0; k < unknowns.count; k++) value += rows[i][k] * rows[j][k];
      normal[i * m + j] = value;
    }
    normal[i * m + i] = normal[i * m + i] * (1 + 1e-10) + demands[i].give + 1e-12;
  }
  factorDense(normal, m);
  solveDense(normal, wanted, wanted);
  const aim = new Float64Array(unknowns.count);
  rows.forEach((row, i) => {
    for (let k = 0; k < row.length; k++) aim[k] += wanted[i] * row[k];
  });
  unknowns.solveUpper(aim);
  for (let k = 0; k < aim.length; k++) aim[k] += rest[k];
  const prices = demands.reduce(
    (most, { give }, i) => (give === 0 ? Math.max(most, Math.abs(wanted[i])) : most),
    0,
  );
  return { aim, prices };
}

/** The gradient of what a demand reads. */
function differentiate(
  demand: Demand,
  unknowns: FairUnknowns,
  { shape, context }: FittedShape,
): Float64Array {
  const out = new Float64Array(unknowns.count);
  const chart = new TrunkNetEvaluator(shape.net!, shape.knots);
  const along = new Float64Array(4);
  const round = new Float64Array(4);
  demand.pull(
    context,
    (u, v, x, y, z) => {
      const row = chart.weightsAlong(v, along);
      const column = weightsRound(u, round);
      for (let a = 0; a < 4; a++) {
        for (let b = 0; b < 4; b++) {
          const weight = along[a] * round[b];
          unknowns.pullControl(
            row + a,
            (column + b) % NET_COLUMNS,
            [weight * x, weight * y, weight * z],
            out,
          );
        }
      }
    },
    (bump, pull) => unknowns.pullBump(bump, pull, out),
  );
  return out;
}

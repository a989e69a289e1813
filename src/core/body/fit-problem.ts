import { type LeastSquaresSolution, minimiseLeastSquares } from '../math/index.ts';
import { makeArmholes } from './armhole.ts';
import type { BodyPrior } from './body-prior.ts';
import { PARAMETER_IDS, type Parameter, type ParameterId, POSE_IDS, SKEW_IDS } from './parameter-ids.ts';
import type { PhotoReading } from './photo-readings.ts';
import type { PhotoId } from './photo-types.ts';
import type { PhotoPose } from './project-point.ts';
import { KNOT, KNOT_IDS, KNOTS, type KnotId, RAIL_COUNT, ShapeEvaluator } from './rails.ts';
import { type Reading, residualOf } from './residual-of.ts';
import { buildShape, type ParameterValues } from './shape-parameters.ts';
import { knotIndex, type Side, type TapeContext, type TapeReach, type TapeRule } from './tape-rule.ts';
import { measureLevelRatio } from './tapes.ts';
import type { BodyShape, Figure } from './types.ts';

export interface Target {
  /** Reported id, `.left` or `.right` added when sides differ. */
  readonly id: string;
  readonly rule: TapeRule;
  readonly side: Side;
  readonly value: number;
  /** Of an estimate; typed tapes follow the stage of the solve, but one that cannot be met yields by this (usually 0). */
  readonly spread: number;
  readonly typed: boolean;
  /** Typed, but read only to within its spread: the body comes as near as all readings together let it. */
  readonly isSoft?: boolean;
}

export interface FitProblem {
  readonly figure: Figure;
  readonly isSymmetric: boolean;
  readonly prior: BodyPrior;
  readonly unknowns: readonly Parameter[];
  readonly targets: readonly Target[];
  readonly photoReadings: readonly PhotoReading[];
}

export interface FittedShape {
  readonly shape: BodyShape;
  readonly context: TapeContext;
}

/**
 * Typed tapes weigh as if known to this, mm. Loose first, so that the solve walks down a wide valley; then so tight
 * that priors never pull them visibly. (Tight from the start got stuck on large busts.)
 */
const TYPED_SPREADS = [4, 0.4, 0.04];
/** The tight solve starts near its end; usual damping made it creep along the valley that the tapes leave (5 steps for 3). */
const NEAR_DAMPING = 1e-8;
/** How far, in knots, a natural spline still carries a change that matters to a derivative (it fades by 0.27 a knot). */
const SPLINE_REACH = 2;

const ARMHOLE_IDS: readonly ParameterId[] = ['armYaw', 'armFront', 'armBack'];
/** The arm stump's skin should reach the armhole's plane by itself to about this, mm. */
const PLANE_SPREAD = 4;

/** Least squares over typed tapes, estimates, section ratios, row spacings and priors; `start` warms it. */
export function solveFit(problem: FitProblem, start?: Float64Array): LeastSquaresSolution {
  const spreads = start ? TYPED_SPREADS.slice(-1) : TYPED_SPREADS;
  let point = start ?? Float64Array.from(problem.unknowns, (u) => u.mean);
  let solution: LeastSquaresSolution | undefined;
  for (const spread of spreads) {
    solution = minimise(problem, point, spread, spread === TYPED_SPREADS.at(-1) ? 1e-4 : 1e-2);
    point = solution.point;
  }
  return solution!;
}

/** The surface and its tape places at a point of the search. */
export function shapeAt(problem: FitProblem, values: Float64Array): FittedShape {
  const p = Object.fromEntries(PARAMETER_IDS.map((id) => [id, 0])) as ParameterValues;
  problem.unknowns.forEach((unknown, i) => {
    p[unknown.id] = values[i];
  });
  const { numbers } = problem.prior;
  const shape = buildShape(p, numbers, problem.figure, problem.isSymmetric);
  const evaluator = new ShapeEvaluator(shape);
  const bust = {
    right: { u: p.bustAngle + p.bustAngleSkew, v: KNOT.bust + p.bustLevelSkew },
    left: { u: Math.PI - p.bustAngle + p.bustAngleSkew, v: KNOT.bust - p.bustLevelSkew },
  };
  const armholes = makeArmholes(shape.armhole);
  const stance = { wall: p.wall, floor: p.floor };
  const poses = { front: poseOf(p, 'front'), side: poseOf(p, 'side'), cloth: p.cloth };
  return { shape, context: { evaluator, bust, armholes, stance, poses, rows: new Map() } };
}

function poseOf(p: ParameterValues, photo: PhotoId): PhotoPose {
  const { shift, rise, yaw, scale } = POSE_IDS[photo];
  return { shift: p[shift], rise: p[rise], yaw: p[yaw], scale: p[scale] };
}

function minimise(
  problem: FitProblem,
  start: Float64Array,
  typedSpread: number,
  tolerance: number,
): LeastSquaresSolution {
  const readings = listReadings(problem, typedSpread);
  const beliefs = listBeliefs(problem);
  const n = problem.unknowns.length;
  const surfaceRows = readings.length;
  return minimiseLeastSquares(
    {
      start,
      residualCount: surfaceRows + beliefs.length,
      residuals: (values, out) => {
        const { context } = shapeAt(problem, values);
        readings.forEach((reading, i) => {
          out[i] = residualOf(reading, reading.read(context));
        });
        beliefs.forEach(({ of, mean, spread }, i) => {
          let sum = 0;
          for (const { unknown, times } of of) sum += times * values[unknown];
          out[surfaceRows + i] = (sum - mean) / spread;
        });
      },
      jacobian: (values, residuals, out) => {
        out.fill(0);
        differentiateReadings(problem, readings, values, residuals, out);
        beliefs.forEach(({ of, spread }, i) => {
          for (const { unknown, times } of of) out[(surfaceRows + i) * n + unknown] = times / spread;
        });
      },
    },
    { tolerance, jacobianReuse: 3, ...(typedSpread < 0.1 ? { damping: NEAR_DAMPING } : {}) },
  );
}

/** What is believed of a sum of unknowns: a Gaussian. */
interface Belief {
  readonly of: readonly { readonly unknown: number; readonly times: number }[];
  readonly mean: number;
  readonly spread: number;
}

/** Row spacings, then every unknown by itself, less what it has in common with others. */
export function listBeliefs({ unknowns, prior }: FitProblem): Belief[] {
  const index = new Map<ParameterId, number>(unknowns.map((u, i) => [u.id, i]));
  const term = (id: ParameterId, times: number): Belief['of'] => {
    const unknown = index.get(id);
    return unknown === undefined ? [] : [{ unknown, times }];
  };
  return [
    ...prior.spacings.map(({ upper, lower, mean, spread }) => ({
      of: [...term(upper, 1), ...term(lower, -1)],
      mean,
      spread,
    })),
    ...unknowns.map(({ id, mean, spread }) => ({
      of: [
        ...term(id, 1),
        ...Object.entries(prior.common[id] ?? {}).flatMap(([of, share]) => term(of as ParameterId, -share)),
      ],
      mean,
      spread,
    })),
  ];
}

/** Targets in their order, then ratios, straights, the armhole's plane and pictures. */
export function listReadings(problem: FitProblem, typedSpread: number): Reading[] {
  const readings: Reading[] = problem.targets.map(({ rule, side, value, spread, typed }) => ({
    reach: rule.reach,
    read: (context) => rule.measure(context, side),
    wanted: value,
    spread: typed ? Math.max(typedSpread, spread) : spread,
  }));
  for (const { level, mean, spread } of problem.prior.ratios) {
    readings.push({
      reach: {
        from: level,
        to: level,
        isRow: true,
        bumps: level !== 'waist',
        bustPoint: false,
        armhole: false,
      },
      read: (context) => measureLevelRatio(context, level),
      wanted: mean,
      spread,
    });
  }
  for (const { rail, knot, mean, spread } of problem.prior.straights) {
    readings.push({
      reach: neighbouringKnots(knot),
      read: (context) => context.evaluator.bendAt(rail, knotIndex(knot)),
      wanted: mean,
      spread,
    });
  }
  for (const quarter of [1, 3]) {
    readings.push({
      reach: {
        from: 'upperChest',
        to: 'shoulderPoint',
        isRow: false,
        bumps: true,
        bustPoint: false,
        armhole: true,
      },
      read: (context) => {
        const i = (quarter * context.armholes.right.length) / 4;
        return context.evaluator.planeGap(context.armholes.right[i], context.armholes.right[i + 1]);
      },
      wanted: 0,
      spread: PLANE_SPREAD,
    });
  }
  readings.push(...problem.photoReadings);
  return readings;
}

function neighbouringKnots(knot: KnotId): TapeReach {
  const k = knotIndex(knot);
  return {
    from: KNOT_IDS[k - 1],
    to: KNOT_IDS[k + 1],
    isRow: true,
    bumps: false,
    bustPoint: false,
    armhole: false,
  };
}

/**
 * Forward differences, but each unknown re-reads only the tapes it can move: a level row stands on its own knot, a path
 * on the knots it passes. Some seven times cheaper than differencing every tape.
 */
export function differentiateReadings(
  problem: FitProblem,
  readings: readonly Reading[],
  values: Float64Array,
  residuals: Float64Array,
  out: Float64Array,
): void {
  const n = values.length;
  const { shape: base, context } = shapeAt(problem, values);
  const held = readings.map(({ hold, read }) => hold?.(context) ?? read);
  problem.unknowns.forEach((unknown, j) => {
    const kept = values[j];
    values[j] = kept + 1e-5 * unknown.spread;
    const step = values[j] - kept;
    const moved = shapeAt(problem, values);
    values[j] = kept;
    const touched = touchedKnots(base, moved.shape);
    readings.forEach((reading, i) => {
      if (!canMove(reading.reach, touched, unknown.id)) return;
      out[i * n + j] = (residualOf(reading, held[i](moved.context)) - residuals[i]) / step;
    });
  });
}

interface Touched {
  readonly knots: readonly boolean[];
  readonly bumps: boolean;
}

function touchedKnots(before: BodyShape, after: BodyShape): Touched {
  const n = KNOTS.length;
  const knots = Array.from({ length: n }, (_, k) => {
    for (let rail = 0; rail < RAIL_COUNT; rail++) {
      if (before.rails[rail * n + k] !== after.rails[rail * n + k]) return true;
    }
    return false;
  });
  return { knots, bumps: before.bumps.some((value, i) => value !== after.bumps[i]) };
}

function canMove(reach: TapeReach, touched: Touched, id: ParameterId): boolean {
  if (reach.stance !== undefined && id === reach.stance) return true;
  if (reach.outside?.includes(id)) return true;
  if (reach.bumps && touched.bumps) return true;
  if (reach.bustPoint && (id === 'bustAngle' || SKEW_IDS.includes(id))) return true;
  if (reach.armhole && ARMHOLE_IDS.includes(id)) return true;
  const margin = reach.isRow ? 0 : SPLINE_REACH;
  const low = Math.max(0, knotIndex(reach.from) - margin);
  const high = knotIndex(reach.to) + margin;
  return touched.knots.slice(low, high + 1).some(Boolean);
}

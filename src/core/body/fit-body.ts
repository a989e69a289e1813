import { failure, type Issue, type Result, success } from '../base/index.ts';
import { minimiseLeastSquares } from '../math/index.ts';
import { armholePlane, traceArmhole } from './armhole.ts';
import { type BodyPrior, makePrior } from './body-prior.ts';
import { checkMeasures } from './check-measures.ts';
import { findMeasure } from './measures.ts';
import { levelsAndLandmarks } from './place-landmarks.ts';
import { KNOT, ShapeEvaluator } from './rails.ts';
import { readShapeChoices } from './shape-choices.ts';
import {
  buildShape,
  PARAMETER_IDS,
  type Parameter,
  type ParameterValues,
  SKEW_IDS,
} from './shape-parameters.ts';
import { readLevelRatio, type Side, TAPE_RULES, type TapeContext, type TapeRule } from './tapes.ts';
import type { Body, BodyInput, BodyShape, TapeReading } from './types.ts';

/** A typed tape is met when the body reads within this, mm. */
export const MET_WITHIN = 0.5;
/**
 * Typed tapes weigh as if known to this, mm. Loose first, so that the solve walks down a wide valley; then so tight that
 * priors never pull them visibly. (Tight from the start got stuck on large busts.)
 */
const TYPED_SPREADS = [4, 0.02];
/** Further from the estimate than this many spreads: say so. */
const DOUBT_PULL = 2;

interface Target {
  /** Reported id, `.left` or `.right` added when sides differ. */
  readonly id: string;
  readonly rule: TapeRule;
  readonly side: Side;
  readonly value: number;
  /** Of an estimate; typed tapes follow the stage of the solve. */
  readonly spread: number;
  readonly typed: boolean;
}

interface FittedShape {
  readonly shape: BodyShape;
  readonly context: TapeContext;
}

/**
 * Fits the loft to the tapes: least squares over typed tapes (tight), survey estimates and shape priors (by their
 * spreads). Typed tapes are met within 0.5 mm or named as conflicts; nothing is clamped.
 * `start` (a fitted body of nearly the same input) warms the solve.
 */
export function fitBody(input: BodyInput): Result<Body> {
  const checks = checkMeasures(input);
  const choices = readShapeChoices(input.shape ?? {});
  const found = [...checks, ...choices.issues];
  if (found.some((issue) => issue.severity === 'error')) return failure(found);
  const prior = makePrior(input, choices.numbers);
  const isSymmetric = Object.values(input.measures).every((v) => typeof v === 'number' || v.left === v.right);
  const unknowns = prior.parameters.filter((p) => !isSymmetric || !SKEW_IDS.includes(p.id));
  const targets = listTargets(input, prior);
  const build = (values: Float64Array): FittedShape => shapeFrom(values, unknowns, prior, input, isSymmetric);
  let solution = solve(
    unknowns,
    Float64Array.from(unknowns, (u) => u.mean),
    targets,
    TYPED_SPREADS[0],
    prior,
    build,
  );
  solution = solve(unknowns, solution.point, targets, TYPED_SPREADS[1], prior, build);
  const fitted = build(solution.point);
  if (!fitted.context.armholes) {
    return failure([
      ...found,
      {
        code: 'no-armhole',
        path: 'measures.shoulderLength',
        severity: 'error',
        message:
          'No armhole fits between armpit and shoulder point. Re-measure shoulder length, shoulder drop and side length.',
      },
    ]);
  }
  const { tapes, paths } = readTapes(targets, fitted.context);
  const issues = [
    ...found,
    ...conflictIssues(tapes),
    ...pullIssues(unknowns, solution.point),
    ...unusedIssues(input),
  ];
  if (!solution.converged) {
    issues.push({
      code: 'fit-not-converged',
      path: 'measures',
      severity: 'warning',
      message: `The body fit stopped after ${solution.iterations} steps before settling.`,
      measured: solution.iterations,
    });
  }
  return success(
    {
      figure: input.figure,
      shape: fitted.shape,
      ...levelsAndLandmarks(fitted.context, input.figure),
      armholes: fitted.context.armholes,
      tapes,
      tapePaths: paths,
      issues,
    },
    issues,
  );
}

function shapeFrom(
  values: Float64Array,
  unknowns: readonly Parameter[],
  prior: BodyPrior,
  input: BodyInput,
  isSymmetric: boolean,
): FittedShape {
  const p = Object.fromEntries(PARAMETER_IDS.map((id) => [id, 0])) as ParameterValues;
  unknowns.forEach((unknown, i) => {
    p[unknown.id] = values[i];
  });
  const shape = buildShape(p, prior.numbers, input.figure, isSymmetric);
  const evaluator = new ShapeEvaluator(shape);
  // The chart stays mirror symmetric on every body: the armhole is cut on the mean of both sides.
  const meanEvaluator = isSymmetric
    ? evaluator
    : new ShapeEvaluator(buildShape(withoutSkew(p), prior.numbers, input.figure, true));
  const right = traceArmhole(meanEvaluator, armholePlane(meanEvaluator, 'right', p.armYaw), 'right');
  return {
    shape,
    context: {
      evaluator,
      bust: {
        right: { u: p.bustAngle + p.bustAngleSkew, v: KNOT.bust + p.bustLevelSkew },
        left: { u: Math.PI - p.bustAngle + p.bustAngleSkew, v: KNOT.bust - p.bustLevelSkew },
      },
      armholes: right && { right, left: mirrorLoop(right) },
      rows: new Map(),
    },
  };
}

function withoutSkew(p: ParameterValues): ParameterValues {
  const mean = { ...p };
  for (const id of SKEW_IDS) mean[id] = 0;
  return mean;
}

/** u → π − u; reversed so that it stays counter-clockwise from the armpit. */
function mirrorLoop(loop: Float64Array): Float64Array {
  const n = loop.length / 2;
  const out = new Float64Array(loop.length);
  for (let i = 0; i < n; i++) {
    const from = (n - i) % n;
    out[2 * i] = Math.PI - loop[2 * from];
    out[2 * i + 1] = loop[2 * from + 1];
  }
  return out;
}

function listTargets(input: BodyInput, prior: BodyPrior): Target[] {
  const targets: Target[] = [];
  for (const [id, rule] of Object.entries(TAPE_RULES)) {
    const typed = input.measures[id];
    if (typed === undefined) {
      const estimate = prior.estimates[id];
      if (estimate)
        targets.push({
          id,
          rule,
          side: 'right',
          value: estimate.mean,
          spread: estimate.spread,
          typed: false,
        });
    } else if (typeof typed === 'number') {
      targets.push({ id, rule, side: 'right', value: typed, spread: 0, typed: true });
    } else {
      for (const side of ['right', 'left'] as const) {
        targets.push({
          id: `${id}.${side}`,
          rule,
          side,
          value: typed[side],
          spread: 0,
          typed: true,
        });
      }
    }
  }
  const { napeHeight, waistHeight } = input.measures;
  if (typeof napeHeight === 'number' && typeof waistHeight === 'number') {
    const index = targets.findIndex((t) => t.id === 'napeRise');
    const target: Target = {
      id: 'napeHeight',
      rule: TAPE_RULES.napeRise,
      side: 'right',
      value: napeHeight - waistHeight,
      spread: 0,
      typed: true,
    };
    if (index < 0) targets.push(target);
    else targets[index] = target;
  }
  return targets;
}

function solve(
  unknowns: readonly Parameter[],
  start: Float64Array,
  targets: readonly Target[],
  typedSpread: number,
  prior: BodyPrior,
  build: (values: Float64Array) => FittedShape,
) {
  const index = Object.fromEntries(unknowns.map((u, i) => [u.id, i]));
  return minimiseLeastSquares({
    start,
    steps: Float64Array.from(unknowns, (u) => 1e-5 * u.spread),
    residualCount: targets.length + prior.ratios.length + prior.spacings.length + unknowns.length,
    residuals: (values, out) => {
      const { context } = build(values);
      let i = 0;
      for (const target of targets) {
        const shape = target.rule.read(context, target.side);
        out[i++] = shape
          ? (shape.length - target.value) / (target.typed ? typedSpread : target.spread)
          : Number.NaN;
      }
      for (const ratio of prior.ratios) {
        out[i++] = (readLevelRatio(context, ratio.level) - ratio.mean) / ratio.spread;
      }
      for (const { upper, lower, mean, spread } of prior.spacings) {
        out[i++] = (values[index[upper]] - values[index[lower]] - mean) / spread;
      }
      unknowns.forEach((unknown, k) => {
        out[i++] = (values[k] - unknown.mean) / unknown.spread;
      });
    },
  });
}

function readTapes(targets: readonly Target[], context: TapeContext) {
  const tapes: TapeReading[] = [];
  const paths: Record<string, Float64Array> = {};
  for (const { id, rule, side, value, spread, typed } of targets) {
    const read = rule.read(context, side);
    if (!read || id === 'napeRise') continue;
    paths[id] = read.path;
    const met = Math.abs(read.length - value) <= MET_WITHIN;
    tapes.push({
      id,
      kind: rule.kind,
      target: value,
      got: read.length,
      status: typed ? (met ? 'met' : 'conflict') : 'estimated',
      ...(typed ? {} : { spread }),
    });
  }
  return { tapes, paths };
}

function conflictIssues(tapes: readonly TapeReading[]): Issue[] {
  const conflicts = tapes.filter((t) => t.status === 'conflict');
  const names = conflicts.map((t) => nameTape(t.id)).join(', ');
  return conflicts.map((tape) => {
    const gap = tape.target - tape.got;
    return {
      code: 'tape-conflict',
      path: `measures.${tape.id}`,
      severity: 'warning',
      message: `${nameTape(tape.id)} is about ${Math.abs(gap).toFixed(1)} mm too ${gap > 0 ? 'large' : 'small'} for the others. Re-measure ${names}.`,
      measured: Math.abs(gap),
      limit: MET_WITHIN,
    };
  });
}

/** Priors pulled far tell of a body that the tapes make unusual: said, not hidden. */
function pullIssues(unknowns: readonly Parameter[], point: Float64Array): Issue[] {
  const pulls = unknowns
    .map((u, i) => ({ id: u.id, pull: Math.abs(point[i] - u.mean) / u.spread }))
    .filter((p) => p.pull > DOUBT_PULL)
    .sort((a, b) => b.pull - a.pull);
  if (pulls.length === 0) return [];
  const { id, pull } = pulls[0];
  return [
    {
      code: 'unusual-shape',
      path: 'measures',
      severity: 'warning',
      measured: pull,
      limit: DOUBT_PULL,
      message: `To meet every tape the shape had to leave the usual by ${pull.toFixed(1)} standard deviations (${id}). Look at the body and re-measure what looks wrong.`,
    },
  ];
}

function unusedIssues(input: BodyInput): Issue[] {
  return Object.keys(input.measures)
    .filter((id) => findMeasure(id)?.group === 'arms')
    .map((id) => ({
      code: 'measure-not-used',
      path: `measures.${id}`,
      severity: 'warning' as const,
      message: `${findMeasure(id)?.name} is kept in the project, but no arm is made from it.`,
    }));
}

function nameTape(id: string): string {
  const [base, side] = id.split('.');
  const name = findMeasure(base)?.name ?? base;
  return side ? `${name} (${side})` : name;
}

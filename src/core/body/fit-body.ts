import { failure, type Issue, type Result, success } from '../base/index.ts';
import { type BodyPrior, makePrior } from './body-prior.ts';
import { checkMeasures } from './check-measures.ts';
import { findCrossedSections } from './find-crossed-sections.ts';
import { fitArms } from './fit-arms.ts';
import { conflictIssues, MET_WITHIN, pullIssues } from './fit-issues.ts';
import { type FitProblem, shapeAt, solveFit, type Target } from './fit-problem.ts';
import { phrase } from './phrases.ts';
import { placeLandmarks, placeLevels } from './place-landmarks.ts';
import { readShapeChoices } from './shape-choices.ts';
import { SKEW_IDS } from './shape-parameters.ts';
import { measureSection, TAPE_RULES, type TapeContext } from './tapes.ts';
import type { Body, BodyInput, TapeReading } from './types.ts';

/** A back and a height that contradict each other yield by about this, mm. */
const YIELDING = 2;

/**
 * Fits the loft to the tapes: least squares over typed tapes (tight), survey estimates and shape priors (by their
 * spreads). Typed tapes are met within 0.5 mm or named as conflicts; nothing is clamped.
 * `warmFrom`, a body fitted to nearly the same input, saves most of the steps.
 */
export function fitBody(input: BodyInput, warmFrom?: Body): Result<Body> {
  const choices = readShapeChoices(input.shape ?? {});
  const found = [...checkMeasures(input), ...choices.issues];
  if (found.some((issue) => issue.severity === 'error')) return failure(found);
  const problem = stateProblem(input, makePrior(input, choices.numbers));
  const warm = warmFrom?.unknowns.length === problem.unknowns.length ? warmFrom.unknowns : undefined;
  const solution = solveFit(problem, warm);
  const { shape, context } = shapeAt(problem, solution.point);
  const { tapes, tapePaths } = readTapes(problem.targets, context);
  const fitted = fitArms(input, context);
  const levels = placeLevels(context, input.figure);
  const crossed = findCrossedSections(context, levels);
  if (crossed.length > 0) return failure([...found, ...crossed]);
  const issues = [
    ...found,
    ...conflictIssues(tapes),
    ...pullIssues(problem.unknowns, solution.point, input),
    ...fitted.issues,
  ];
  if (!solution.converged) issues.push(notConverged(solution.iterations));
  const body: Body = {
    figure: input.figure,
    shape,
    levels,
    landmarks: placeLandmarks(context),
    sections: measureSections(context),
    armholes: context.armholes,
    arms: fitted.arms,
    tapes: [...tapes, ...fitted.tapes],
    tapePaths: { ...tapePaths, ...fitted.paths },
    issues,
    unknowns: solution.point,
  };
  return success(body, issues);
}

function measureSections(context: TapeContext): Body['sections'] {
  return {
    hip: measureSection(context, 'hip'),
    highHip: measureSection(context, 'highHip'),
    waist: measureSection(context, 'waist'),
    underbust: measureSection(context, 'underbust'),
    bust: measureSection(context, 'bust'),
    upperChest: measureSection(context, 'upperChest'),
  };
}

function notConverged(iterations: number): Issue {
  return {
    code: 'fit-not-converged',
    path: 'measures',
    severity: 'warning',
    message: phrase('body.fit-not-converged', { steps: iterations }),
    measured: iterations,
  };
}

/** What the fit of these measures solves. */
export function stateProblem(input: BodyInput, prior: BodyPrior): FitProblem {
  const isSymmetric = Object.values(input.measures).every((v) => typeof v === 'number' || v.left === v.right);
  return {
    figure: input.figure,
    isSymmetric,
    prior,
    unknowns: prior.parameters.filter((p) => !isSymmetric || !SKEW_IDS.includes(p.id)),
    targets: listTargets(input, prior),
  };
}

function listTargets(input: BodyInput, prior: BodyPrior): Target[] {
  const targets: Target[] = [];
  for (const [id, rule] of Object.entries(TAPE_RULES)) {
    const typed = input.measures[id];
    const exact = { rule, spread: 0, typed: true } as const;
    if (typed === undefined) {
      const estimate = prior.estimates[id];
      if (!estimate || id === 'napeRise') continue;
      targets.push({ id, rule, side: 'right', value: estimate.mean, spread: estimate.spread, typed: false });
    } else if (typeof typed === 'number') {
      targets.push({ id, ...exact, side: 'right', value: typed });
      // On a body of unlike sides one number speaks for both.
      if (rule.sided && hasSides(input)) targets.push({ id, ...exact, side: 'left', value: typed });
    } else {
      for (const side of ['right', 'left'] as const) {
        targets.push({ id: `${id}.${side}`, ...exact, side, value: typed[side] });
      }
    }
  }
  const { napeHeight, waistHeight } = input.measures;
  if (typeof napeHeight === 'number' && typeof waistHeight === 'number') {
    targets.push({
      id: 'napeHeight',
      rule: TAPE_RULES.napeRise,
      side: 'right',
      value: napeHeight - waistHeight,
      spread: 0,
      typed: true,
    });
  }
  return targets.map((target) => letYield(target, input));
}

/** Of a back and the height it cannot span both give way, so that no other tape has to and these two are named. */
function letYield(target: Target, { measures }: BodyInput): Target {
  const [back, nape, waist] = ['backWaistLength', 'napeHeight', 'waistHeight'].map((id) => measures[id]);
  if (typeof back !== 'number' || typeof nape !== 'number' || typeof waist !== 'number') return target;
  const isOfBoth = target.id === 'backWaistLength' || target.id === 'napeHeight';
  return isOfBoth && nape - waist > back ? { ...target, spread: YIELDING } : target;
}

function hasSides(input: BodyInput): boolean {
  return Object.values(input.measures).some((v) => typeof v !== 'number' && v.left !== v.right);
}

function readTapes(targets: readonly Target[], context: TapeContext) {
  const tapes: TapeReading[] = [];
  const tapePaths: Record<string, Float64Array> = {};
  for (const { id, rule, side, value, spread, typed } of targets) {
    if (tapePaths[id] && side === 'left') continue;
    const got = rule.measure(context, side);
    tapePaths[id] = rule.trace(context, side);
    const met = Math.abs(got - value) <= MET_WITHIN;
    tapes.push({
      id,
      kind: rule.kind,
      target: value,
      got,
      status: typed ? (met ? 'met' : 'conflict') : 'estimated',
      ...(typed ? {} : { spread }),
    });
  }
  return { tapes, tapePaths };
}

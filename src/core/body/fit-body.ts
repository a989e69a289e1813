import { failure, type Issue, type Result, success } from '../base/index.ts';
import type { LeastSquaresSolution } from '../math/index.ts';
import { type BodyPrior, makePrior } from './body-prior.ts';
import { checkMeasures } from './check-measures.ts';
import { checkPhotos } from './check-photos.ts';
import { fairTrunk } from './fair-trunk.ts';
import { findCrossedSections } from './find-crossed-sections.ts';
import { fitArms } from './fit-arms.ts';
import { conflictIssues, MET_WITHIN, pullIssues, SOFTLY_MET } from './fit-issues.ts';
import { type FitProblem, type FittedShape, shapeAt, solveFit, type Target } from './fit-problem.ts';
import { OUTSIDE_IDS, type ParameterId, POSE_IDS, SKEW_IDS, STANCE_IDS } from './parameter-ids.ts';
import { photoIssues } from './photo-issues.ts';
import { listPhotoReadings, listPhotoResiduals } from './photo-readings.ts';
import { phrase } from './phrases.ts';
import { placeLandmarks, placeLevels } from './place-landmarks.ts';
import { isLeanRead, isStanceRead, READ_TO } from './read-stance.ts';
import { readShapeChoices } from './shape-choices.ts';
import type { Side, TapeContext } from './tape-rule.ts';
import { measureSection, TAPE_RULES } from './tapes.ts';
import type { Body, BodyInput, MeasureValue, TapeReading } from './types.ts';

type Choices = Readonly<Record<string, number>>;

export interface FitOptions {
  /** Default false: as while a measure is dragged. */
  readonly fair?: boolean;
}

/** A back and a height that contradict each other yield by about this, mm. */
const YIELDING = 2;

/**
 * Fits the loft to the tapes: least squares over typed tapes (tight), survey estimates and shape priors (by their
 * spreads). Typed tapes are met within 0.5 mm or named as conflicts; nothing is clamped.
 * `warmFrom`, a body fitted to nearly the same input, saves most of the steps. With `fair` the trunk is made smooth under
 * the same tapes; where that fails the rough body stands, and a warning says so.
 */
export function fitBody(input: BodyInput, warmFrom?: Body, options: FitOptions = {}): Result<Body> {
  const choices = readShapeChoices(input.shape ?? {}, input.figure);
  const found = [...checkMeasures(input), ...checkPhotos(input), ...choices.issues];
  if (found.some((issue) => issue.severity === 'error')) return failure(found);
  const problem = stateProblem(input, makePrior(input, choices.numbers), choices.numbers);
  const unknownIds = problem.unknowns.map(({ id }) => id);
  const warm = warmFrom?.unknownIds.join() === unknownIds.join() ? warmFrom.unknowns : undefined;
  const { solution, rough, faired } = solve(problem, warm, options.fair ?? false);
  const { shape, context } = faired ?? rough;
  const { tapes, tapePaths } = readTapes(problem.targets, context);
  const fitted = fitArms(input, context);
  const levels = placeLevels(context, input.figure);
  const crossed = findCrossedSections(context, levels);
  if (crossed.length > 0) return failure([...found, ...crossed]);
  const photoResiduals = listPhotoResiduals(problem.photoReadings, context);
  const issues = [
    ...found,
    ...conflictIssues(tapes),
    ...photoIssues(input, problem.photoReadings, photoResiduals, context),
    ...pullIssues(problem.unknowns, solution.point, input),
    ...fitted.issues,
  ];
  if (options.fair && !faired) issues.push(notFaired());
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
    ...(input.photos ? { photoResiduals } : {}),
    issues,
    unknowns: solution.point,
    unknownIds,
  };
  return success(body, issues);
}

interface Solved {
  readonly solution: LeastSquaresSolution;
  readonly rough: FittedShape;
  /** Null where it was not wanted or does not succeed. */
  readonly faired: FittedShape | null;
}

function solve(problem: FitProblem, warm: Float64Array | undefined, fair: boolean): Solved {
  const solved = solveOnce(problem, warm, fair);
  const { solution, rough, faired } = solved;
  if (!faired || problem.photoReadings.length === 0) return solved;
  // Made smooth under the same girths, sections come out some millimetres narrower: what that takes is added beforehand, once.
  const photoReadings = problem.photoReadings.map((reading) => {
    const taken = reading.read(faired.context) - reading.read(rough.context);
    return { ...reading, wanted: reading.wanted - taken };
  });
  const again = solveOnce({ ...problem, photoReadings }, solution.point, true);
  return again.faired ? again : solved;
}

function solveOnce(problem: FitProblem, warm: Float64Array | undefined, fair: boolean): Solved {
  const solution = solveFit(problem, warm);
  const rough = shapeAt(problem, solution.point);
  return { solution, rough, faired: fair ? fairTrunk(rough, problem.targets) : null };
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

function notFaired(): Issue {
  return { code: 'not-faired', path: 'measures', severity: 'warning', message: phrase('body.not-faired') };
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

/** What the fit of these measures solves. `shape`: the numbers of the shape choices. */
export function stateProblem(input: BodyInput, prior: BodyPrior, shape: Choices): FitProblem {
  const isSymmetric = !Object.values(input.measures).some(isUnlike) && !isLopsided(shape);
  const outside = outsideOf(input);
  const isSought = (id: ParameterId): boolean => {
    const asker = ASKED_BY[id];
    if (OUTSIDE_IDS.some((one) => one === id)) return outside.includes(id);
    if (id === 'lean' || id === 'curve') return isLeanRead(input);
    if (id === 'neckSize') return input.measures.neckGirth !== undefined;
    if (asker) return isUnlike(input.measures[asker]);
    return !isSymmetric || !SKEW_IDS.includes(id);
  };
  return {
    figure: input.figure,
    isSymmetric,
    prior,
    unknowns: prior.parameters.filter((p) => isSought(p.id)),
    targets: listTargets(input, prior, shape, isSymmetric),
    photoReadings: listPhotoReadings(input.photos),
  };
}

/** Unknowns that shape nothing, as far as something was read from there. */
function outsideOf(input: BodyInput): ParameterId[] {
  const found: ParameterId[] = STANCE_IDS.filter((id) => isStanceRead(input, id));
  const photos = (['front', 'side'] as const).filter((photo) => input.photos?.[photo] !== undefined);
  if (photos.length === 0) return found;
  return [...found, 'floor', 'cloth', ...photos.flatMap((photo) => Object.values(POSE_IDS[photo]))];
}

/** Unknowns that are sought only where a measure is typed with unlike sides. */
const ASKED_BY: Readonly<Partial<Record<ParameterId, string>>> = {
  hipZ: 'waistToHip',
  armpitZ: 'sideLength',
};

function isUnlike(value: MeasureValue | undefined): boolean {
  return typeof value === 'object' && value.left !== value.right;
}

/** Choices that make right and left unlike. */
function isLopsided(shape: Choices): boolean {
  const { breastLeft, breastRight, breastLevels, trunkShift, trunkTurn } = shape;
  return breastLeft !== breastRight || [breastLevels, trunkShift, trunkTurn].some((value) => value !== 0);
}

/** For which sides one number speaks on a body of unlike sides. */
function sidesOf(id: string, shape: Choices): readonly Side[] {
  if (Object.values(ASKED_BY).includes(id)) return ['right'];
  // Over the breast, or the larger; where their heights differ the number is the right one's.
  if (id === 'frontWaistLength' || id === 'neckToBustPoint') {
    if (shape.breastLeft > shape.breastRight) return ['left'];
    if (shape.breastLeft < shape.breastRight || shape.breastLevels !== 0) return ['right'];
  }
  return ['right', 'left'];
}

function listTargets(input: BodyInput, prior: BodyPrior, shape: Choices, isSymmetric: boolean): Target[] {
  const targets: Target[] = [];
  for (const [id, rule] of Object.entries(TAPE_RULES)) {
    const typed = input.measures[id];
    const exact = {
      rule,
      spread: 0,
      typed: true,
      ...(rule.reach.stance ? { spread: READ_TO, isSoft: true } : {}),
    };
    if (typed === undefined) {
      const estimate = prior.estimates[id];
      if (!estimate || id === 'napeRise') continue;
      targets.push({ id, rule, side: 'right', value: estimate.mean, spread: estimate.spread, typed: false });
    } else if (typeof typed === 'number') {
      const sides: readonly Side[] = rule.sided && !isSymmetric ? sidesOf(id, shape) : ['right'];
      for (const side of sides) targets.push({ id, ...exact, side, value: typed });
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

function readTapes(targets: readonly Target[], context: TapeContext) {
  const tapes: TapeReading[] = [];
  const tapePaths: Record<string, Float64Array> = {};
  for (const { id, rule, side, value, spread, typed, isSoft } of targets) {
    if (tapePaths[id] && side === 'left') continue;
    const got = rule.measure(context, side);
    tapePaths[id] = rule.trace(context, side);
    const met = Math.abs(got - value) <= (isSoft ? SOFTLY_MET * spread : MET_WITHIN);
    tapes.push({
      id,
      kind: rule.kind,
      target: value,
      got,
      status: typed ? (met ? 'met' : 'conflict') : 'estimated',
      ...(typed && !isSoft ? {} : { spread }),
    });
  }
  return { tapes, tapePaths };
}

import {
  changeBraces,
  designOfShell,
  doesHold,
  type FittedFilling,
  type FlatArms,
  fitFilling,
  flattenProblemFromShell,
  type InsideDesign,
  judgeFilled,
  layAlongGrain,
  levelForStraps,
  movesOfCut,
  nameFlattenIssues,
  recutPanels,
  shrinkGirths,
  type TrialShell,
} from '../../assembly/index.ts';
import { type Issue, type Result, success, withUsual } from '../../base/index.ts';
import type { Body } from '../../body/index.ts';
import { type FlatDisk, type FlattenProblem, flattenTogether } from '../../flatten/index.ts';
import {
  cutGirth,
  doesTakeOff,
  INSIDE_OPTIONS,
  type InsideOptions,
  mayHaveStraps,
  partsOfInside,
  takenOffBy,
} from '../../inside/index.ts';
import type { ChartSurface, Mesh } from '../../mesh/index.ts';
import type { Project } from '../../project/index.ts';
import { cutIntoPanels, type SeamedShell } from '../../seams/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage, StepContext } from '../step.ts';
import { bodyStep, layoutStep } from './body.ts';
import { type FormGiven, formStep } from './form-step.ts';
import { armsStep, designStep } from './inside.ts';
import { flatStep, flattenOptions, laidStep, problemStep } from './panels.ts';
import { cutStep } from './seams.ts';

/** Enough to fit the cut on: a coarser one buckles beside the breast where the form as cut does not. */
const TRIAL_TRIANGLES = 4_000;

const what = phrase('pipeline.filling');

const isLeftOut = ({ project, options }: FormGiven): boolean =>
  options.fills !== true || options.isDraft === true || !withUsual(INSIDE_OPTIONS, project.inside).recut;

/** The shell once more, of few triangles, unrolled as the fine one. Undefined, told as warnings, where that cannot be. */
const trialStep = formStep({
  id: 'trial',
  needs: { body: bodyStep, layout: layoutStep, cut: cutStep, flat: flatStep },
  section: 'seams',
  isLeftOut,
  dependsOn: ({ project: { inside, seams } }) => [
    takenOffBy(inside),
    seams.lengthBlend,
    seams.wrinkleAversion,
  ],
  run({ body, layout, cut }, context): Result<TrialShell | undefined> {
    const { inside } = context.given.project;
    const shell = cutIntoPanels(cut.surface, body, layout, { targetTriangles: TRIAL_TRIANGLES });
    if (!shell.ok) return asWarnings(shell.issues, context);
    const whole = flattenProblemFromShell(shell.value);
    const problem = doesTakeOff(inside)
      ? shrinkGirths(whole, shell.value, (girth) => cutGirth(girth, inside))
      : whole;
    // Its own progress would be that of the whole stage.
    const { memory: _, onProgress: _told, ...options } = flattenOptions(context);
    const flat = flattenTogether(problem, options);
    if (!flat.ok) return asWarnings(nameFlattenIssues(flat.issues, shell.value), context);
    return success({ shell: shell.value, problem, flat: flat.value });
  },
});

/** How the cut must change for the filled form to be the body. */
export const fittedStep = formStep({
  id: 'fitted',
  needs: {
    body: bodyStep,
    cut: cutStep,
    problem: problemStep,
    flat: flatStep,
    arms: armsStep,
    trial: trialStep,
    design: designStep,
  },
  section: 'inside',
  isLeftOut,
  dependsOn: ({ project: { inside, cloth } }) => [inside, cloth.grain],
  run(made, context): Result<FittedFilling | undefined> {
    const { body, trial, design } = made;
    const { project } = context.given;
    const { inside, cloth } = project;
    if (!trial || !design) return success(undefined);
    const { isCancelled } = context;
    const fitted = ({ shape }: InsideDesign, onProgress: (fraction: number) => void) =>
      fitFilling(trial, shape, inside, body.sections, cloth.grain, { onProgress, isCancelled });
    const first = fitted(design, (fraction) => context.onProgress(fraction, what));
    if (!first.ok) return asWarnings(first.issues, context);
    const told = ({ measures }: FittedFilling, { shape }: InsideDesign) =>
      judgeFilled(measures, shape.braces);
    const level = levelToAdd(first.value.measures, design, inside);
    const more = level === undefined ? undefined : designAnew(made, made.flat, project, [level]);
    // Seldom: the bar stays where it is.
    const second = more && fitted(more, () => context.onProgress(1, what));
    if (!more || !second?.ok || second.value.measures.distance.rms >= first.value.measures.distance.rms)
      return success(first.value, told(first.value, design));
    const strapsAdded = level === undefined ? [] : [level];
    return success({ ...second.value, strapsAdded }, told(second.value, more));
  },
});

/** With the fewest parts, where to add straps because the form would not come out as asked. */
function levelToAdd(
  measures: FittedFilling['measures'],
  { shape }: InsideDesign,
  options: InsideOptions,
): string | undefined {
  if (partsOfInside(options) === 'all' || doesHold(measures)) return undefined;
  return levelForStraps(measures, shape, (id) => mayHaveStraps(id, options));
}

/** What a design is made of beside the panels. */
interface DesignGiven {
  readonly body: Body;
  readonly cut: {
    readonly surface: ChartSurface;
    readonly shell: SeamedShell;
    readonly closedMesh: Mesh;
  };
  readonly problem: FlattenProblem;
  readonly arms: Result<FlatArms> | undefined;
}

/** The inside for these panels, with straps at the levels that need them besides. */
function designAnew(
  { body, cut, problem, arms }: DesignGiven,
  flat: readonly FlatDisk[],
  project: Project,
  needed: readonly string[],
): InsideDesign | undefined {
  const flatArms = arms ?? { ok: false, issues: [] };
  const anew = designOfShell({ ...cut, body, flat, disks: problem.disks, flatArms }, project, needed);
  return anew.ok ? anew.value : undefined;
}

/** The fine panels cut so, upright. */
const recutStep = formStep({
  id: 'recut',
  needs: { cut: cutStep, problem: problemStep, flat: flatStep, fitted: fittedStep },
  isLeftOut,
  dependsOn: () => null,
  run({ cut: { shell }, problem, flat, fitted }, context): Result<FlatDisk[] | undefined> {
    if (!fitted) return success(undefined);
    const upright = flat.map(({ positions }) => positions);
    const moves = movesOfCut(shell, upright, fitted.unknowns, fitted.amounts);
    const { isCancelled } = context;
    const made = recutPanels(shell, problem, flat, moves, { isCancelled });
    return made.ok ? made : asWarnings(made.issues, context);
  },
});

/** Every panel along its grain, as it is cut in the end: as unrolled where nothing was fitted. */
export const cutFlatStep = formStep({
  id: 'cutFlat',
  needs: { cut: cutStep, laid: laidStep, recut: recutStep },
  dependsOn: ({ project }) => project.cloth.grain,
  run({ cut, laid, recut }, { given }) {
    const turned = recut && layAlongGrain(cut.shell, recut, given.project.cloth.grain);
    // What it has to say was said when the unrolled ones were laid.
    return success(turned?.ok ? turned.value : laid);
  },
});

/** The inside for these panels, its braces as long as was fitted. */
export const cutDesignStep = formStep({
  id: 'cutDesign',
  needs: {
    body: bodyStep,
    cut: cutStep,
    problem: problemStep,
    recut: recutStep,
    arms: armsStep,
    design: designStep,
    fitted: fittedStep,
  },
  dependsOn: ({ project }) => project.inside,
  run({ recut, design, fitted, ...made }, { given }) {
    if (!recut || !fitted || !design) return success(design);
    const anew = designAnew(made, recut, given.project, fitted.strapsAdded);
    if (!anew) return success(design);
    const { shape } = anew;
    const braces = changeBraces(shape.braces, fitted.unknowns, fitted.amounts);
    return success({ ...anew, shape: { ...shape, braces } });
  },
});

/** The form can be sewn all the same, cut as the panels were unrolled. A fit that was stopped is none. */
function asWarnings(issues: readonly Issue[], context: StepContext<FormGiven>): Result<undefined> {
  if (context.isCancelled()) return { ok: false, issues };
  return success(undefined, [
    {
      code: 'not-fitted',
      path: '',
      message: phrase('pipeline.not-fitted', { reasons: issues.map(({ message }) => message) }),
      severity: 'warning',
    },
  ]);
}

export const filling: Stage<'filling', FormGiven> = {
  id: 'filling',
  what,
  share: 200,
  steps: [trialStep, fittedStep, recutStep],
};

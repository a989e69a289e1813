import { type Issue, withUsual } from '../../core/base/index.ts';
import { FIRST_MEASURES, type TapeReading } from '../../core/body/index.ts';
import type { Form, FormFilled } from '../../core/form/index.ts';
import { INSIDE_OPTIONS } from '../../core/inside/index.ts';
import type { LastStage } from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import { LAYOUTS } from '../../core/seams/index.ts';
import type { AppStore } from './create-app-store.ts';
import { filledOrTried } from './filling-trial.ts';
import { categoriesAsSeen } from './shape-parts.ts';
import type { AppState, ShownGuess } from './types.ts';

/** Warnings and errors of the latest attempt, whether or not it made a form. */
export function issuesOf(state: AppState): readonly Issue[] {
  return state.failure ?? state.form?.report.issues ?? NONE;
}
const NONE: readonly Issue[] = [];

/** The body guessed of what is typed, while there is no form. */
export function guessIn({ form, guess }: AppState): ShownGuess | null {
  return form ? null : guess;
}

/** True while a measure is missing that nothing can take the place of. */
export function lacksFirstMeasure({ body }: Project): boolean {
  return FIRST_MEASURES.some((id) => body.measures[id] === undefined);
}

/** True while the shown form was made from an older project, or only roughly. */
export function isFormBehind(state: AppState): boolean {
  return state.formOf !== state.project || state.formQuality !== 'full';
}

/** True while the shown form is to be cut for its filling and is not yet. */
export function isFillingAwaited({ form, project, failure }: AppState): boolean {
  if (!form || !project || failure) return false;
  return withUsual(INSIDE_OPTIONS, project.inside).recut && !reaches(form, 'filling');
}

/** True while small pictures of what may be chosen are still to come in the stage looked at. */
export function arePicturesAwaited({ stage, project, failure, sketches, shapePictures }: AppState): boolean {
  if (!project || failure) return false;
  const { body } = project;
  if (stage === 'seams') return !isWhole(LAYOUTS, sketches?.body === body ? sketches.layouts : {});
  if (stage !== 'body') return false;
  return !isWhole(categoriesAsSeen(body), shapePictures?.body === body ? shapePictures.outlines : {});
}

function isWhole(
  asked: readonly { readonly id: string }[],
  made: Readonly<Record<string, unknown>>,
): boolean {
  return asked.every(({ id }) => id in made);
}

/** The filled form, foretold or tried, where the body is looked at as that. */
export function filledInView(state: AppState): FormFilled | null {
  return state.stage === 'inside' && state.filledView.look !== 'webs' ? filledOrTried(state) : null;
}

/** Whether a form was made that far: a rough one, made while something else was looked at, may lack panels or pieces. */
export function reaches(form: Form, stage: LastStage): boolean {
  return form.stages.includes(stage);
}

/** Code of the core's issue for one of the first measures. */
const MISSING = 'measure-missing';

/** A body just begun is no mistake: it only needs more. */
export function isBegun(failure: readonly Issue[]): boolean {
  return failure.every(({ code }) => code === MISSING);
}

/** What is wrong or doubtful about one measure, by its path in the project file; not that it is still missing. */
export function issuesOfMeasure(issues: readonly Issue[], id: string): readonly Issue[] {
  const path = `body.measures.${id}`;
  const isOfIt = (issue: Issue) => issue.path === path || issue.path.startsWith(`${path}.`);
  return issues.filter((issue) => isOfIt(issue) && issue.code !== MISSING);
}

/** Readings of one measure: one, or left and right. */
export function tapesOfMeasure(state: AppState, id: string): readonly TapeReading[] {
  return (state.form?.body.tapes ?? []).filter(
    (tape) => tape.id === id || tape.id === `${id}.left` || tape.id === `${id}.right`,
  );
}

/** Names of the steps undo and redo would take back or repeat; null when there is none. */
export function historyOf(store: AppStore): { undo: string | null; redo: string | null } {
  const { pastStates, futureStates } = store.temporal.getState();
  const { step, drafts, words } = store.getState();
  const undo = Object.keys(drafts).length > 0 ? words.steps.unusable : pastStates.length > 0 ? step : null;
  return {
    undo,
    redo: futureStates.at(-1)?.step ?? null,
  };
}

/** True when two states of a project give the same form: they differ in what was done and measured, how pieces lie, and whose body it is, at most. */
export function isSameForm(a: Project, b: Project): boolean {
  const { making: _a, checking: _b, laying: _c, person: _g, ...mine } = a;
  const { making: _d, checking: _e, laying: _f, person: _h, ...other } = b;
  return (Object.keys({ ...mine, ...other }) as (keyof typeof mine)[]).every(
    (key) => mine[key] === other[key],
  );
}

/** Number of the step to work at: the one last looked at for this body, else the first that is not done. */
export function placeAtBench({ bench, bodyId, form, project }: AppState): number {
  const steps = form?.making?.steps ?? [];
  const done = project?.making?.done ?? [];
  const last = bench?.bodyId === bodyId ? steps.findIndex(({ id }) => id === bench.stepId) : -1;
  if (last >= 0) return last;
  const next = steps.findIndex(({ id, isOptional }) => !isOptional && !done.includes(id));
  return Math.max(0, next);
}

import { createSeamPreview, type PreviewSeams } from '../advice/index.ts';
import { failure, InvariantError, type Result, type RunJobsElsewhere, success } from '../base/index.ts';
import type { Body } from '../body/index.ts';
import type { FillingTrial } from '../filled/index.ts';
import type { Form, TriedForm } from '../form/index.ts';
import { INSIDE_OPTIONS } from '../inside/index.ts';
import { LAYING_OPTIONS } from '../laying/index.ts';
import type { Piece } from '../pattern/index.ts';
import { checkOptions, type Project } from '../project/index.ts';
import { assembleForm } from './assemble-form.ts';
import type { MakeForm, MakeOptions } from './make-options.ts';
import { phrase } from './phrases.ts';
import { createStageRunner } from './run-stages.ts';
import { type SharedWork, shareWork } from './share-work.ts';
import { bodyStep } from './stages/body.ts';
import { trialPiecesStep } from './stages/cutting.ts';
import { fittedStep } from './stages/filling.ts';
import type { FormGiven, StepOptions } from './stages/form-step.ts';
import { STAGES } from './stages.ts';
import { tryFitted } from './try-fitted.ts';

export interface Pipeline {
  /** Makes the whole form; steps whose results are remembered are not run again. */
  readonly makeForm: MakeForm;
  /**
   * The same form, bytes and all, with part of the work done elsewhere at the same time, as by a second worker. The promise is
   * never refused: what fails elsewhere is done here.
   */
  readonly makeFormShared: (
    project: Project,
    options: MakeOptions,
    elsewhere: RunJobsElsewhere,
  ) => Promise<Result<Form>>;
  /** The body only. */
  readonly fitBody: (project: Project) => Result<Body>;
  /**
   * The filled form with something otherwise than foretold, and under the heaviest garment: a quarter of a second where the last
   * form was made of this project with these options, else it is filled first. Undefined where it is not cut for its filling.
   */
  readonly tryFilling: (
    project: Project,
    options: StepOptions,
    trial: FillingTrial,
  ) => Result<TriedForm | undefined>;
  /** Lines, cut and strain of the seams alone, coarse and quick, while a line is dragged. */
  readonly previewSeams: PreviewSeams;
  /** The trial shell's pieces of a project that lays them; quick where the form was just made of it. */
  readonly trialPieces: (project: Project, options: StepOptions) => Result<readonly Piece[]>;
}

/**
 * All stages of a form. A wider seam allowance does not fit the body again: every step's last result is remembered. A broken
 * promise between rooms comes back as an issue, so that a person sees one.
 *
 * `remembered`: how many results of each step are kept. More than the last serve whoever goes to and fro between projects; the
 * form of one takes a few megabytes.
 */
export function createPipeline(remembered = 1): Pipeline {
  const runner = createStageRunner<FormGiven>(remembered);

  function* makeInSteps(project: Project, options: MakeOptions): Generator<SharedWork, Result<Form>, void> {
    // Files are read within these limits; what is handed over otherwise need not keep them, and no stage asks again.
    const outside = [
      ...checkOptions(INSIDE_OPTIONS, project.inside, 'inside'),
      ...Object.entries(project.laying ?? {}).flatMap(([use, stock]) =>
        checkOptions(LAYING_OPTIONS, stock, `laying.${use}`),
      ),
    ];
    if (outside.length > 0) return failure(outside);
    const made = yield* runner.run(STAGES, { project, options }, options);
    if (!made.ok) return made;
    const form = assembleForm(made.value, project, options);
    return success(form, form.report.issues);
  }

  const makeForm = (project: Project, options: MakeOptions): Result<Form> => {
    const steps = makeInSteps(project, options);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
    }
  };
  const makeFormShared: Pipeline['makeFormShared'] = async (project, options, elsewhere) => {
    const steps = makeInSteps(project, options);
    for (;;) {
      let shared: SharedWork | undefined;
      const made = catchingBrokenPromises<Form>(() => {
        const step = steps.next();
        if (step.done) return step.value;
        shared = step.value;
        return failure([]);
      });
      if (!shared) return made;
      await shareWork(shared, elsewhere);
    }
  };

  const shapeBody = (project: Project) => runner.makeOne(bodyStep, { project, options: {} });
  const previewSeams = createSeamPreview(shapeBody);
  const tryFilling: Pipeline['tryFilling'] = (project, options, trial) => {
    const given = { project, options };
    // What it would need is not made in vain.
    if (fittedStep.isLeftOut?.(given)) return success(undefined);
    const fitted = runner.makeOne(fittedStep, given);
    if (!fitted.ok || !fitted.value) return fitted.ok ? success(undefined, fitted.issues) : fitted;
    return tryFitted(fitted.value, project.inside, trial);
  };

  const trialPieces: Pipeline['trialPieces'] = (project, options) => {
    const made = runner.makeOne(trialPiecesStep, { project, options });
    return made.ok ? success(made.value ?? [], made.issues) : made;
  };

  return {
    makeForm: (project, options) => catchingBrokenPromises(() => makeForm(project, options)),
    fitBody: (project) => catchingBrokenPromises(() => shapeBody(project)),
    makeFormShared,
    tryFilling: (project, options, trial) =>
      catchingBrokenPromises(() => tryFilling(project, options, trial)),
    trialPieces: (project, options) => catchingBrokenPromises(() => trialPieces(project, options)),
    previewSeams: (project, options) => catchingBrokenPromises(() => previewSeams(project, options)),
  };
}

/** Makes one form, remembering nothing. */
export const makeForm: MakeForm = (project, options) => createPipeline().makeForm(project, options);

function catchingBrokenPromises<T>(work: () => Result<T>): Result<T> {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InvariantError)) throw error;
    const message = phrase('pipeline.broken-promise', { reason: error.message });
    return failure([{ code: 'internal-fault', path: '', message, severity: 'error' }]);
  }
}

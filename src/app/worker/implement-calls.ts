import { mapDistance } from '../../core/advice/index.ts';
import { type Result, type Say, success } from '../../core/base/index.ts';
import { type Body, fitBody, guessBody } from '../../core/body/index.ts';
import { writeSvg } from '../../core/export/index.ts';
import { type Form, worstZones } from '../../core/form/index.ts';
import {
  createPipeline,
  type MakeOptions,
  makeTrialShell,
  type Pipeline,
} from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { ImplementedCalls, MakeWish, OnProgress, StopFlag, Voice } from '../calls/index.ts';
import { adviseSeams } from './advise-seams.ts';
import { drawSteps } from './draw-steps.ts';
import { findSpeaker } from './find-speaker.ts';
import { flattenCut } from './flatten-cut.ts';
import { layWhileWanted } from './lay-while-wanted.ts';
import { FILLED, isDraft } from './make-wishes.ts';
import { outlineShape } from './outline-shape.ts';
import { planPrint } from './plan-print.ts';
import { refitForm } from './refit-form.ts';
import { scatterBody } from './scatter-body.ts';
import type { RunJobs } from './second-worker.ts';
import { createLayoutSketcher } from './sketch-layout.ts';
import { createShapeSketcher } from './sketch-shape.ts';
import { tellUncertainty } from './tell-uncertainty.ts';
import { writeFiles } from './write-files.ts';

/** What the calls need of the place they run in. */
export interface Surroundings {
  /** Does jobs on another core; null where there is none. */
  readonly runElsewhere: RunJobs | null;
  /** Letters of printed pages. */
  readonly readFont: () => Promise<Uint8Array>;
}

type Make = (
  project: Project,
  wish: MakeWish,
  voice: Voice,
  stopFlag: StopFlag,
  onProgress?: OnProgress,
) => Promise<Result<Form>>;

/** Makes forms, with the second worker's help where there is one. */
function createMaker(pipeline: Pipeline, runElsewhere: RunJobs | null): Make {
  return async (project, wish, voice, stopFlag, onProgress) => {
    const options: MakeOptions = {
      ...wish,
      speaker: await findSpeaker(voice),
      isDraft: isDraft(wish),
      isCancelled: () => stopFlag !== null && Atomics.load(stopFlag, 0) !== 0,
      now: () => performance.now(),
      date: today(),
      ...(onProgress ? { onProgress } : {}),
    };
    return runElsewhere
      ? await pipeline.makeFormShared(project, options, (jobs) => runElsewhere(jobs, stopFlag))
      : pipeline.makeForm(project, options);
  };
}

/** What is made of the trial shell; not by the pipeline, which would forget the form it holds. */
async function ofTrialShell<T>(
  project: Project,
  voice: Voice,
  use: (form: Form, say: Say) => Result<T> | Promise<Result<T>>,
): Promise<Result<T>> {
  const speaker = await findSpeaker(voice);
  const trial = makeTrialShell(project, { speaker, date: today() });
  return trial.ok ? use(trial.value.form, speaker.say) : trial;
}

/** What is asked of the project's body alone: the pipeline holds it, or there is none yet. */
function callsAboutBody(
  pipeline: Pipeline,
): Pick<
  ImplementedCalls,
  'sketchLayout' | 'sketchShape' | 'outlineShape' | 'uncertaintyOfBody' | 'scatterBody' | 'guessBody'
> {
  const sketchShape = createShapeSketcher();
  const sketchLayout = createLayoutSketcher();
  let lastGuess: Body | undefined;
  return {
    sketchLayout(project, layoutId) {
      const body = pipeline.fitBody(project);
      return body.ok ? sketchLayout(project, body.value, layoutId) : null;
    },

    sketchShape(project, category, choice) {
      const body = pipeline.fitBody(project);
      return body.ok ? sketchShape(project.body, body.value, category, choice) : null;
    },

    outlineShape(project, category, choice) {
      const body = pipeline.fitBody(project);
      return body.ok ? outlineShape(project.body, body.value, category, choice) : null;
    },

    uncertaintyOfBody: (project) => tellUncertainty(project, pipeline.fitBody(project)),

    guessBody(project) {
      const guessed = guessBody(project.body, lastGuess);
      if (!guessed.ok) return null;
      lastGuess = guessed.value.body;
      return guessed.value;
    },

    scatterBody(project) {
      const body = pipeline.fitBody(project);
      return body.ok ? scatterBody(body.value) : null;
    },
  };
}

/** What the worker does for each call of the table. What it throws is told on the page's side. */
export function implementCalls({ runElsewhere, readFont }: Surroundings): ImplementedCalls {
  const pipeline = createPipeline();
  const make = createMaker(pipeline, runElsewhere);
  /** What is made of the form that files are written of. */
  const ofFilled = async <T>(
    project: Project,
    voice: Voice,
    use: (form: Form, say: Say) => Result<T> | Promise<Result<T>>,
  ): Promise<Result<T>> => {
    const made = await make(project, FILLED, voice, null);
    return made.ok ? use(made.value, (await findSpeaker(voice)).say) : made;
  };

  return {
    ...callsAboutBody(pipeline),

    makeForm: (project, wish, onProgress, voice, stopFlag) =>
      make(project, wish, voice, stopFlag, onProgress),

    async writeFiles(project, options, onDrawn, voice) {
      const write = (form: Form, say: Say) =>
        writeFiles(form, project, options, { date: today(), say, readFont, onDrawn });
      return options.isTrialShell ? ofTrialShell(project, voice, write) : ofFilled(project, voice, write);
    },

    async drawSteps(project, first, onDrawn, voice) {
      const made = await make(project, FILLED, voice, null);
      return made.ok ? drawSteps(made.value, first, (await findSpeaker(voice)).say, onDrawn) : null;
    },

    planPrint: (project, wish, voice) =>
      ofFilled(project, voice, (form, say) => planPrint(form, project, wish, today(), say)),

    previewSeams: (project, options) => pipeline.previewSeams(project, options),

    async flattenCut(project, wish, voice) {
      const { say } = await findSpeaker(voice);
      return flattenCut(project, pipeline.fitBody(project), wish, say);
    },

    async worstZones(project, count, voice) {
      const made = await make(project, FILLED, voice, null);
      return made.ok ? success(worstZones(made.value, count)) : made;
    },

    adviseSeams: (project, place, stopFlag) =>
      adviseSeams(project, pipeline.fitBody(project), place, stopFlag),
    tryFilling: (project, trial) => pipeline.tryFilling(project, FILLED, trial),

    layPieces: (task, onLaid) => layWhileWanted(task, onLaid),

    async trialPieces(project, voice) {
      const speaker = await findSpeaker(voice);
      return pipeline.trialPieces(project, { ...FILLED, speaker, date: today() });
    },

    shapeBody(project) {
      // Not by the pipeline, which would forget the body it is working on.
      const body = fitBody(project.body, undefined, { fair: true });
      return body.ok ? body.value : null;
    },

    async pictureDistance(before, after, voice) {
      const { say } = await findSpeaker(voice);
      const { drawing, ...figures } = mapDistance(before, after, say);
      return { ...figures, picture: writeSvg(drawing, { say }) };
    },

    refitForm: (before, after, wadding, voice) =>
      refitForm(before, after, wadding, { date: today(), voice, readFont }),
  };
}

const today = () => new Date().toISOString().slice(0, 10);

import { expose } from 'comlink';
import fontUrl from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import { mapDistance } from '../../core/advice/index.ts';
import { readCutting } from '../../core/assembly/index.ts';
import { failure, type Result, success } from '../../core/base/index.ts';
import { type Body, fitBody } from '../../core/body/index.ts';
import { writeSvg } from '../../core/export/index.ts';
import { exportForm, type FormFile } from '../../core/files/index.ts';
import { type Form, type MakeOptions, worstZones } from '../../core/form/index.ts';
import { createPipeline } from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import { adviseSeams } from './advise-seams.ts';
import { findSpeaker } from './find-speaker.ts';
import { outlineShape } from './outline-shape.ts';
import {
  type FormWorker,
  FULL_TRIANGLES,
  issueOfDefect,
  type LayoutLines,
  type MakeRequest,
  type OnProgress,
} from './protocol.ts';
import { scatterBody } from './scatter-body.ts';
import { startSecondWorker } from './second-worker.ts';
import { sketchLayouts } from './sketch-layouts.ts';
import { unrollCut } from './unroll-cut.ts';

const pipeline = createPipeline();

/** Only the lane of full forms has one: quick forms are too small to be worth sharing. */
const runElsewhere =
  self.name === 'full' && typeof Worker !== 'undefined' && navigator.hardwareConcurrency > 1
    ? startSecondWorker(
        () => new Worker(new URL('./panel-worker.ts', import.meta.url), { type: 'module', name: 'panels' }),
      )
    : undefined;

async function make(
  project: Project,
  { targetTriangles, upTo, voice }: Pick<MakeRequest, 'targetTriangles' | 'upTo' | 'voice'>,
  stopFlag: Int32Array | null,
  onProgress?: OnProgress,
): Promise<Result<Form>> {
  try {
    const options: MakeOptions = {
      speaker: await findSpeaker(voice),
      targetTriangles,
      isDraft: targetTriangles < FULL_TRIANGLES,
      upTo,
      isCancelled: () => stopFlag !== null && Atomics.load(stopFlag, 0) !== 0,
      now: () => performance.now(),
      date: today(),
      ...(onProgress ? { onProgress } : {}),
    };
    return runElsewhere
      ? await pipeline.makeFormShared(project, options, (jobs) => runElsewhere(jobs, stopFlag))
      : pipeline.makeForm(project, options);
  } catch (error) {
    return failure([issueOfDefect(error)]);
  }
}

const WHOLE: Pick<MakeRequest, 'targetTriangles' | 'upTo'> = {
  targetTriangles: FULL_TRIANGLES,
  upTo: 'cutting',
};
const NO_BYTES = new Uint8Array(0);
const today = () => new Date().toISOString().slice(0, 10);

/** Letters of printed pages, from beside the program. */
async function readFont(): Promise<Uint8Array> {
  const answer = await fetch(fontUrl);
  if (!answer.ok) throw new Error(`the letters for printing could not be read (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

const service: FormWorker = {
  makeForm: ({ project, stopFlag, ...how }, onProgress) => make(project, how, stopFlag, onProgress),

  async writeFiles(project, { formats, pieces }, voice): Promise<Result<readonly FormFile[]>> {
    const made = await make(project, { ...WHOLE, voice }, null);
    if (!made.ok) return made;
    const saved = readCutting(project.cutting);
    if (!saved.ok) return saved;
    const { say } = await findSpeaker(voice);
    const options = {
      ...saved.value,
      say,
      formats,
      ...(pieces ? { only: pieces } : {}),
      date: today(),
      font: {
        name: 'DejaVuSans',
        bytes: ['pdf', 'labels', 'zip'].some((format) => formats.includes(format))
          ? await readFont()
          : NO_BYTES,
      },
    };
    const files = await exportForm(made.value, options);
    if (!files.ok || files.value.length < 2) return files;
    const packed = await exportForm(made.value, { ...options, formats: [...formats, 'zip'] });
    return packed.ok
      ? success([...files.value, packed.value[packed.value.length - 1]], packed.issues)
      : packed;
  },

  sketchLayouts(project): LayoutLines {
    const body = pipeline.fitBody(project);
    return body.ok ? sketchLayouts(body.value) : {};
  },

  previewSeams(project, options) {
    try {
      return pipeline.previewSeams(project, options);
    } catch (error) {
      return failure([issueOfDefect(error)]);
    }
  },

  async unrollCut(project, wish, voice) {
    try {
      const { say } = await findSpeaker(voice);
      return unrollCut(project, pipeline.fitBody(project), wish, say);
    } catch (error) {
      return failure([issueOfDefect(error)]);
    }
  },

  async worstZones(project, count, voice) {
    const made = await make(project, { ...WHOLE, voice }, null);
    return made.ok ? success(worstZones(made.value, count)) : made;
  },

  adviseSeams(project, place, stopFlag) {
    try {
      return adviseSeams(project, pipeline.fitBody(project), place, stopFlag);
    } catch (error) {
      return failure([issueOfDefect(error)]);
    }
  },

  outlineShape(project, category, choice): Float64Array | null {
    const body = pipeline.fitBody(project);
    return body.ok ? outlineShape(project.body, body.value, category, choice) : null;
  },

  shapeBody(project): Body | null {
    // Not by the pipeline, which would forget the body it is working on.
    const body = fitBody(project.body);
    return body.ok ? body.value : null;
  },

  async pictureDistance(before, after, voice) {
    const { drawing, ...figures } = mapDistance(before, after);
    return { ...figures, picture: writeSvg(drawing, await findSpeaker(voice)) };
  },

  scatterBody(project): Float64Array | null {
    const body = pipeline.fitBody(project);
    return body.ok ? scatterBody(body.value) : null;
  },
};

expose(service);

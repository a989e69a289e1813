import { proxy } from 'comlink';
import type { PreviewOptions, SeamPreview } from '../../core/advice/index.ts';
import { failure, type Result } from '../../core/base/index.ts';
import type { Body } from '../../core/body/index.ts';
import type { FormFile } from '../../core/files/index.ts';
import type { Form, WorstZone } from '../../core/form/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { ChartPlace } from '../../core/seams/index.ts';
import { CallDropped, linkWorker } from './link-worker.ts';
import {
  type CutWish,
  type DistancePicture,
  type FileOptions,
  type FlatCut,
  type FormWorker,
  issueOfDefect,
  type LayoutLines,
  type MakeRequest,
  type OnProgress,
  type SeamAdvice,
  type Voice,
} from './protocol.ts';

/** One worker doing one thing at a time, that can be stopped. */
export interface Lane {
  /** `null` when it was stopped. */
  make(
    project: Project,
    how: Pick<MakeRequest, 'targetTriangles' | 'upTo'>,
    onProgress: OnProgress,
  ): Promise<Result<Form> | null>;
  writeFiles(project: Project, options: FileOptions): Promise<Result<readonly FormFile[]>>;
  sketchLayouts(project: Project): Promise<LayoutLines>;
  /** `null` when a later call came before this one's turn. */
  previewSeams(project: Project, options: PreviewOptions): Promise<Result<SeamPreview> | null>;
  unrollCut(project: Project, wish: CutWish): Promise<Result<FlatCut>>;
  worstZones(project: Project, count: number): Promise<Result<readonly WorstZone[]>>;
  /** `stopAdvice` and `stop` end it, where the page may share memory. */
  adviseSeams(project: Project, place: ChartPlace): Promise<Result<readonly SeamAdvice[]>>;
  outlineShape(project: Project, category: string, choice: string | null): Promise<Float64Array | null>;
  shapeBody(project: Project): Promise<Body | null>;
  /** `null` when it could not be made. */
  pictureDistance(before: Body, after: Body): Promise<DistancePicture | null>;
  scatterBody(project: Project): Promise<Float64Array | null>;
  stopAdvice(): void;
  stop(): void;
}

/**
 * Where the page may share memory, stopping raises a flag the computation polls and the worker stays warm.
 * Elsewhere the worker is ended and a fresh one takes its place. `voice` is asked at every call that letters something.
 */
export function createLane(
  start: () => Worker,
  voice: () => Voice,
  canShare = globalThis.crossOriginIsolated === true,
): Lane {
  const link = linkWorker<FormWorker>(start);
  let running: { readonly flag: Int32Array | null; readonly dropped: AbortController } | null = null;

  let advising: Int32Array | null = null;
  let writing = 0;
  let previewsAsked = 0;
  let previewUnderWay: Promise<unknown> = Promise.resolve();

  const stopAdvice = () => {
    if (advising) Atomics.store(advising, 0, 1);
  };

  return {
    stopAdvice,

    async make(project, how, onProgress) {
      const stopFlag = canShare ? new Int32Array(new SharedArrayBuffer(4)) : null;
      const mine = { flag: stopFlag, dropped: new AbortController() };
      running = mine;
      try {
        return await link.ask(
          (remote) => remote.makeForm({ project, ...how, voice: voice(), stopFlag }, proxy(onProgress)),
          mine.dropped.signal,
        );
      } catch (error) {
        return error instanceof CallDropped ? null : failure([issueOfDefect(error)]);
      } finally {
        if (running === mine) running = null;
      }
    },

    async writeFiles(project, options) {
      writing += 1;
      try {
        return await link.ask((remote) => remote.writeFiles(project, options, voice()));
      } catch (error) {
        return failure([issueOfDefect(error)]);
      } finally {
        writing -= 1;
      }
    },

    sketchLayouts: (project) => link.ask((remote) => remote.sketchLayouts(project)).catch(() => ({})),

    // While one preview is being made only the latest of those asked for waits; a drag asks far more often than it gets.
    async previewSeams(project, options) {
      previewsAsked += 1;
      const mine = previewsAsked;
      await previewUnderWay;
      if (mine !== previewsAsked) return null;
      const preview = link
        .ask((remote) => remote.previewSeams(project, options))
        .catch((error): Result<SeamPreview> => failure([issueOfDefect(error)]));
      previewUnderWay = preview;
      return await preview;
    },

    unrollCut: (project, wish) =>
      link
        .ask((remote) => remote.unrollCut(project, wish, voice()))
        .catch((error): Result<FlatCut> => failure([issueOfDefect(error)])),

    worstZones: (project, count) =>
      link
        .ask((remote) => remote.worstZones(project, count, voice()))
        .catch((error): Result<readonly WorstZone[]> => failure([issueOfDefect(error)])),

    async adviseSeams(project, place) {
      const stopFlag = canShare ? new Int32Array(new SharedArrayBuffer(4)) : null;
      advising = stopFlag;
      return await link
        .ask((remote) => remote.adviseSeams(project, place, stopFlag))
        .catch((error): Result<readonly SeamAdvice[]> => failure([issueOfDefect(error)]));
    },

    outlineShape: (project, category, choice) =>
      link.ask((remote) => remote.outlineShape(project, category, choice)).catch(() => null),
    shapeBody: (project) => link.ask((remote) => remote.shapeBody(project)).catch(() => null),
    pictureDistance: (before, after) =>
      link.ask((remote) => remote.pictureDistance(before, after, voice())).catch(() => null),
    scatterBody: (project) => link.ask((remote) => remote.scatterBody(project)).catch(() => null),

    stop() {
      stopAdvice();
      if (!running) return;
      const { flag, dropped } = running;
      running = null;
      dropped.abort();
      if (flag) Atomics.store(flag, 0, 1);
      else if (writing === 0) link.end('stopped');
    },
  };
}

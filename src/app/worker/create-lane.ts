import { proxy, type Remote, wrap } from 'comlink';
import { failure, type Result } from '../../core/base/index.ts';
import type { Body } from '../../core/body/index.ts';
import type { Form, FormFile, PreviewOptions, SeamPreview } from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import {
  type FileOptions,
  type FormWorker,
  issueOfDefect,
  type LayoutLines,
  type OnProgress,
} from './protocol.ts';

/** One worker doing one thing at a time, that can be stopped. */
export interface Lane {
  /** `null` when it was stopped. */
  make(project: Project, targetTriangles: number, onProgress: OnProgress): Promise<Result<Form> | null>;
  writeFiles(project: Project, options: FileOptions): Promise<Result<readonly FormFile[]>>;
  sketchLayouts(project: Project): Promise<LayoutLines>;
  /** `null` when a later call came before this one's turn. */
  previewSeams(project: Project, options: PreviewOptions): Promise<Result<SeamPreview> | null>;
  outlineShape(project: Project, category: string, choice: string | null): Promise<Float64Array | null>;
  shapeBody(project: Project): Promise<Body | null>;
  scatterBody(project: Project): Promise<Float64Array | null>;
  stop(): void;
}

/**
 * Where the page may share memory, stopping raises a flag the computation polls and the worker stays warm.
 * Elsewhere the worker is ended and a fresh one takes its place.
 */
export function createLane(name: string): Lane {
  const canShare = globalThis.crossOriginIsolated === true;
  let worker: Worker | null = null;
  let remote: Remote<FormWorker> | null = null;
  let running: { flag: Int32Array | null; end: (made: null) => void } | null = null;

  let writing = 0;
  let previewsAsked = 0;
  let previewUnderWay: Promise<unknown> = Promise.resolve();

  const connect = (): Remote<FormWorker> => {
    if (!remote) {
      worker = new Worker(new URL('./form-worker.ts', import.meta.url), { type: 'module', name });
      remote = wrap<FormWorker>(worker);
    }
    return remote;
  };
  const dispose = () => {
    worker?.terminate();
    worker = null;
    remote = null;
  };

  return {
    async make(project, targetTriangles, onProgress) {
      const stopFlag = canShare ? new Int32Array(new SharedArrayBuffer(4)) : null;
      const stopped = new Promise<null>((resolve) => {
        running = { flag: stopFlag, end: resolve };
      });
      const mine = running;
      const failed = new Promise<Result<Form>>((resolve) => {
        connect();
        worker!.onerror = (event) => {
          dispose();
          resolve(failure([issueOfDefect(event.message || 'the worker could not start')]));
        };
      });
      try {
        const made = connect().makeForm({ project, targetTriangles, stopFlag }, proxy(onProgress));
        return await Promise.race([made, stopped, failed]);
      } catch (error) {
        return failure([issueOfDefect(error)]);
      } finally {
        if (running === mine) running = null;
      }
    },

    async writeFiles(project, options) {
      const calls = connect();
      writing += 1;
      try {
        return await calls.writeFiles(project, options);
      } catch (error) {
        return failure([issueOfDefect(error)]);
      } finally {
        writing -= 1;
      }
    },

    async sketchLayouts(project) {
      try {
        return await connect().sketchLayouts(project);
      } catch {
        return {};
      }
    },

    // While one preview is being made only the latest of those asked for waits; a drag asks far more often than it gets.
    async previewSeams(project, options) {
      previewsAsked += 1;
      const mine = previewsAsked;
      await previewUnderWay;
      if (mine !== previewsAsked) return null;
      const preview = connect()
        .previewSeams(project, options)
        .catch((error): Result<SeamPreview> => failure([issueOfDefect(error)]));
      previewUnderWay = preview;
      return await preview;
    },

    async outlineShape(project, category, choice) {
      try {
        return await connect().outlineShape(project, category, choice);
      } catch {
        return null;
      }
    },

    async shapeBody(project) {
      try {
        return await connect().shapeBody(project);
      } catch {
        return null;
      }
    },

    async scatterBody(project) {
      try {
        return await connect().scatterBody(project);
      } catch {
        return null;
      }
    },

    stop() {
      if (!running) return;
      const { flag, end } = running;
      running = null;
      if (flag) Atomics.store(flag, 0, 1);
      else if (writing === 0) dispose();
      end(null);
    },
  };
}

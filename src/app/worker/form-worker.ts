import { expose } from 'comlink';
import { failure, type Result, success } from '../../core/base/index.ts';
import { type Body, fitBody } from '../../core/body/index.ts';
import { createPipeline, type Form, type FormFile, filesOfForm } from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import { outlineShape } from './outline-shape.ts';
import {
  type FormWorker,
  FULL_TRIANGLES,
  issueOfDefect,
  type LayoutLines,
  type OnProgress,
} from './protocol.ts';
import { scatterBody } from './scatter-body.ts';
import { sketchLayouts } from './sketch-layouts.ts';

const pipeline = createPipeline();

function make(
  project: Project,
  targetTriangles: number,
  stopFlag: Int32Array | null,
  onProgress?: OnProgress,
): Result<Form> {
  try {
    return pipeline.makeForm(project, {
      targetTriangles,
      isDraft: targetTriangles < FULL_TRIANGLES,
      isCancelled: () => stopFlag !== null && Atomics.load(stopFlag, 0) !== 0,
      now: () => performance.now(),
      date: new Date().toISOString().slice(0, 10),
      ...(onProgress ? { onProgress } : {}),
    });
  } catch (error) {
    return failure([issueOfDefect(error)]);
  }
}

const service: FormWorker = {
  makeForm: ({ project, targetTriangles, stopFlag }, onProgress) =>
    make(project, targetTriangles, stopFlag, onProgress),

  async writeFiles(project): Promise<Result<readonly FormFile[]>> {
    const made = make(project, FULL_TRIANGLES, null);
    return made.ok ? success(await filesOfForm(made.value)) : made;
  },

  sketchLayouts(project): LayoutLines {
    const body = pipeline.fitBody(project);
    return body.ok ? sketchLayouts(body.value) : {};
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

  scatterBody(project): Float64Array | null {
    const body = pipeline.fitBody(project);
    return body.ok ? scatterBody(body.value) : null;
  },
};

expose(service);

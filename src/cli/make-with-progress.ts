import type { Result } from '../core/base/index.ts';
import type { Form } from '../core/form/index.ts';
import type { MakeOptions, Pipeline } from '../core/pipeline/index.ts';
import type { Project } from '../core/project/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { showProgress } from './show-progress.ts';

/** The form of a project for this reader, with progress told on stderr. */
export function makeWithProgress(
  project: Project,
  options: Omit<MakeOptions, 'onProgress' | 'speaker'>,
  { stderr }: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Result<Form> {
  const progress = showProgress(stderr, reader);
  const { onProgress } = progress;
  const form = pipeline.makeForm(project, { ...options, speaker: reader.speaker, onProgress });
  progress.end();
  return form;
}

import type { Result } from '../core/base/index.ts';
import type { Form } from '../core/form/index.ts';
import type { MakeForm, MakeOptions } from '../core/pipeline/index.ts';
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
  make: MakeForm,
): Result<Form> {
  const progress = showProgress(stderr, reader);
  const form = make(project, { ...options, speaker: reader.speaker, onProgress: progress.onProgress });
  progress.end();
  return form;
}

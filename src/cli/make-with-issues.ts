import type { Form } from '../core/form/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { makeWithProgress } from './make-with-progress.ts';
import { readProjectFile } from './read-project-file.ts';

/** The form of a saved project, with issues and progress told on stderr; null when it has errors that stop it. */
export async function makeWithIssues(
  file: string,
  streams: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
  wish: { readonly lays?: boolean } = {},
): Promise<Form | null> {
  const { stderr } = streams;
  const project = await readProjectFile(file);
  if (!project.ok) {
    stderr.write(`${describeIssues(project.issues, reader)}\n`);
    return null;
  }
  const form = makeWithProgress(project.value, { fills: true, ...wish }, streams, reader, pipeline);
  if (form.issues.length > 0) stderr.write(`${describeIssues(form.issues, reader)}\n`);
  return form.ok ? form.value : null;
}

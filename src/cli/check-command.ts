import { checkLayout } from '../core/assembly/index.ts';
import { uncertaintyOfBody } from '../core/body/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues, describeTapes, describeUncertainty } from './describe-form.ts';
import { exitCodes } from './exit-codes.ts';
import { readProjectFile } from './read-project-file.ts';

/** Fits the body and shows tapes, what to measure next, and issues. */
export async function checkCommand(
  file: string,
  { stdout, stderr }: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const project = await readProjectFile(file);
  if (!project.ok) {
    stderr.write(`${describeIssues(project.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const body = pipeline.fitBody(project.value);
  const unit = project.value.displayUnits;
  if (body.ok) {
    const { body: input } = project.value;
    const uncertainty = uncertaintyOfBody(input, body.value);
    stdout.write(`${describeTapes(body.value.tapes, unit, reader)}\n\n`);
    stdout.write(`${describeUncertainty(input, uncertainty, reader)}\n\n`);
  }
  const issues = [...body.issues, ...checkLayout(project.value)];
  stdout.write(`${describeIssues(issues, reader)}\n`);
  const hasErrors = issues.some((issue) => issue.severity === 'error');
  return hasErrors ? exitCodes.errorsInProject : exitCodes.fine;
}

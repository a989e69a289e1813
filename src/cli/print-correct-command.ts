import { readCutting } from '../core/assembly/index.ts';
import { exportForm } from '../core/files/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import { correctionFromBars } from '../core/sheet/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { exitCodes } from './exit-codes.ts';
import { exportOptionsOf, type PaperOptions } from './export-options.ts';
import { makeWithProgress } from './make-with-progress.ts';
import { readProjectFile } from './read-project-file.ts';
import { tellPages } from './tell-pages.ts';
import { writeFiles } from './write-files.ts';

export interface PrintCorrectOptions extends PaperOptions {
  readonly out: string;
  readonly measuredX: number;
  readonly measuredY: number;
  readonly bar?: number;
}

/** Writes the pages again, stretched so that this printer puts them out true; without a project, only tells by how much. */
export async function printCorrectCommand(
  file: string | undefined,
  options: PrintCorrectOptions,
  streams: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const { stdout, stderr } = streams;
  const { numbers } = reader;
  const words = reader.words.printCorrect;
  const { measuredX: x, measuredY: y, bar } = options;
  const correction = correctionFromBars({ x, y, ...(bar === undefined ? {} : { bar }) });
  if (!correction.ok) {
    stderr.write(`${describeIssues(correction.issues, reader)}\n`);
    return exitCodes.usage;
  }
  const percent = (factor: number): string =>
    `${factor > 1 ? '+' : ''}${numbers.fixed(100 * (factor - 1), 2)}`;
  const { value } = correction;
  stdout.write(`${words.correction(percent(value.x), percent(value.y))}\n`);
  if (file === undefined) return exitCodes.fine;

  const project = await readProjectFile(file);
  if (!project.ok) {
    stderr.write(`${describeIssues(project.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  // The bars measured now stand for those saved before.
  const { measuredBars: _before, ...cutting } = project.value.cutting;
  const saved = readCutting(cutting);
  if (!saved.ok) return exitCodes.errorsInProject;
  const date = new Date().toISOString().slice(0, 10);
  const form = makeWithProgress(project.value, { date }, streams, reader, pipeline);
  if (!form.ok) {
    stderr.write(`${describeIssues(form.issues, reader)}\n`);
    return exitCodes.errorsInProject;
  }
  const files = await exportForm(
    form.value,
    await exportOptionsOf({ ...options, formats: ['pdf'] }, date, saved.value, reader, value),
  );
  if (files.issues.length > 0) stderr.write(`${describeIssues(files.issues, reader)}\n`);
  if (!files.ok) return exitCodes.usage;
  const written = await writeFiles(options.out, files.value);
  stdout.write(`${[...written, ...tellPages(files.value, reader)].join('\n')}\n`);
  stdout.write(`${words.keep(`"measuredBars": { "across": ${x}, "up": ${y} }`)}\n`);
  return exitCodes.fine;
}

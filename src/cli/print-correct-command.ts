import { readCutting } from '../core/assembly/index.ts';
import { exportForm } from '../core/files/index.ts';
import { makeForm } from '../core/pipeline/index.ts';
import { correctionFromBars } from '../core/sheet/index.ts';
import { describeIssues } from './describe-form.ts';
import { englishSpeaker } from './english-speaker.ts';
import { exitCodes } from './exit-codes.ts';
import { exportOptionsOf, type PaperOptions } from './export-options.ts';
import { readProjectFile } from './read-project-file.ts';
import type { CommandStreams } from './run.ts';
import { showProgress } from './show-progress.ts';
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
  { stdout, stderr }: CommandStreams,
): Promise<number> {
  const { measuredX: x, measuredY: y, bar } = options;
  const correction = correctionFromBars({ x, y, ...(bar === undefined ? {} : { bar }) });
  if (!correction.ok) {
    stderr.write(`${describeIssues(correction.issues)}\n`);
    return exitCodes.usage;
  }
  const percent = (factor: number): string => `${factor > 1 ? '+' : ''}${(100 * (factor - 1)).toFixed(2)} %`;
  const { value } = correction;
  stdout.write(`Correction: ${percent(value.x)} across the page, ${percent(value.y)} up the page.\n`);
  if (file === undefined) return exitCodes.fine;

  const project = await readProjectFile(file);
  if (!project.ok) {
    stderr.write(`${describeIssues(project.issues)}\n`);
    return exitCodes.errorsInProject;
  }
  // The bars measured now stand for those saved before.
  const { measuredBars: _before, ...cutting } = project.value.cutting;
  const saved = readCutting(cutting);
  if (!saved.ok) return exitCodes.errorsInProject;
  const progress = showProgress(stderr);
  const date = new Date().toISOString().slice(0, 10);
  const form = makeForm(project.value, { speaker: englishSpeaker, onProgress: progress.onProgress, date });
  progress.end();
  if (!form.ok) {
    stderr.write(`${describeIssues(form.issues)}\n`);
    return exitCodes.errorsInProject;
  }
  const files = await exportForm(
    form.value,
    await exportOptionsOf({ ...options, formats: ['pdf'] }, date, saved.value, value),
  );
  if (files.issues.length > 0) stderr.write(`${describeIssues(files.issues)}\n`);
  if (!files.ok) return exitCodes.usage;
  stdout.write(`${(await writeFiles(options.out, files.value)).join('\n')}\n`);
  stdout.write(
    `To keep it, put "measuredBars": { "across": ${x}, "up": ${y} } under "cutting" in the project file.\n`,
  );
  return exitCodes.fine;
}

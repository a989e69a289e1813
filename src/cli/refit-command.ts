import { readCutting } from '../core/assembly/index.ts';
import type { Issue } from '../core/base/index.ts';
import { exportForm, type FormFile } from '../core/files/index.ts';
import { makeRefit, type Pipeline, type Refit } from '../core/pipeline/index.ts';
import type { Project } from '../core/project/index.ts';
import { refitPhrase, tellStep } from '../core/refit/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { exportOptionsOf, type PaperOptions } from './export-options.ts';
import { formatTable } from './format-table.ts';
import { readProjectFile } from './read-project-file.ts';
import { tellPages } from './tell-pages.ts';
import { writeFiles } from './write-files.ts';

export interface RefitCommandOptions extends PaperOptions {
  readonly out: string;
  readonly wadding?: number;
  readonly triangles?: number;
}

/** Drawings and pages: the rest of a form is made already. */
const FORMATS = ['svg', 'pdf'];

/** How the form of one project is made to serve the body of another, with the pieces for that. */
export async function refitCommand(
  before: string,
  after: string,
  options: RefitCommandOptions,
  { stdout, stderr }: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const [stands, next] = [await readOrRefuse(before, reader), await readOrRefuse(after, reader)];
  const refit = refitOrRefuse(stands, next, options, reader, pipeline);
  if (refit.issues.length > 0) stderr.write(`${describeIssues(refit.issues, reader)}\n`);
  stdout.write(`${describeRefit(refit.value, next, reader)}\n`);
  if (!refit.value.form) return exitCodes.errorsInProject;
  const files = await filesOfRefit(refit.value, next, options, reader);
  const written = await writeFiles(options.out, files);
  stdout.write(`\n${[...written, ...tellPages(files, reader)].join('\n')}\n`);
  return exitCodes.fine;
}

/** The saved project; ends the command where it has errors, or cannot be read. */
export async function readOrRefuse(file: string, reader: Reader): Promise<Project> {
  const project = await readProjectFile(file);
  if (project.ok) return project.value;
  throw refusal(project.issues, reader);
}

function refusal(issues: readonly Issue[], reader: Reader): CommandFailure {
  return new CommandFailure(exitCodes.errorsInProject, () => describeIssues(issues, reader));
}

export function refitOrRefuse(
  before: Project,
  after: Project,
  { wadding, triangles }: Pick<RefitCommandOptions, 'wadding' | 'triangles'>,
  reader: Reader,
  pipeline: Pipeline,
): { readonly value: Refit; readonly issues: readonly Issue[] } {
  const refit = makeRefit(
    before,
    after,
    {
      speaker: reader.speaker,
      date: new Date().toISOString().slice(0, 10),
      ...(triangles === undefined ? {} : { targetTriangles: triangles }),
    },
    wadding === undefined ? {} : { wadding },
    pipeline.makeForm,
  );
  if (!refit.ok) throw refusal(refit.issues, reader);
  return refit;
}

/** The files of cover and pads. */
export async function filesOfRefit(
  { form }: Refit,
  { cutting }: Project,
  options: PaperOptions,
  reader: Reader,
): Promise<readonly FormFile[]> {
  const saved = readCutting(cutting);
  if (!saved.ok) throw refusal(saved.issues, reader);
  if (!form) return [];
  const date = new Date().toISOString().slice(0, 10);
  const wish = await exportOptionsOf({ ...options, formats: FORMATS }, date, saved.value, reader);
  const files = await exportForm(form, wish);
  if (!files.ok) throw refusal(files.issues, reader);
  return files.value;
}

/** Zone by zone, and pad by pad. */
export function describeRefit(
  { zones, pads, form, toFront }: Refit,
  { displayUnits: unit }: Project,
  { words, say, numbers }: Reader,
  verdict = refitPhrase('refit.verdict', { isAnew: !form }),
): string {
  const { refit: text } = words;
  const rows = zones.map(({ level, outside, inside, girth, steps }) => [
    say(level ?? refitPhrase('refit.above')),
    girth ? `${numbers.length(girth.before, unit)} → ${numbers.length(girth.after, unit)}` : '',
    numbers.fixed(outside, 1),
    numbers.fixed(inside, 1),
    steps.length === 0
      ? say(refitPhrase('refit.nothing'))
      : steps.map((step) => say(tellStep(step))).join('; '),
  ]);
  const titles = [text.zone, text.girth, text.larger, text.smaller, text.what].map((title) => ({ title }));
  const lines = [formatTable(titles, rows), '', say(verdict)];
  const stands = toFront > 0 ? text.standsInFront : text.standsBehind;
  if (toFront !== 0) lines.push(stands(numbers.fixed(Math.abs(toFront), 1)));
  if (form && pads.length > 0)
    lines.push(
      '',
      ...pads.map(({ input }) => `${say(input.name)}. ${(input.notes ?? []).map(say).join(' ')}`),
    );
  return lines.join('\n');
}

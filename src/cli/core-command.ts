import path from 'node:path';
import type { Pipeline } from '../core/pipeline/index.ts';
import { type Project, serializeProject } from '../core/project/index.ts';
import { type Core, type CoreBody, findCore, refitPhrase } from '../core/refit/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { formatTable } from './format-table.ts';
import {
  describeRefit,
  filesOfRefit,
  type RefitCommandOptions,
  readOrRefuse,
  refitOrRefuse,
} from './refit-command.ts';
import { writeFiles } from './write-files.ts';

/** One core for several people: a project of it, and for each the pads and the cover that make it theirs. */
export async function coreCommand(
  names: readonly string[],
  options: RefitCommandOptions,
  { stdout, stderr }: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const { say } = reader;
  const projects: Project[] = [];
  for (const name of names) projects.push(await readOrRefuse(name, reader));
  const bodies = projects.map((project): CoreBody => {
    const body = pipeline.fitBody(project);
    if (body.ok) return { name: project.name, input: project.body, body: body.value };
    throw new CommandFailure(exitCodes.errorsInProject, () => describeIssues(body.issues, reader));
  });
  const core = findCore(bodies);
  if (core.issues.length > 0) stderr.write(`${describeIssues(core.issues, reader)}\n`);
  if (!core.ok) return exitCodes.errorsInProject;
  const { making: _making, checking: _checking, person: _person, ...first } = projects[0];
  const name = say(refitPhrase('core.name', { names: projects.map((project) => project.name) }));
  const project: Project = { ...first, name: name.slice(0, LONGEST_NAME), body: core.value.input };
  stdout.write(`${describeCore(core.value, projects, reader)}\n\n`);
  const files = [{ name: `${STEM}.loftseam.json`, content: serializeProject(project) }];
  stdout.write(`${(await writeFiles(options.out, files)).join('\n')}\n`);
  let exitCode: number = exitCodes.fine;
  for (const [i, person] of projects.entries()) {
    const refit = refitOrRefuse(project, person, options, reader, pipeline);
    stdout.write(`\n${person.name}\n`);
    // What pads cannot do stands in the table, zone by zone.
    const others = refit.issues.filter(({ code }) => !code.startsWith('refit-'));
    if (others.length > 0) stderr.write(`${describeIssues(others, reader)}\n`);
    const verdict = refitPhrase('core.verdict', { name: person.name, isAnew: !refit.value.form });
    stdout.write(`${describeRefit(refit.value, person, reader, verdict)}\n`);
    if (!refit.value.form) exitCode = exitCodes.errorsInProject;
    const folder = path.join(options.out, path.basename(names[i]).replace(/\.loftseam\.json$/, ''));
    const own = await filesOfRefit(refit.value, person, options, reader);
    if (own.length > 0) stdout.write(`\n${(await writeFiles(folder, own)).join('\n')}\n`);
  }
  return exitCode;
}

/** The core's girths and lengths beside those of all it serves. */
function describeCore(
  { tapes }: Core,
  projects: readonly Project[],
  { words, say, numbers }: Reader,
): string {
  const { core: text } = words;
  const [{ displayUnits: unit }] = projects;
  const columns = [
    { title: text.measure },
    ...[...projects.map(({ name }) => name), text.core, text.under].map((title) => {
      return { title, align: 'right' as const };
    }),
  ];
  const rows = tapes.map(({ name, people, core, under }) => [
    say(name),
    ...[...people, core].map((mm) => numbers.length(mm, unit)),
    numbers.fixed(Math.max(0, under), 0),
  ]);
  return formatTable(columns, rows);
}

const STEM = 'core';
/** Characters that a project's name may have. */
const LONGEST_NAME = 200;

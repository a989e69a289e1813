import { readCutting } from '../core/assembly/index.ts';
import { verbatim } from '../core/base/index.ts';
import { planPrint } from '../core/files/index.ts';
import { makingPhrase } from '../core/making/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import { findPaper } from '../core/sheet/index.ts';
import { judgeFilling, wordCorrection } from '../core/simulate/index.ts';
import { createSpeaker, tellOrderOfWork } from '../language/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { describeFilling } from './describe-filling.ts';
import { describeIssues } from './describe-form.ts';
import { exitCodes } from './exit-codes.ts';
import { type PaperOptions, printOptionsOf } from './export-options.ts';
import { makeWithIssues } from './make-with-issues.ts';

/** Prints the order of work of a saved project, and on how many pages its pattern comes for each paper asked for. */
export async function planCommand(
  file: string,
  options: PaperOptions,
  streams: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const made = await makeWithIssues(file, streams, reader, pipeline);
  if (!made?.making) return exitCodes.errorsInProject;
  const { name, displayUnits, making } = made.project;
  const text = tellOrderOfWork(made.making.steps, {
    catalogue: reader.catalogue,
    unit: displayUnits,
    project: name,
    done: making?.done ?? [],
  });
  streams.stdout.write(text);
  const { hours } = made.making;
  streams.stdout.write(`\n${reader.say(makingPhrase('work.hours', { hours }))}\n`);
  const saved = readCutting(made.project.cutting);
  const { papers = [], ...cutting } = saved.ok ? saved.value : {};
  const print = printOptionsOf(options, cutting);
  const only = options.only?.flatMap((ids) => ids.split(','));
  const lines: string[] = [];
  for (const paper of options.paper ?? papers) {
    const plan = planPrint(made, { papers: [paper], print, ...(only && { only }), say: reader.say });
    if (!plan.ok) {
      streams.stderr.write(`${describeIssues(plan.issues, reader)}\n`);
      return exitCodes.usage;
    }
    const { pages, patternPages, joints } = plan.value;
    const name = findPaper(paper)?.name ?? verbatim(paper);
    lines.push(reader.words.plan.print(reader.say(name), pages, patternPages, joints));
  }
  streams.stdout.write(`\n${lines.join('\n')}\n`);
  return exitCodes.fine;
}

/** Prints what every level is to measure and take, and judges the entries of the project's log, the last one in full. */
export async function stuffingCommand(
  file: string,
  streams: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const made = await makeWithIssues(file, streams, reader, pipeline);
  if (!made?.making) return exitCodes.errorsInProject;
  const { numbers } = reader;
  const words = reader.words.stuffing;
  const { stuffing } = made.making;
  const unit = made.project.displayUnits;
  const say = createSpeaker(reader.catalogue, { locale: reader.language, units: unit });
  const entries = made.project.checking?.entries ?? [];
  const last = entries[entries.length - 1];
  streams.stdout.write(`${describeFilling(stuffing, last, unit, reader)}\n`);
  const { zones, targets } = stuffing;
  const named = new Map([...targets, ...zones].map(({ id, name }) => [id, name]));
  for (const entry of entries) {
    const mass = entry.fillMass === undefined ? [] : [words.fillMass(numbers.mass(entry.fillMass, unit))];
    const head = [entry.date, words.state[entry.state], ...mass].join(', ');
    streams.stdout.write(`\n${head}${entry.note ? `: ${entry.note}` : ''}\n`);
    const corrections = judgeFilling(entry.levels, entry.state, stuffing);
    if (corrections.length === 0) streams.stdout.write(`  ${words.nothingToMend}\n`);
    for (const correction of corrections) {
      const { title, text } = wordCorrection(correction, (id) => named.get(id) ?? verbatim(id));
      streams.stdout.write(`  ${say(title)}\n    ${say(text)}\n`);
    }
  }
  if (entries.length === 0) streams.stdout.write(`\n${words.nothingMeasured}\n`);
  return exitCodes.fine;
}

import { verbatim } from '../core/base/index.ts';
import { wordOrderOfWork } from '../core/making/index.ts';
import { judgeStuffing, wordCorrection } from '../core/simulate/index.ts';
import { createSpeaker, englishCore, formatMass } from '../language/index.ts';
import type { CommandStreams } from './command-streams.ts';
import { describeStuffing } from './describe-stuffing.ts';
import { exitCodes } from './exit-codes.ts';
import { makeWithIssues } from './make-with-issues.ts';

/** Prints the order of work of a saved project. */
export async function planCommand(file: string, streams: CommandStreams): Promise<number> {
  const made = await makeWithIssues(file, streams);
  if (!made?.workshop) return exitCodes.errorsInProject;
  const { name, displayUnits, making } = made.project;
  const title = `Order of work – ${name}`;
  const say = createSpeaker(englishCore, { units: displayUnits });
  streams.stdout.write(wordOrderOfWork(made.workshop.steps, title, displayUnits, say, making?.done));
  return exitCodes.fine;
}

/** Prints what every level is to measure and take, and judges the entries of the project's log, the last one in full. */
export async function stuffingCommand(file: string, streams: CommandStreams): Promise<number> {
  const made = await makeWithIssues(file, streams);
  if (!made?.workshop) return exitCodes.errorsInProject;
  const { stuffing } = made.workshop;
  const unit = made.project.displayUnits;
  const say = createSpeaker(englishCore, { units: unit });
  const entries = made.project.checking?.entries ?? [];
  const last = entries[entries.length - 1];
  streams.stdout.write(`${describeStuffing(stuffing, last, unit)}\n`);
  const { zones, targets } = stuffing;
  const named = new Map([...targets, ...zones].map(({ id, name }) => [id, name]));
  for (const entry of entries) {
    const mass = entry.fillMass === undefined ? '' : `, ${formatMass(entry.fillMass, unit)} of filling`;
    streams.stdout.write(`\n${entry.date}, ${entry.state}${mass}${entry.note ? `: ${entry.note}` : ''}\n`);
    const corrections = judgeStuffing(entry.levels, entry.state, stuffing);
    if (corrections.length === 0) streams.stdout.write('  Nothing to mend.\n');
    for (const correction of corrections) {
      const { title, text } = wordCorrection(correction, (id) => named.get(id) ?? verbatim(id));
      streams.stdout.write(`  ${say(title)}\n    ${say(text)}\n`);
    }
  }
  if (entries.length === 0)
    streams.stdout.write('\nNothing measured yet: enter readings under Checking, or in the file.\n');
  return exitCodes.fine;
}

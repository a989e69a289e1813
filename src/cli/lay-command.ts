import { tellOfPlan } from '../core/laying/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { exitCodes } from './exit-codes.ts';
import { makeWithIssues } from './make-with-issues.ts';

/** Prints how the pieces of a saved project lie on cloth and boards, and how much of each that takes. */
export async function layCommand(
  file: string,
  streams: CommandStreams,
  reader: Reader,
  pipeline: Pipeline,
): Promise<number> {
  const made = await makeWithIssues(file, streams, reader, pipeline, { lays: true });
  if (!made?.laid) return exitCodes.errorsInProject;
  const { say } = reader;
  const pieces = [...made.pieces, ...(made.inside?.pieces ?? [])];
  for (const plan of made.laid) {
    streams.stdout.write(`${say({ id: `use.${plan.use}`, values: {} })}\n`);
    const stock = made.project.laying?.[plan.use] ?? {};
    for (const words of tellOfPlan(plan, pieces, stock)) streams.stdout.write(`  ${say(words)}\n`);
    streams.stdout.write('\n');
  }
  return exitCodes.fine;
}

import { CommanderError } from 'commander';
import { createPipeline } from '../core/pipeline/index.ts';
import type { Language } from '../language/index.ts';
import { buildProgram } from './build-program.ts';
import type { CommandStreams } from './command-streams.ts';
import { createReader } from './create-reader.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { findLanguage } from './read-arguments.ts';

/**
 * Runs one command and returns its exit code. Results go to stdout; progress, warnings and errors to stderr. Whoever runs several
 * gives them one pipeline, which remembers what it has made.
 */
export async function run(
  args: readonly string[],
  streams: CommandStreams,
  pipeline = createPipeline(),
): Promise<number> {
  let exitCode: number = exitCodes.fine;
  const reader = await createReader(languageOf(args));
  const end = (code: number): void => {
    exitCode = code;
  };
  try {
    await buildProgram({ streams, reader, pipeline, end }).parseAsync([...args], { from: 'user' });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
    if (error instanceof CommandFailure) {
      streams.stderr.write(`${error.tell(reader.words)}\n`);
      return error.exitCode;
    }
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    streams.stderr.write(`${reader.words.refusals.internal(what)}\n`);
    return exitCodes.internal;
  }
}

/**
 * The language asked for, which the program must know before it can explain itself; else English, in which an unknown one is
 * then refused. The place the computer stands in is not asked, so that scripts read the same everywhere.
 */
function languageOf(args: readonly string[]): Language {
  const end = args.indexOf('--');
  const options = end < 0 ? args : args.slice(0, end);
  const given = options.flatMap((arg, i) => {
    if (arg.startsWith('--language=')) return [arg.slice('--language='.length)];
    return options[i - 1] === '--language' ? [arg] : [];
  });
  return findLanguage(given.at(-1) ?? '') ?? 'en';
}

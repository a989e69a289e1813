import { readFile } from 'node:fs/promises';
import type { Result } from '../core/base/index.ts';
import { type Project, parseProject } from '../core/project/index.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { faultInWords } from './write-files.ts';

/** Reads and checks a saved project. Fails with `CommandFailure` when the file cannot be read at all. */
export async function readProjectFile(file: string): Promise<Result<Project>> {
  return parseProject(await readTextFile(file));
}

/** The text of a file. Fails with `CommandFailure` (cannot read). */
export async function readTextFile(file: string): Promise<string> {
  return readFile(file, 'utf8').catch((error: unknown) => {
    throw new CommandFailure(exitCodes.cannotReadOrWrite, ({ refusals: { files } }) =>
      files.cannotRead(file, faultInWords(error, files.why)),
    );
  });
}

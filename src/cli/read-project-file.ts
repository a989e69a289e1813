import { readFile } from 'node:fs/promises';
import type { Result } from '../core/base/index.ts';
import { type Project, parseProject } from '../core/project/index.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { faultInWords } from './write-files.ts';

/** Reads and checks a saved project. Fails with `CommandFailure` when the file cannot be read at all. */
export async function readProjectFile(file: string): Promise<Result<Project>> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (error) {
    const reason = faultInWords((error as NodeJS.ErrnoException).code ?? '', error);
    throw new CommandFailure(exitCodes.cannotReadOrWrite, `Cannot read ${file}: ${reason}.`);
  }
  return parseProject(text);
}

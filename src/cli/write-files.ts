import { randomBytes } from 'node:crypto';
import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import type { CommandWords } from '../language/english/command.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';

export interface OutputFile {
  /** Plain file name. */
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes all files into `folder` (made if missing). Each is written whole under another name beside its place and only
 * then renamed, so that a file is never seen half written and a failure leaves the old ones as they were.
 * Returns the paths written. Fails with `CommandFailure` (cannot write).
 */
export async function writeFiles(folder: string, files: readonly OutputFile[]): Promise<string[]> {
  const pending: { readonly aside: string; readonly final: string }[] = [];
  try {
    await makeFolder(folder);
    for (const file of files) {
      const final = path.join(folder, file.name);
      const aside = path.join(folder, `.${file.name}.${randomBytes(4).toString('hex')}.part`);
      pending.push({ aside, final });
      await writeThrough(aside, file.content);
    }
    for (const { aside, final } of pending) await rename(aside, final);
    return pending.map(({ final }) => final);
  } catch (error) {
    await Promise.all(pending.map(({ aside }) => rm(aside, { force: true }).catch(() => undefined)));
    throw new CommandFailure(exitCodes.cannotReadOrWrite, ({ refusals: { files: words } }) =>
      words.cannotWrite(folder, faultInWords(error, words.why)),
    );
  }
}

/**
 * Makes a folder and those above it that are missing, one by one: the built-in recursive way never returns where a
 * file system answers “no such folder” under a folder that exists.
 */
async function makeFolder(folder: string): Promise<void> {
  if (await isFolder(folder)) return;
  const above = path.dirname(path.resolve(folder));
  if (!(await isFolder(above)) && above !== path.resolve(folder)) await makeFolder(above);
  await mkdir(folder).catch(async (error: NodeJS.ErrnoException) => {
    // Another program may have made it meanwhile.
    if (error.code !== 'EEXIST' || !(await isFolder(folder))) throw error;
  });
}

async function isFolder(folder: string): Promise<boolean> {
  return stat(folder).then(
    (found) => found.isDirectory(),
    () => false,
  );
}

async function writeThrough(file: string, content: string | Uint8Array): Promise<void> {
  const handle = await open(file, 'wx');
  try {
    await handle.writeFile(content);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

type Reasons = CommandWords['refusals']['files']['why'];

/** By the code of the system. */
const REASONS: Readonly<Record<string, keyof Reasons>> = {
  ENOENT: 'isAbsent',
  EACCES: 'isForbidden',
  EPERM: 'isForbidden',
  EROFS: 'isReadOnly',
  ENOSPC: 'isFull',
  ENOTDIR: 'isNoFolder',
  EEXIST: 'isNoFolder',
  EISDIR: 'isFolder',
};

/** The usual reasons a file cannot be had, in words; a rare one as the system tells it. */
export function faultInWords(error: unknown, words: Reasons): string {
  const reason = REASONS[(error as NodeJS.ErrnoException).code ?? ''];
  if (reason !== undefined) return words[reason];
  return error instanceof Error ? error.message : String(error);
}

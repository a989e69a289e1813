import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CommandFailure, exitCodes } from '../../src/cli/exit-codes.ts';
import { faultInWords, writeFiles } from '../../src/cli/write-files.ts';
import { commandWords } from '../../src/language/english/command.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'loftseam-'));
});
afterEach(() => rm(folder, { recursive: true }));

async function failureOf(work: Promise<unknown>): Promise<CommandFailure> {
  const error = await work.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  if (!(error instanceof CommandFailure)) throw new Error('a CommandFailure was expected');
  return error;
}

describe('writeFiles', () => {
  it('makes the folder and writes text and bytes', async () => {
    const out = path.join(folder, 'new', 'deep');
    const written = await writeFiles(out, [
      { name: 'a.svg', content: 'ä' },
      { name: 'b.glb', content: Uint8Array.of(1, 2, 3) },
    ]);
    expect(written).toEqual([path.join(out, 'a.svg'), path.join(out, 'b.glb')]);
    expect(await readFile(written[0], 'utf8')).toBe('ä');
    expect([...(await readFile(written[1]))]).toEqual([1, 2, 3]);
    expect(await readdir(out)).toEqual(['a.svg', 'b.glb']);
  });

  it('replaces old files, and leaves nothing else behind', async () => {
    await writeFile(path.join(folder, 'a.svg'), 'old');
    await writeFiles(folder, [{ name: 'a.svg', content: 'new' }]);
    expect(await readFile(path.join(folder, 'a.svg'), 'utf8')).toBe('new');
    expect(await readdir(folder)).toEqual(['a.svg']);
  });

  it('leaves every old file as it was when one of them cannot be written', async () => {
    await writeFile(path.join(folder, 'a.svg'), 'old');
    // A name with a folder that does not exist cannot be opened.
    const failure = await failureOf(
      writeFiles(folder, [
        { name: 'a.svg', content: 'new' },
        { name: 'nowhere/b.json', content: '{}' },
      ]),
    );
    expect(failure.exitCode).toBe(exitCodes.cannotReadOrWrite);
    expect(await readFile(path.join(folder, 'a.svg'), 'utf8')).toBe('old');
    expect(await readdir(folder)).toEqual(['a.svg']);
  });

  it('answers, and does not hang, where the system allows no folder', async () => {
    // Under /proc a new folder is refused with “no such folder”, which a recursive mkdir retries for ever.
    const refused = existsSync('/proc/self') ? '/proc/loftseam/out' : '/dev/null/loftseam/out';
    const failure = await failureOf(writeFiles(refused, [{ name: 'a.svg', content: '' }]));
    expect(failure.exitCode).toBe(exitCodes.cannotReadOrWrite);
  });

  it('says so when a file stands in the place of the folder', async () => {
    await writeFile(path.join(folder, 'out'), 'a file');
    const failure = await failureOf(writeFiles(path.join(folder, 'out'), [{ name: 'a', content: '' }]));
    expect(failure.exitCode).toBe(exitCodes.cannotReadOrWrite);
    expect(failure.tell(commandWords)).toMatch(/out: a file is in the place of a folder\..*--out/);
    expect(await readFile(path.join(folder, 'out'), 'utf8')).toBe('a file');
  });

  it.each([
    ['EACCES', 'you have no permission there'],
    ['EROFS', 'it is on a read-only disk'],
    ['ENOSPC', 'the disk is full'],
  ])('puts %s in words', (code, words) => {
    expect(faultInWords(Object.assign(new Error(code), { code }), commandWords.refusals.files.why)).toBe(
      words,
    );
  });

  it('cleans up when the place of a file is a folder', async () => {
    await mkdir(path.join(folder, 'a.svg'));
    await failureOf(writeFiles(folder, [{ name: 'a.svg', content: 'new' }]));
    expect(await readdir(folder)).toEqual(['a.svg']);
  });
});

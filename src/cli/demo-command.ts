import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseProject } from '../core/project/index.ts';
import type { CommandStreams } from './command-streams.ts';
import type { Reader } from './create-reader.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { formatTable } from './format-table.ts';
import { writeFiles } from './write-files.ts';

const demoFolder = fileURLToPath(new URL('../../shared/demos/', import.meta.url));
const extension = '.loftseam.json';

/** Writes one demo project into a folder, or lists them. Does not write over a file unless told to. */
export async function demoCommand(
  name: string | undefined,
  options: { readonly out: string; readonly replace?: boolean },
  { stdout }: CommandStreams,
  { words }: Reader,
): Promise<number> {
  const names = (await readdir(demoFolder))
    .filter((file) => file.endsWith(extension))
    .map((file) => file.slice(0, -extension.length))
    .sort();
  if (name === undefined) {
    const rows = await Promise.all(
      names.map(async (id) => [id, (await titleOf(id)) ?? words.demo.unreadable]),
    );
    stdout.write(`${formatTable([{ title: words.demo.demo }, { title: words.demo.who }], rows)}\n`);
    return exitCodes.fine;
  }
  if (!names.includes(name)) {
    throw new CommandFailure(exitCodes.usage, ({ refusals }) =>
      refusals.files.noDemo(name, names.join(', ')),
    );
  }
  const file = `${name}${extension}`;
  if (options.replace !== true && existsSync(path.join(options.out, file))) {
    throw new CommandFailure(exitCodes.cannotReadOrWrite, ({ refusals }) =>
      refusals.files.isThere(path.join(options.out, file)),
    );
  }
  const [written] = await writeFiles(options.out, [{ name: file, content: await readFile(pathOf(name)) }]);
  stdout.write(`${written}\n`);
  return exitCodes.fine;
}

async function titleOf(name: string): Promise<string | undefined> {
  const project = parseProject(await readFile(pathOf(name), 'utf8'));
  return project.ok ? project.value.name : undefined;
}

function pathOf(name: string): string {
  return path.join(demoFolder, `${name}${extension}`);
}

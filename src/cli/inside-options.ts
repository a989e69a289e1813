import { type Command, InvalidArgumentError } from 'commander';
import { parseLength, type Result } from '../core/base/index.ts';
import { type Project, parseProject } from '../core/project/index.ts';
import type { Reader } from './create-reader.ts';
import { reading } from './read-arguments.ts';

/** Values of the file's `inside` section by key; a dot leads into a part of it: `testTube.measure1`. */
export type InsideChanges = Readonly<Record<string, number | boolean | string>>;

export interface InsideCommandOptions {
  readonly inside?: InsideChanges;
}

export function addInsideOption(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  command.option(`--inside <${values.list}>`, words.inside, reading(readInside, reader));
}

function readInside(text: string, { words }: Reader): InsideChanges {
  return Object.fromEntries(
    text.split(',').map((part) => {
      const pair = /^\s*([A-Za-z]\w*(?:\.\w+)?)\s*=\s*(.+?)\s*$/.exec(part);
      if (!pair) throw new InvalidArgumentError(words.refusals.value.inside);
      return [pair[1], readValue(pair[2])] as const;
    }),
  );
}

/** A number, a length with its unit, yes or no, else a word; what fits the key is for the file's own check to say. */
function readValue(text: string): number | boolean | string {
  if (text === 'true' || text === 'false') return text === 'true';
  const number = Number(text);
  if (Number.isFinite(number)) return number;
  const length = /^[\d.,/ ]+[a-z"]+$/i.test(text) ? parseLength(text, 'mm') : undefined;
  return length?.ok ? length.value : text;
}

/** The project with the changes, judged as a file with them would be: unknown keys and values out of range are named. */
export function withInside(project: Project, { inside }: InsideCommandOptions): Result<Project> {
  if (!inside) return { ok: true, value: project, issues: [] };
  const changed: Record<string, unknown> = { ...project.inside };
  for (const [key, value] of Object.entries(inside)) {
    const [section, part] = key.split('.');
    changed[section] = part === undefined ? value : { ...(changed[section] as object), [part]: value };
  }
  return parseProject({ ...project, inside: changed });
}

import { InvalidArgumentError } from 'commander';
import { parseLength } from '../core/base/index.ts';
import { EXPORT_FORMATS } from '../core/files/index.ts';
import { ALLOWANCE_LIMITS, GRAIN_TURN, PATTERN_OPTIONS } from '../core/pattern/index.ts';
import { MATS, PAPERS, PROJECTED_LENGTH, type ProjectedSquare } from '../core/sheet/index.ts';
import { LANGUAGE_NAMES, LANGUAGES, type Language } from '../language/index.ts';
import type { Reader } from './create-reader.ts';

/** Reads what was typed after an option. Throws `InvalidArgumentError` that says in the reader's words what it must be. */
type ReadArgument<T> = (text: string, reader: Reader) => T;

/** As an option takes it. */
export function reading<T>(read: ReadArgument<T>, reader: Reader): (text: string) => T {
  return (text) => read(text, reader);
}

interface Limits {
  readonly min: number;
  readonly max: number;
}

/** What the command line alone asks for. */
export const triangleLimits = { min: 500, max: 200_000 } as const;
const strainLimits = { min: 0.2, max: 20 } as const;
const panelLimits = { min: 4, max: 60 } as const;
const zoneLimits = { min: 1, max: 20 } as const;
/** A turned grain is given in degrees here. */
const grainDegrees = { min: degreesOf(GRAIN_TURN.min), max: degreesOf(GRAIN_TURN.max) };

/** Ids of papers, and of mats for cutting machines. */
export const paperIds = PAPERS.map(({ id }) => id);
export const matIds = MATS.map(({ id }) => id).join(', ');

/** `en (English), de (Deutsch)`. */
export const knownLanguages = LANGUAGES.map((id) => `${id} (${LANGUAGE_NAMES[id]})`).join(', ');

/** The language of an id, small letters or capitals. */
export function findLanguage(text: string): Language | undefined {
  return LANGUAGES.find((id) => id === text.toLowerCase());
}

export const readLanguage: ReadArgument<Language> = (text, { words }) => {
  const language = findLanguage(text);
  if (language !== undefined) return language;
  throw new InvalidArgumentError(words.refusals.value.language(text, knownLanguages));
};

export const readPercent: ReadArgument<number> = (text, reader) => {
  const percent = Number(text);
  if (isWithin(percent, strainLimits)) return percent;
  throw new InvalidArgumentError(reader.words.refusals.value.perCent(limitsInWords(strainLimits, reader)));
};

export const readPanels: ReadArgument<number> = (text, reader) => readWhole(text, panelLimits, reader);

export const readZones: ReadArgument<number> = (text, reader) => readWhole(text, zoneLimits, reader);

export const readTriangles: ReadArgument<number> = (text, reader) =>
  readWhole(/^\d+$/.test(text) ? text : '', triangleLimits, reader);

function readWhole(text: string, limits: Limits, reader: Reader): number {
  const count = Number(text);
  if (Number.isInteger(count) && isWithin(count, limits)) return count;
  throw new InvalidArgumentError(reader.words.refusals.value.whole(limitsInWords(limits, reader)));
}

/** The allowance of everything that has none of its own, seams among it. */
export const readSeamAllowance: ReadArgument<number> = (text, reader) =>
  readAllowance(text, ALLOWANCE_LIMITS.smallest, reader);

function readAllowance(text: string, min: number, reader: Reader): number {
  const { max } = PATTERN_OPTIONS.allowance;
  const length = parseLength(text, 'mm');
  if (length.ok && isWithin(length.value, { min, max })) return length.value;
  const { smallest, largest } = ALLOWANCE_LIMITS;
  const range = limitsInWords({ min: smallest, max: largest }, reader);
  throw new InvalidArgumentError(reader.words.refusals.value.allowance(range));
}

export const readAllowances: ReadArgument<Record<string, number>> = (text, reader) => {
  const allowances: Record<string, number> = {};
  for (const part of text.split(',')) {
    const pair = /^\s*([^=]+?)\s*=\s*(.+)$/.exec(part);
    if (!pair) throw new InvalidArgumentError(reader.words.refusals.value.allowances);
    allowances[pair[1]] = readAllowance(pair[2], PATTERN_OPTIONS.allowance.min, reader);
  }
  return allowances;
};

/** Degrees by panel id; given back in radians. */
export const readGrains: ReadArgument<Record<string, number>> = (text, reader) =>
  Object.fromEntries(
    text.split(',').map((part) => {
      const pair = /^\s*(\w+)\s*=\s*([+-]?\d+(?:\.\d+)?)\s*$/.exec(part);
      const radians = (Number(pair?.[2]) * Math.PI) / 180;
      if (!pair || !isWithin(radians, GRAIN_TURN))
        throw new InvalidArgumentError(
          reader.words.refusals.value.grains(limitsInWords(grainDegrees, reader)),
        );
      return [pair[1], radians] as const;
    }),
  );

/** More than nothing, mm. */
export const readLength: ReadArgument<number> = (text, { words }) => {
  const length = parseLength(text, 'mm');
  if (length.ok && length.value > 0) return length.value;
  throw new InvalidArgumentError(words.refusals.value.lengthAboveZero);
};

/** May be nothing, mm. */
export const readMargin: ReadArgument<number> = (text, { words }) => {
  const length = parseLength(text, 'mm');
  if (length.ok && length.value >= 0) return length.value;
  throw new InvalidArgumentError(words.refusals.value.length);
};

/** The four sides of the projected square and its diagonal, in this order, mm. */
export const readProjectedSquare: ReadArgument<ProjectedSquare> = (text, reader) => {
  const lengths = text.split(',').map((part) => {
    const length = parseLength(part, 'mm');
    return length.ok ? Number(length.value) : Number.NaN;
  });
  if (lengths.length !== 5 || !lengths.every((length) => isWithin(length, PROJECTED_LENGTH))) {
    const range = limitsInWords(PROJECTED_LENGTH, reader);
    throw new InvalidArgumentError(reader.words.refusals.value.projectedSquare(range));
  }
  const [top, right, bottom, left, diagonal] = lengths;
  return { top, right, bottom, left, diagonal };
};

export const readPapers: ReadArgument<string[]> = (text, { words }) =>
  readList(text, paperIds, words.refusals.value.paper);

export const readFormats: ReadArgument<string[]> = (text, { words }) =>
  readList(text, EXPORT_FORMATS, words.refusals.value.format);

function readList(
  text: string,
  known: readonly string[],
  refuse: (unknown: readonly string[], known: string) => string,
): string[] {
  const names = text
    .toLowerCase()
    .split(',')
    .map((name) => name.trim());
  const unknown = names.filter((name) => !known.includes(name));
  if (unknown.length === 0) return [...new Set(names)];
  throw new InvalidArgumentError(refuse(unknown, known.join(', ')));
}

/** One of a few words. */
export function readChoice<Choice extends string>(choices: readonly Choice[]): ReadArgument<Choice> {
  return (text, { words }) => {
    const chosen = choices.find((choice) => choice === text);
    if (chosen !== undefined) return chosen;
    throw new InvalidArgumentError(words.refusals.value.choice(choices.join(', ')));
  };
}

export const readScale: ReadArgument<number> = (text, { words }) => {
  const scale = Number(text.replace(/^1\s*:\s*/, ''));
  if (Number.isFinite(scale) && scale > 0) return scale;
  throw new InvalidArgumentError(words.refusals.value.scale);
};

export const readMat: ReadArgument<{ width: number; height: number }> = (text, { words }) => {
  const mat = MATS.find(({ id }) => id === text.toLowerCase());
  if (mat) return { width: mat.width, height: mat.height ?? mat.width };
  const size = /^(\d+(?:\.\d+)?)[x×](\d+(?:\.\d+)?)$/i.exec(text);
  if (size) return { width: Number(size[1]), height: Number(size[2]) };
  throw new InvalidArgumentError(words.refusals.value.mat(matIds));
};

export const readColours: ReadArgument<Record<string, string>> = (text, { words }) => {
  const colours: Record<string, string> = {};
  for (const part of text.split(',')) {
    const pair = /^\s*([a-z]+)\s*=\s*(#[0-9a-f]{6}|none)\s*$/i.exec(part);
    if (!pair) throw new InvalidArgumentError(words.refusals.value.colours);
    colours[pair[1].toLowerCase()] = pair[2].toLowerCase();
  }
  return colours;
};

/** Both ends, as this reader writes numbers. */
export function limitsInWords({ min, max }: Limits, { words, numbers }: Reader): string {
  return words.range(numbers.mark(`${min}`), numbers.mark(`${max}`));
}

function isWithin(value: number, { min, max }: Limits): boolean {
  return value >= min && value <= max;
}

function degreesOf(radians: number): number {
  return (radians * 180) / Math.PI;
}

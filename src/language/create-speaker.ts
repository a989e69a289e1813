import {
  type DisplayUnit,
  formatBoth,
  formatDifference,
  formatLength,
  type Phrase,
  type Say,
} from '../core/base/index.ts';
import type { FirstCatalogue, Tongue } from './catalogue.ts';
import { nearInches } from './near-inches.ts';
import { createNumbers, formatFineInches, formatMass, formatSmall } from './numbers.ts';

/** Units of the reader: one system, or both as on printed pieces. */
export type ReaderUnits = DisplayUnit | 'both';

export interface SpeakerOptions {
  /** BCP 47, where numbers are written as this reader writes them; as a rule the catalogue's language alone. */
  readonly locale?: string;
  /** Default `both`. */
  readonly units?: ReaderUnits;
  /** What stands for an id that the catalogue does not have; as a rule the id itself. */
  readonly unsaid?: string;
}

type AnyEntry = string | ((values: object, tongue: Tongue) => string);

/** Says the core's phrases in one language and the reader's units. */
export function createSpeaker(catalogue: FirstCatalogue, options: SpeakerOptions = {}): Say {
  const { locale = catalogue.tag, units = 'both', unsaid } = options;
  const numbers = createNumbers(locale);
  const entries = catalogue.entries as unknown as Readonly<Record<string, AnyEntry>>;
  const say = ({ id, values }: Phrase): string => {
    const entry = entries[id];
    if (entry === undefined) return unsaid ?? id;
    return typeof entry === 'string' ? entry : entry(values, tongue);
  };
  const inUnits = (format: (unit: DisplayUnit) => string) => numbers.mark(sayInUnits(units, format));
  const tongue: Tongue = {
    say,
    inSentence: (phrase) => catalogue.inSentence(say(phrase)),
    length: (mm) => numbers.mark(units === 'both' ? formatBoth(mm) : formatLength(mm, units)),
    difference: (mm) => numbers.mark(sayDifference(mm, units).replace('under', catalogue.under)),
    angle: (radians, decimals) => `${numbers.fixed((radians * 180) / Math.PI, decimals)}°`,
    around: (mm, spread) => numbers.mark(sayAround(mm, spread, units)),
    lengthAlone: (mm) => numbers.mark(formatLength(mm, units === 'both' ? 'cm' : units)),
    fineLength: (mm) => inUnits((unit) => formatLength(mm, unit, { fraction: 16 })),
    small: (mm) => inUnits((unit) => formatSmall(Math.abs(mm), unit)),
    exactLength: (mm) => numbers.mark(sayExactly(mm, units)),
    mass: (kg) => inUnits((unit) => formatMass(kg, unit)),
    percent: numbers.percent,
    fixed: numbers.fixed,
    plain: numbers.plain,
    exact: (value) => numbers.mark(String(value)),
    mark: numbers.mark,
  };
  return say;
}

/** A speaker for every reader's units. */
export function createSpeakers(
  catalogue: FirstCatalogue,
  locale: string = catalogue.tag,
  options: Pick<SpeakerOptions, 'unsaid'> = {},
): Readonly<Record<ReaderUnits, Say>> {
  const inUnits = (units: ReaderUnits): Say => createSpeaker(catalogue, { ...options, locale, units });
  return { both: inUnits('both'), cm: inUnits('cm'), in: inUnits('in') };
}

function sayInUnits(units: ReaderUnits, format: (unit: DisplayUnit) => string): string {
  return units === 'both' ? `${format('cm')} (${format('in')})` : format(units);
}

function sayDifference(mm: number, units: ReaderUnits): string {
  if (units === 'both') return formatDifference(mm);
  if (units === 'in') return formatFineInches(mm);
  return Math.abs(mm) < 10 ? `${Number((mm / 10).toFixed(2))} cm` : formatLength(mm, 'cm');
}

/** Inches only where they are a fraction of a tape: what is bought or cut by a length must be read as it is. */
function sayExactly(mm: number, units: ReaderUnits): string {
  const centimetres = `${Number((mm / 10).toFixed(3))} cm`;
  const { text, isExact } = nearInches(mm);
  if (units === 'cm' || (units === 'both' && !isExact)) return centimetres;
  if (units === 'both') return `${centimetres} (${text})`;
  return isExact ? text : `${Number(mm.toFixed(2))} mm`;
}

function sayAround(mm: number, spread: number, units: ReaderUnits): string {
  if (units === 'both') return `${sayAround(mm, spread, 'cm')} (${sayAround(mm, spread, 'in')})`;
  const give = units === 'in' ? formatFineInches(spread, 8) : formatLength(spread, units);
  return `${formatLength(mm, units, { bare: true })} ± ${give}`;
}

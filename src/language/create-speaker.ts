import {
  type DisplayUnit,
  formatBoth,
  formatDifference,
  formatLength,
  mmPerInch,
  type Phrase,
  type Say,
} from '../core/base/index.ts';
import type { Catalogue, Tongue } from './catalogue.ts';
import { createNumbers, formatMass } from './numbers.ts';

/** Units of the reader: one system, or both as on printed pieces. */
export type ReaderUnits = DisplayUnit | 'both';

export interface SpeakerOptions {
  /** BCP 47, where numbers are written as this reader writes them; as a rule the catalogue's language alone. */
  readonly locale?: string;
  /** Default `both`. */
  readonly units?: ReaderUnits;
}

type AnyEntry = string | ((values: object, tongue: Tongue) => string);

/** Says the core's phrases in one language and the reader's units. An id that no catalogue has is said as it is. */
export function createSpeaker(catalogue: Catalogue, options: SpeakerOptions = {}): Say {
  const { locale = catalogue.tag, units = 'both' } = options;
  const numbers = createNumbers(locale);
  const entries = catalogue.entries as unknown as Readonly<Record<string, AnyEntry>>;
  const say = ({ id, values }: Phrase): string => {
    const entry = entries[id];
    if (entry === undefined) return id;
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
  catalogue: Catalogue,
  locale: string = catalogue.tag,
): Readonly<Record<ReaderUnits, Say>> {
  const inUnits = (units: ReaderUnits): Say => createSpeaker(catalogue, { locale, units });
  return { both: inUnits('both'), cm: inUnits('cm'), in: inUnits('in') };
}

function sayInUnits(units: ReaderUnits, format: (unit: DisplayUnit) => string): string {
  return units === 'both' ? `${format('cm')} (${format('in')})` : format(units);
}

/** Millimetres, or sixteenths of an inch. */
function formatSmall(mm: number, unit: DisplayUnit): string {
  return unit === 'in' ? formatFineInches(mm) : `${mm.toFixed(mm < 9.95 ? 1 : 0)} mm`;
}

function sayDifference(mm: number, units: ReaderUnits): string {
  if (units === 'both') return formatDifference(mm);
  if (units === 'in') return formatFineInches(mm);
  return Math.abs(mm) < 10 ? `${Number(mm.toFixed(1))} mm` : formatLength(mm, 'cm');
}

function sayAround(mm: number, spread: number, units: ReaderUnits): string {
  if (units === 'both') return `${sayAround(mm, spread, 'cm')} (${sayAround(mm, spread, 'in')})`;
  const give = units === 'in' ? formatFineInches(spread, 8) : formatLength(spread, units);
  return `${formatLength(mm, units, { bare: true })} ± ${give}`;
}

/** Inches to a fraction of a tape; what would be none of it, in decimals, so that no limit is told as nothing. */
function formatFineInches(mm: number, fraction: 8 | 16 = 16): string {
  const text = formatLength(mm, 'in', { fraction });
  if (mm === 0 || /[1-9]/.test(text)) return text;
  const inches = mm / mmPerInch;
  return `${inches.toFixed(Math.abs(inches) < 0.005 ? 3 : 2)} in`;
}

import { type Mm, mm } from './brand.ts';
import type { DisplayUnit, LengthUnit } from './length-unit.ts';
import { phrase } from './phrases.ts';
import { failure, type Result, success } from './result.ts';

/** The international inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const mmPerInch = 25.4;
/** The avoirdupois pound, of 16 ounces, and the yard, exact by the same agreement. */
export const kgPerPound = 0.45359237;
export const metresPerYard = 0.9144;
const mmPer: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, in: mmPerInch };

const unitWords: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  cm: 'cm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  "''": 'in',
};

/** Vulgar fractions of a tape measure; Unicode blocks Latin-1 Supplement and Number Forms. */
const fractionCharacters: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const lengthPattern =
  /^([+-]?)(?:(\d+)(?: +|-)(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:[.,]\d*)?|[.,]\d+)) *([^\d\s]*)$/u;

/**
 * Reads a length as people type it: `92,5`, `92.5 cm`, `36 3/8`, `36-3/8"`, `7/8 in`, `36⅜`. A number without a unit
 * is in `unit`. A comma or a point is the decimal mark; thousands are not separated, so `1,200` is one and a fifth.
 * Fails with `length-not-understood`.
 */
export function parseLength(text: string, unit: LengthUnit): Result<Mm> {
  const plain = text
    .trim()
    .replace(/[½¼¾⅛⅜⅝⅞]/gu, (c) => ` ${fractionCharacters[c]}`)
    .replace(/[⁄∕]/gu, '/')
    .replace(/−/gu, '-')
    .replace(/^([+-]?) +/u, '$1');
  const found = lengthPattern.exec(plain);
  if (!found) return notUnderstood(text, unit);
  const [, sign, whole, over, under, soloOver, soloUnder, decimal, word] = found;
  const given = word === '' ? unit : unitWords[word.toLowerCase()];
  const divisor = Number(under ?? soloUnder ?? 1);
  if (given === undefined || divisor === 0) return notUnderstood(text, unit);
  const fraction = Number(over ?? soloOver ?? 0) / divisor;
  const amount = Number((decimal ?? '0').replace(',', '.')) + Number(whole ?? 0) + fraction;
  const value = (sign === '-' ? -amount : amount) * mmPer[given];
  return Number.isFinite(value) ? success(mm(value)) : notUnderstood(text, unit);
}

function notUnderstood(text: string, unit: LengthUnit): Result<Mm> {
  const typed = text.trim();
  const message =
    typed === ''
      ? phrase('length.nothing-typed', { unit })
      : phrase('length.not-understood', { typed, unit });
  return failure([{ code: 'length-not-understood', path: '', message, severity: 'error' }]);
}

export interface LengthFormat {
  /** Inches to the nearest 1/8 (default) or 1/16. */
  readonly fraction?: 8 | 16;
  /** Decimals of centimetres; default 1, that is whole millimetres. */
  readonly decimals?: number;
  /** Leave the unit out, as in a field that says it already. */
  readonly bare?: boolean;
}

/**
 * Shows a length in centimetres (`92.5 cm`) or inches with a fraction in lowest terms (`36 3/8 in`). Rounds half away
 * from zero. Rounding is for the eye: keep the millimetres for computing.
 */
export function formatLength(length: number, unit: DisplayUnit, format: LengthFormat = {}): string {
  if (!Number.isFinite(length)) return '–';
  const sign = length < 0 ? '-' : '';
  const size = Math.abs(length);
  const text =
    unit === 'in'
      ? inchesWithFraction(size / mmPerInch, format.fraction ?? 8)
      : fixed(size / 10, format.decimals ?? 1);
  const signed = /[1-9]/.test(text) ? sign + text : text;
  return format.bare === true ? signed : `${signed} ${unit}`;
}

/** Both systems, as printed on pieces: `92.5 cm (36 3/8 in)`. */
export function formatBoth(length: number): string {
  return `${formatLength(length, 'cm')} (${formatLength(length, 'in')})`;
}

/** A difference in both systems: below a centimetre in tenths of a millimetre and sixteenths, `0.32 cm (1/8 in)`, else as `formatBoth`. */
export function formatDifference(length: number): string {
  if (Math.abs(length) >= 10) return formatBoth(length);
  const inches = formatLength(length, 'in', { fraction: 16 });
  const isLost = length !== 0 && !/[1-9]/.test(inches);
  return `${Number((length / 10).toFixed(2))} cm (${isLost ? 'under 1/16 in' : inches})`;
}

function inchesWithFraction(inches: number, parts: 8 | 16): string {
  const steps = Math.round(inches * parts + 1e-9);
  const whole = Math.floor(steps / parts);
  let over = steps % parts;
  let under: number = parts;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return `${whole}`;
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}

/** Decimal text, half away from zero also where binary falls a hair short of the half (1.005 × 100). */
function fixed(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  return (Math.round(value * scale + 1e-9) / scale).toFixed(decimals);
}

import {
  type DisplayUnit,
  formatLength,
  kgPerPound,
  type LengthFormat,
  metresPerYard,
  mmPerInch,
} from '../core/base/index.ts';

/** Numbers as they are written in one place of the world. Lengths are given in mm and strains as fractions. */
export interface Numbers {
  /** BCP 47. */
  readonly locale: string;
  /** A text of ours with a point in its numbers, with the decimal mark of the place. */
  mark(text: string): string;
  length(mm: number, unit: DisplayUnit, format?: LengthFormat): string;
  /** With its sign, true minus included. */
  signedLength(mm: number, unit: DisplayUnit, format?: LengthFormat): string;
  /** Seam lengths are compared to a tenth of a millimetre, so they are shown in more detail than tapes. */
  fineLength(mm: number, unit: DisplayUnit): string;
  /** How little something is off, or how fine: `0.35 cm`, `1.2 cm`, or to the sixteenth of an inch. Without its sign. */
  small(mm: number, unit: DisplayUnit): string;
  /** kg or g; pounds or ounces beside inches. */
  mass(kg: number, unit: DisplayUnit): string;
  /** Of one piece, given in mm²: cm² or square inches. */
  area(mm2: number, unit: DisplayUnit): string;
  /** To buy or to cover, given in m²: m² or square yards. */
  clothArea(m2: number, unit: DisplayUnit, decimals?: number): string;
  /** Thread and cord, given in m: metres or yards. */
  longLength(metres: number, unit: DisplayUnit): string;
  /** A fraction as a percentage, `1.2 %`. */
  percent(fraction: number, decimals?: number): string;
  signedPercent(fraction: number, decimals?: number): string;
  fixed(value: number, decimals: number): string;
  /** Only the decimals it has. */
  plain(value: number, mostDecimals: number): string;
  /** A whole number, thousands set apart. */
  count(value: number): string;
  /** A day of the calendar, `2026-03-04`; other text stays as it is. */
  day(iso: string): string;
  /** A day and time, milliseconds since 1970. */
  time(at: number): string;
}

/** How numbers are written under `locale`, a tag of BCP 47, by the browser's own tables (ECMA-402). */
export function createNumbers(locale: string): Numbers {
  const parts = new Intl.NumberFormat(locale).formatToParts(1.5);
  const decimal = parts.find(({ type }) => type === 'decimal')?.value ?? '.';
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  const times = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
  // Rounding stays with the core, so that the app shows the same digits as files and command line.
  const mark = (text: string) => text.replace(/(\d)\.(?=\d)/g, `$1${decimal}`);
  const fixed = (value: number, decimals: number) => mark(value.toFixed(decimals));
  const length: Numbers['length'] = (mm, unit, format = {}) => mark(formatLength(mm, unit, format));
  return {
    locale,
    mark,
    length,
    fixed,
    signedLength(mm, unit, format = {}) {
      const text = length(Math.abs(mm), unit, format);
      if (!/[1-9]/.test(text)) return `0 ${unit}`;
      return `${mm < 0 ? '−' : '+'}${text}`;
    },
    fineLength: (mm, unit) => (unit === 'cm' ? `${fixed(mm / 10, 2)} cm` : `${fixed(mm / 25.4, 3)} in`),
    small: (mm, unit) => mark(formatSmall(Math.abs(mm), unit)),
    mass: (kg, unit) => mark(formatMass(kg, unit)),
    area: (mm2, unit) =>
      unit === 'cm' ? `${fixed(mm2 / 100, 0)} cm²` : `${fixed(mm2 / mmPerInch ** 2, 0)} in²`,
    clothArea: (m2, unit, decimals = 2) =>
      unit === 'cm' ? `${fixed(m2, decimals)} m²` : `${fixed(m2 / metresPerYard ** 2, decimals)} yd²`,
    longLength: (metres, unit) =>
      unit === 'cm' ? `${fixed(metres, 0)} m` : `${fixed(metres / metresPerYard, 0)} yd`,
    percent: (fraction, decimals = 1) =>
      Number.isFinite(fraction) ? `${fixed(fraction * 100, decimals)} %` : '–',
    signedPercent(fraction, decimals = 1) {
      if (!Number.isFinite(fraction)) return '–';
      const text = Math.abs(fraction * 100).toFixed(decimals);
      if (Number(text) === 0) return `${mark(text)} %`;
      return `${fraction < 0 ? '−' : '+'}${mark(text)} %`;
    },
    plain: (value, mostDecimals) => mark(`${Number(value.toFixed(mostDecimals))}`),
    count: (value) => whole.format(value),
    day(iso) {
      const at = /^\d{4}-\d\d-\d\d$/.test(iso) ? Date.parse(`${iso}T00:00Z`) : Number.NaN;
      return Number.isNaN(at) ? iso : days.format(at);
    },
    time: (at) => times.format(at),
  };
}

/** Kilograms, below one grams; beside inches pounds, below one ounces. */
export function formatMass(kg: number, unit: DisplayUnit): string {
  const amount = unit === 'in' ? kg / kgPerPound : kg;
  if (amount < 1) return unit === 'in' ? `${(16 * amount).toFixed(1)} oz` : `${(1000 * amount).toFixed(0)} g`;
  return `${amount.toFixed(amount < 10 ? 2 : 1)} ${unit === 'in' ? 'lb' : 'kg'}`;
}

/** Centimetres to a tenth of a millimetre or, from one on, to a whole one; or sixteenths of an inch. */
export function formatSmall(mm: number, unit: DisplayUnit): string {
  return unit === 'in' ? formatFineInches(mm) : `${Number((mm / 10).toFixed(mm < 9.95 ? 2 : 1))} cm`;
}

/** Inches to a fraction of a tape; what would be none of it, in decimals, so that no limit is told as nothing. */
export function formatFineInches(mm: number, fraction: 8 | 16 = 16): string {
  const text = formatLength(mm, 'in', { fraction });
  if (mm === 0 || /[1-9]/.test(text)) return text;
  const inches = mm / mmPerInch;
  return `${inches.toFixed(Math.abs(inches) < 0.005 ? 3 : 2)} in`;
}

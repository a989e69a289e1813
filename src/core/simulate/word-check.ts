import { type DisplayUnit, formatLength } from '../base/index.ts';
import { formatMass } from './word-correction.ts';

interface Checkable {
  readonly unit: 'mm' | 'kg' | 'degrees' | 'pieces';
  readonly value: number;
  readonly below: number | null;
  readonly above: number | null;
}

/** Value and limits of something to measure, in the maker's units: `92.5 cm, −0 / +5 mm`, `180 g to 290 g`. */
export function wordCheck({ unit: kind, value, below, above }: Checkable, unit: DisplayUnit): string {
  const say = (amount: number): string => {
    if (kind === 'mm') return formatLength(amount, unit, unit === 'in' ? { fraction: 16 } : {});
    if (kind === 'kg') return formatMass(amount, unit);
    return kind === 'degrees' ? `${amount.toFixed(1)}°` : `${amount}`;
  };
  // A range reads more easily than a middle with limits.
  if (kind === 'kg' && below && above) return `${say(value - below)} to ${say(value + above)}`;
  if (!below && !above) return say(value);
  const limit = (amount: number): string => (kind === 'mm' && unit === 'cm' ? `${amount} mm` : say(amount));
  if (below === above) return `${say(value)} ± ${limit(above ?? 0)}`;
  return `${say(value)}, −${below ? limit(below) : 0} / +${limit(above ?? 0)}`;
}

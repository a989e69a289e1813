import type { Tongue } from './catalogue.ts';
import { nearInches } from './near-inches.ts';

/**
 * An allowance as it is set on a machine or drawn along a ruler: a fraction of an inch where it is one exactly, `3/8 in (9.5 mm)`, else in
 * millimetres alone, for a fraction that is nearly it would be drawn wrong.
 */
export function allowanceInWords(mm: number, { plain }: Pick<Tongue, 'plain'>): string {
  const { text, isExact } = nearInches(mm);
  return isExact ? `${text} (${plain(mm, 1)} mm)` : `${plain(mm, 2)} mm`;
}

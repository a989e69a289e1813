import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';

interface Checkable {
  readonly unit: 'mm' | 'kg' | 'degrees' | 'pieces';
  readonly value: number;
  readonly below: number | null;
  readonly above: number | null;
}

/** Value and limits of something to measure: `92.5 cm, −0 / +5 mm`, `180 g to 290 g`. */
export function wordCheck({ unit, value, below, above }: Checkable): Phrase {
  return phrase('check.value', { unit, value, below, above });
}

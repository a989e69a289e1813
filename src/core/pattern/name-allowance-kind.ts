import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';
import type { AllowanceKind } from './usual-allowances.ts';

/** The edges of a kind in words, with a capital. */
export function nameOfAllowanceKind(kind: AllowanceKind): Phrase {
  return phrase(`allowance.${kind}`);
}

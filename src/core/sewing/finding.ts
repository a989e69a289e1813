import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';
import type { OrderRule } from './types.ts';

/** What is wrong with one thing done, without its step. */
export interface Finding {
  readonly rule: OrderRule;
  readonly reason: Phrase;
}

/** How things are called. */
export type NameOf = (id: string) => Phrase;

export function partMissing(id: string, name: NameOf): Finding {
  return { rule: 'part-missing', reason: phrase('sewing.part-missing', { part: name(id) }) };
}

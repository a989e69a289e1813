import type { LengthUnit } from './length-unit.ts';
import { type Phrase, phrasesOf } from './phrase.ts';

/** What this room says, and what is put in. */
export interface BasePhrases {
  /** Words that are nobody's to translate: the maker's own names, letters of seams. */
  readonly verbatim: { readonly text: string };
  /** `unit`: in which a bare number would have been read. */
  readonly 'length.not-understood': { readonly typed: string; readonly unit: LengthUnit };
  readonly 'length.nothing-typed': { readonly unit: LengthUnit };
}

export const phrase = phrasesOf<BasePhrases>();

/** What the maker typed, or a mark such as a letter, said as it is in every language. */
export function verbatim(text: string): Phrase {
  return phrase('verbatim', { text });
}

import { type NoValues, type Phrase, phrasesOf } from '../core/base/index.ts';

/** What stands round the steps of an order of work as plain text. Lengths in mm. */
export interface PlanPhrases {
  readonly 'plan.title': { readonly project: string };
  readonly 'plan.optional': NoValues;
  /** Numbers of the steps to be done before. */
  readonly 'plan.after': { readonly steps: readonly number[] };
  readonly 'plan.pieces': { readonly pieces: readonly Phrase[] };
  /** What stands before a seam and before a check; eight letters at most. */
  readonly 'plan.seam': { readonly letter: string };
  readonly 'plan.check': NoValues;
  readonly 'plan.seam-words': {
    readonly seam: Phrase;
    readonly lengths: readonly number[];
    readonly marks: number;
    readonly closesRing: boolean;
    readonly note?: Phrase;
  };
  readonly 'plan.check-words': { readonly check: Phrase; readonly value: Phrase };
  readonly 'plan.caution': { readonly text: Phrase };
}

export const phrase = phrasesOf<PlanPhrases>();

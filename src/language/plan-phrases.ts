import { type NoValues, type Phrase, phrasesOf } from '../core/base/index.ts';

/** What stands round the steps of an order of work as plain text. Lengths in mm. */
export interface PlanPhrases {
  readonly 'plan.title': { readonly project: string };
  /** What stands before a seam and before a check; eight letters at most. */
  readonly 'plan.seam': { readonly letter: string };
  readonly 'plan.check': NoValues;
  readonly 'plan.caution': { readonly text: Phrase };
}

export const phrase = phrasesOf<PlanPhrases>();

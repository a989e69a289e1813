import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';

/** What this room says, and what is put in. */
export type PipelinePhrases = {
  /** What is being done, while it is. */
  readonly [Stage in
    | 'tape'
    | 'body'
    | 'seams'
    | 'panels'
    | 'inside'
    | 'filling'
    | 'cutting'
    | 'laying' as `pipeline.${Stage}`]: NoValues;
} & {
  readonly 'pipeline.done': NoValues;
  readonly 'pipeline.cancelled': NoValues;
  readonly 'pipeline.not-fitted': { readonly reasons: readonly Phrase[] };
  /** A defect of ours; `reason` is for whoever mends it, and in English. */
  readonly 'pipeline.broken-promise': { readonly reason: string };
  readonly 'pipeline.defect': { readonly reason: string };
};

export const phrase = phrasesOf<PipelinePhrases>();

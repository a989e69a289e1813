import { type Phrase, phrasesOf } from '../base/index.ts';
import type { Figure } from '../body/index.ts';

/** What the drafting of a whole form says, and what is put in. */
export interface DraftPhrases {
  /** The girth by which forms are told apart, mm; absent = not known yet. */
  readonly 'form.body': { readonly figure: Figure; readonly girth?: number };
  /** An edge given an allowance of its own that no piece has. */
  readonly 'cloth.unknown-edge': { readonly edge: string; readonly known: readonly string[] };
  /** A usual allowance that has no room on a piece; `allowance` is what all edges of the kind have instead. */
  readonly 'cloth.usual-allowance-withdrawn': {
    readonly edges: Phrase;
    readonly piece: Phrase;
    readonly allowance: number;
  };
  /** A line to which something is sewn that bears the letter. */
  readonly 'piece.lettered-line': { readonly letter: string; readonly line: Phrase };
}

export const phrase = phrasesOf<DraftPhrases>();

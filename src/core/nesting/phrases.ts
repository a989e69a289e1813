import { phrasesOf } from '../base/index.ts';

interface OfItem {
  /** Its id. */
  readonly item: string;
}

/** What is wrong with what is to be laid, or with what it is to be laid on; lengths in mm, areas in mm². Sheets count from 1. */
export interface NestingPhrases {
  readonly 'nesting.item-not-finite': OfItem;
  readonly 'nesting.item-crosses-itself': OfItem;
  readonly 'nesting.item-without-turn': OfItem;
  readonly 'nesting.strip-without-width': { readonly width: number };
  readonly 'nesting.gap-negative': { readonly gap: number };
  readonly 'nesting.sheet-not-finite': { readonly sheet: number };
  readonly 'nesting.sheet-crosses-itself': { readonly sheet: number };
  readonly 'nesting.flaw-not-finite': { readonly flaw: number };
  /** The least width that would do, in the turns allowed. */
  readonly 'nesting.item-too-wide': OfItem & { readonly needed: number; readonly width: number };
  /** Length and height it needs in the turn that comes nearest to fitting. */
  readonly 'nesting.item-too-large': OfItem & { readonly length: number; readonly height: number };
  /** Items that found no place, and the least further area that would do. */
  readonly 'nesting.no-room': { readonly items: readonly string[]; readonly area: number };
}

export const phrase = phrasesOf<NestingPhrases>();

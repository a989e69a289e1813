import { type NoValues, phrasesOf } from '../base/index.ts';

/** Parts of a booklet in their order. */
export type BookletPart = 'buy' | 'lays' | 'work' | 'readings';

/** Pages as large as the pattern's paper, pages of A5, or two on a side of the pattern's paper, in the order for folding. */
export type BookletKind = 'same' | 'a5' | 'folded';

/** What stands in a booklet beside the order of work itself. */
export interface BookletPhrases {
  readonly 'booklet.title': { readonly project: string };
  readonly 'booklet.how': NoValues;
  /** How small pages are printed. */
  readonly 'booklet.print-how': { readonly kind: Exclude<BookletKind, 'same'> };
  /** A line of the contents. */
  readonly 'booklet.part': { readonly part: BookletPart; readonly page: number };
  readonly 'booklet.key-title': NoValues;
  readonly 'booklet.key': { readonly of: PictureKey };
  /** How the shell is drawn while it is sewn wrong side out. */
  readonly 'booklet.key-side': NoValues;
  readonly 'booklet.foot': { readonly project: string; readonly page: number; readonly pages: number };
  readonly 'booklet.readings': NoValues;
  /** How much a girth may be over, mm. */
  readonly 'booklet.readings-how': { readonly above: number };
  /** What is assumed until the tube is weighed, g a litre. */
  readonly 'booklet.zones-how': { readonly isAssumed: boolean; readonly low: number; readonly high: number };
  readonly 'booklet.column': { readonly of: BookletColumn };
  /** mm. */
  readonly 'booklet.length': { readonly length: number };
  /** What a zone takes, kg. */
  readonly 'booklet.mass': { readonly from: number; readonly to: number };
}

/** What the tints and lines of the pictures mean, in the order of their key. */
export const PICTURE_KEYS = ['right', 'wrong', 'web', 'bold', 'level', 'dotted'] as const;
export type PictureKey = (typeof PICTURE_KEYS)[number];

export type BookletColumn = 'level' | 'girth' | 'width' | 'depth' | 'read' | 'zone' | 'filling' | 'weighed';

export const phrase = phrasesOf<BookletPhrases>();

import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';

/** What this room says, and what is put in; lengths in mm. */
export interface GaugePhrases {
  readonly 'gauge.ring': { readonly level: Phrase };
  readonly 'gauge.profile': { readonly side: 'front' | 'back' };
  /** Where the middle of the form is at the tip of a half ring; `from`: how far the tip ends before it. */
  readonly 'gauge.tip': { readonly side: 'front' | 'back'; readonly from: number };
  /** Height over the base edge. */
  readonly 'gauge.hold-ring': { readonly level: Phrase; readonly height: number };
  readonly 'gauge.hold-profile': NoValues;
  readonly 'gauge.clearance': { readonly clearance: number };
  /** A level on the side view, over the base edge. */
  readonly 'gauge.height': { readonly level: Phrase; readonly height: number };
  readonly 'gauge.side-of-form': NoValues;
  /** Along the line that elsewhere is the grain. */
  readonly 'gauge.front-to-back': NoValues;
  readonly 'gauge.upright': NoValues;
  readonly 'gauge.unknown-level': { readonly name: string; readonly known: readonly string[] };
  readonly 'gauge.out-of-range': {
    readonly option: 'clearance' | 'strip';
    readonly value: number;
    readonly least: number;
    readonly most: number;
  };
  readonly 'gauge.level-open': { readonly level: Phrase };
  /** How to use them, in order. */
  readonly 'gauge.how.hold': NoValues;
  readonly 'gauge.how.wide': { readonly gap: number; readonly girth: number };
  readonly 'gauge.how.tight': NoValues;
  readonly 'gauge.how.uneven': NoValues;
  readonly 'gauge.how.side': NoValues;
}

export const phrase = phrasesOf<GaugePhrases>();

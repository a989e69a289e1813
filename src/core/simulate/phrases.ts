import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';

/** What to mend, as a title and what to do. mm, kg, fractions. */
interface Corrections {
  readonly 'correction.misread.title': { readonly level: Phrase };
  readonly 'correction.misread.text': {
    readonly girth: number;
    readonly least: number;
    readonly most: number;
    readonly again: 'girth' | 'width-and-depth';
  };
  readonly 'correction.growth.title': { readonly share: number };
  readonly 'correction.growth.text': { readonly growth: number };
  readonly 'correction.scale.title': { readonly share: number; readonly size: 'larger' | 'smaller' };
  readonly 'correction.scale.text': NoValues;
  readonly 'correction.take-out.title': { readonly level: Phrase; readonly by: number };
  readonly 'correction.take-out.text': Filling;
  readonly 'correction.put-in.title': { readonly level: Phrase; readonly by: number };
  readonly 'correction.put-in.text': Filling;
  /** Signed, positive too deep and too wide; absent where that is right. */
  readonly 'correction.shape.title': {
    readonly level: Phrase;
    readonly depth?: number;
    readonly width?: number;
  };
  readonly 'correction.shape.text': {
    readonly act: 'shorten' | 'lengthen';
    readonly ties: readonly { readonly name: Phrase; readonly by: number }[];
    /** By which width and depth change, with their signs. */
    readonly width: number;
    readonly depth: number;
  };
  readonly 'correction.shape.without-tie': NoValues;
  readonly 'correction.seam.title': {
    readonly level: Phrase;
    readonly by: number;
    readonly size: 'wide' | 'narrow';
  };
  readonly 'correction.seam.text': {
    readonly act: 'take-in' | 'let-out';
    readonly letters: readonly string[];
    readonly each: number;
    readonly isPossible: boolean;
    readonly isFilled: boolean;
  };
}

interface Filling {
  readonly mass: number;
  readonly zones: readonly Phrase[];
  /** The measure itself is in doubt. */
  readonly isMeasureDoubted: boolean;
}

/** What this room says, and what is put in. */
export interface SimulatePhrases extends Corrections {
  /** Down to a level, or to the base. */
  readonly 'zone.from-top': { readonly lower?: Phrase };
  readonly 'zone.between': { readonly upper: Phrase; readonly lower?: Phrase };
  /** Value and limits of something to measure, in its own unit; no limit: null. */
  readonly 'check.value': {
    readonly unit: 'mm' | 'kg' | 'degrees' | 'pieces';
    readonly value: number;
    readonly below: number | null;
    readonly above: number | null;
  };
}

export const phrase = phrasesOf<SimulatePhrases>();

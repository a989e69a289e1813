import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { ClothAxis } from '../flatten/index.ts';
import type { LevelSpread } from '../inside/index.ts';

/** Landmarks that words can lean on. */
export type PlaceMark =
  | 'bustPoint'
  | 'bladePoint'
  | 'armpit'
  | 'shoulderPoint'
  | 'neckSide'
  | 'neckFront'
  | 'neckBack';

/** A place where the cloth is asked for more than it takes; mm², strains as fractions without sign. */
interface OverLimit {
  readonly panel: Phrase;
  readonly place: Phrase;
  readonly area: number;
  readonly axis: ClothAxis;
  readonly strain: number;
  readonly limit: number;
  readonly advice: Phrase;
}

/** What this room says, and what is put in. mm. */
export interface FormPhrases {
  readonly 'zone.stretches': OverLimit;
  readonly 'zone.wrinkles': OverLimit;
  readonly 'zone.seam-ends-here': { readonly letter: string; readonly seam: Phrase };
  readonly 'zone.seam-nearby': {
    readonly letter: string;
    readonly seam: Phrase;
    readonly distance: number;
  };
  readonly 'zone.no-seam': NoValues;
  /** `rise` above it, `out` further out from the middle, both with sign; absent where too little to tell. */
  readonly 'place.by-mark': { readonly mark: PlaceMark; readonly rise?: number; readonly out?: number };
  /** `rise` above the level line, with sign. */
  readonly 'place.by-level': { readonly level: Phrase; readonly rise: number };
  readonly 'place.on-body': NoValues;
  readonly 'tube.alone': NoValues;
  /** A fraction. */
  readonly 'tube.measured': { readonly growth: number };
  readonly 'tube.skipped': { readonly levels: readonly LevelSpread[] };
  /** `strain`: 95 % of the cloth is strained less, a fraction. */
  readonly 'verdict.sound': { readonly strain: number };
  /** `places`: how many there are, mirror images left out. */
  readonly 'verdict.wrinkles': { readonly places: number };
  readonly 'verdict.pulls': { readonly places: number };
  readonly 'verdict.cannot': { readonly reason: Phrase };
  readonly 'verdict.folds': NoValues;
  readonly 'verdict.partners': { readonly letter: string; readonly gap: number };
  readonly 'verdict.at': { readonly panel: Phrase; readonly place: Phrase };
}

export const phrase = phrasesOf<FormPhrases>();

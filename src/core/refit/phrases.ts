import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';

type Half = 'front' | 'back';

/** What this room says, and what is put in; lengths in mm. */
export interface RefitPhrases {
  readonly 'pad.name': { readonly number: number; readonly half: Half; readonly layer: number };
  readonly 'pad.middle': { readonly half: Half };
  readonly 'pad.up': NoValues;
  /** Heights over the waist; how far it reaches from the middle to each side, negative where it ends before. */
  readonly 'pad.place': {
    readonly half: Half;
    readonly low: number;
    readonly high: number;
    readonly right: number;
    readonly left: number;
  };
  readonly 'pad.on-form': { readonly wadding: number };
  readonly 'pad.on-pad': { readonly wadding: number; readonly number: number };
  readonly 'refit.wadding-out-of-range': {
    readonly wadding: number;
    readonly least: number;
    readonly most: number;
  };
  readonly 'refit.pads': { readonly layers: number; readonly thickness: number };
  readonly 'refit.take-in': {
    readonly letters: readonly string[];
    readonly each: number;
    readonly girth: number;
  };
  readonly 'refit.stays-full': { readonly by: number };
  readonly 'refit.anew': {
    readonly why: 'too-thick' | 'too-much-to-take-in' | 'too-full';
    readonly measured: number;
    readonly limit: number;
  };
  readonly 'refit.nothing': NoValues;
  readonly 'refit.above': NoValues;
  readonly 'refit.verdict': { readonly isAnew: boolean };
  readonly 'refit.cover': { readonly project: string };
  readonly 'core.too-few': { readonly count: number };
  readonly 'core.name': { readonly names: readonly string[] };
  /** How far the core sticks out of which body, at most, and at which height over the waist. */
  readonly 'core.sticks-out': {
    readonly name: string;
    readonly by: number;
    readonly height: number;
    readonly limit: number;
    readonly isRefused: boolean;
  };
  /** Whether pads make the core serve that person. */
  readonly 'core.verdict': { readonly name: string; readonly isAnew: boolean };
  /** By how much the core is smaller than the smallest of all. */
  readonly 'core.smaller': {
    readonly tapes: readonly { readonly name: Phrase; readonly under: number }[];
  };
}

export const phrase = phrasesOf<RefitPhrases>();

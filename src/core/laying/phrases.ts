import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { MaterialLine } from '../inside/index.ts';
import type { UseId } from './uses.ts';

interface OfUse {
  readonly use: UseId;
}

/** What is wrong with what is laid on; lengths in mm. */
interface Faults {
  readonly 'laying.too-narrow': OfUse & {
    readonly piece: Phrase;
    readonly width: number;
    readonly needed: number;
  };
  /** For every sheet or piece of cloth there is; what it takes at least, along and across. */
  readonly 'laying.too-large': OfUse & {
    readonly piece: Phrase;
    readonly length: number;
    readonly width: number;
  };
  readonly 'laying.crosses-itself': OfUse & { readonly number: number };
  readonly 'laying.no-room': OfUse & {
    readonly pieces: readonly Phrase[];
    /** mm² that they take at least. */
    readonly area: number;
  };
  /** How far the print is off at a seam; 0 in a direction in which it goes on. */
  readonly 'laying.print-gap': {
    readonly seam: string;
    readonly level: Phrase;
    readonly pieces: readonly Phrase[];
    readonly along: number;
    readonly across: number;
  };
  /** A repeat that cannot be carried over folded cloth, whose lower layer nobody sees. */
  readonly 'laying.print-on-fold': OfUse;
}

/** On a drawn plan, and beside it. mm, shares. */
interface Lettering {
  readonly 'lay.title': { readonly project: string };
  readonly 'lay.roll': { readonly length: number; readonly width: number; readonly wasted: number };
  readonly 'lay.sheets': {
    readonly sheets: number;
    readonly length: number;
    readonly width: number;
    readonly wasted: number;
  };
  readonly 'lay.own': { readonly sheets: number; readonly wasted: number };
  readonly 'lay.buy': { readonly metric: number; readonly yards: number; readonly shrinkage: number };
  readonly 'lay.scale': { readonly scale: number };
  readonly 'lay.how': { readonly ways: 'one' | 'both' };
  /** `single`: pieces cut from the upper layer alone. */
  readonly 'lay.folded': { readonly single: readonly Phrase[] };
  readonly 'lay.shared-lines': NoValues;
  readonly 'lay.print': { readonly along: number; readonly across: number; readonly level: Phrase };
  readonly 'lay.sheet': { readonly number: number };
  readonly 'lay.number': { readonly number: number; readonly piece: Phrase };
  readonly 'lay.left': { readonly pieces: readonly Phrase[] };
}

/** Beside a line of the list to buy. */
interface Buying {
  readonly 'lay.to-buy.title': { readonly project: string };
  readonly 'lay.to-buy.heading': NoValues;
  readonly 'lay.to-buy.amount': { readonly quantity: number; readonly unit: MaterialLine['unit'] };
  readonly 'lay.to-buy.cloth': {
    readonly note: Phrase;
    readonly width: number;
    readonly yards: number;
    readonly wasted: number;
  };
  readonly 'lay.to-buy.interfacing': {
    readonly note: Phrase;
    readonly width: number;
    readonly yards: number;
  };
  readonly 'lay.to-buy.sheets': { readonly note: Phrase; readonly length: number; readonly width: number };
}

/** What this room says, and what is put in. */
export type LayingPhrases = Faults &
  Lettering &
  Buying & {
    readonly [Id in UseId as `use.${Id}`]: NoValues;
  };

export const phrase = phrasesOf<LayingPhrases>();

import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';

interface Part {
  readonly part: Phrase;
}

/** mm. */
interface ThroughGate extends Part {
  readonly gate: Phrase;
  readonly girth: number;
  readonly least: number;
}

/** What this room says, and what is put in: why an order of work fails. */
export interface SewingPhrases {
  readonly 'sewing.fault': { readonly step: Phrase; readonly reason: Phrase };
  readonly 'sewing.part-missing': Part;
  readonly 'sewing.fact-missing': { readonly fact: Phrase };
  readonly 'sewing.cut-for-filling': Part;
  readonly 'sewing.packed-untold': { readonly seam: Phrase };
  /** Girths, mm, and how many times the one goes round the other at least. */
  readonly 'sewing.pack-too-tight': {
    readonly seam: Phrase;
    readonly mouth: number;
    readonly pack: number;
    readonly least: number;
  };
  readonly 'sewing.pack-is-stiff': { readonly seam: Phrase; readonly part: Phrase };
  readonly 'sewing.no-free-edge': { readonly seam: Phrase; readonly most: number };
  readonly 'sewing.head-does-not-pass': { readonly girth: number; readonly least: number };
  readonly 'sewing.insert-blocked': ThroughGate;
  readonly 'sewing.enclosed-unfixed': Part;
  readonly 'sewing.no-hole': Part & { readonly other: Phrase };
  readonly 'sewing.end-not-free': Part & { readonly other: Phrase };
  readonly 'sewing.open-neighbour': { readonly level: Phrase };
  readonly 'sewing.pulled-though-joined': Part;
  readonly 'sewing.measured-limp': { readonly fact: Phrase };
  readonly 'sewing.threaded-late': Part;
  readonly 'sewing.piece-unused': Part;
  readonly 'sewing.same-name': { readonly seam: Phrase; readonly letter: string };
  readonly 'sewing.other-order': NoValues;
  readonly 'sewing.load-chain': NoValues;
  /** mm. */
  readonly 'sewing.beyond-reach': Part & { readonly depth: number; readonly reach: number };
  readonly 'sewing.hand-does-not-pass': ThroughGate;
  readonly 'sewing.caution-twice': { readonly caution: Phrase };
  readonly 'sewing.caution-late': { readonly caution: Phrase };
  readonly 'sewing.allowance-too-small': {
    readonly seam: Phrase;
    readonly allowance: number;
    readonly least: number;
  };
  readonly 'sewing.not-joined': { readonly seam: Phrase };
  readonly 'sewing.joined-twice': { readonly seam: Phrase };
}

export const phrase = phrasesOf<SewingPhrases>();

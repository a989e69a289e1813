import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { Piece, Twins } from './types.ts';
import type { AllowanceKind } from './usual-allowances.ts';

/** What pieces of a form are cut from. */
export const MATERIALS = [
  ...(['shell', 'webs', 'arms', 'covers', 'card', 'foam'] as const),
  ...(['test-tube', 'trial', 'gauge', 'wadding'] as const),
] as const;
export type Material = (typeof MATERIALS)[number];

/** What an edge that is no seam can be called by, as its id. */
export const EDGE_WORDS = [
  ...(['base', 'neck', 'armhole', 'wrist', 'top', 'bottom', 'side', 'sleeve', 'foot', 'lid'] as const),
  ...(['front', 'back', 'left', 'right', 'up', 'down', 'outer', 'inner'] as const),
  ...(['base plate', 'neck plate', 'shoulder seam'] as const),
] as const;
export type EdgeWord = (typeof EDGE_WORDS)[number];

type Side = Piece['side'];

interface OfPiece {
  readonly piece: Phrase;
}

/** What is lettered on pieces; lengths in mm. */
interface Lettering {
  readonly 'piece.grain': NoValues;
  readonly 'piece.side-and-cut': { readonly side: Side };
  readonly 'piece.side-and-cut-short': { readonly side: Side };
  readonly 'piece.cut': NoValues;
  /** Rows apart by line breaks. */
  readonly 'piece.cut-twins': { readonly kind: Twins['kind'] };
  readonly 'piece.cut-twins-short': NoValues;
  readonly 'piece.letters-of-twins': NoValues;
  /** One name for pieces or lines that share a drawing, word by word where only words differ. */
  readonly 'piece.both': { readonly names: readonly Phrase[] };
  readonly 'piece.revision': { readonly revision: string };
  readonly 'piece.allowance': { readonly allowance: number };
  readonly 'piece.no-allowance': NoValues;
  /** Of the edges with another allowance than most. */
  readonly 'piece.allowance-of': { readonly edges: readonly Phrase[]; readonly allowance: number };
  /** A mark by itself: no notch of another piece has its name. */
  readonly 'piece.edge-middle': { readonly edge: Phrase };
  readonly 'piece.edge-mark': { readonly edge: Phrase; readonly number: number };
  /** Title of the sheet on which the pieces of a material lie. */
  readonly 'piece.sheet': { readonly project: string; readonly material: Phrase };
  readonly 'piece.sheet-of-all': NoValues;
  /** Rows apart by line breaks, none wider than a square of 100 mm at 5 mm; size of the whole drawing. */
  readonly 'test-bars.how': { readonly width: number; readonly height: number };
}

/** What is wrong with pieces; lengths in mm, areas in mm². */
interface Faults {
  readonly 'piece.allowance-out-of-range': {
    readonly allowance: number;
    readonly smallest: number;
    readonly largest: number;
  };
  readonly 'piece.crosses-itself': OfPiece & { readonly times: number };
  readonly 'piece.without-area': OfPiece & { readonly area: number; readonly least: number };
  readonly 'piece.inside-out': OfPiece;
  readonly 'piece.covered-by-allowance': OfPiece & { readonly overlap: number };
  readonly 'piece.hollow-closed': OfPiece & { readonly area: number };
  readonly 'piece.allowances-overlap': OfPiece & { readonly length: number };
  readonly 'piece.no-room-for-notes': OfPiece;
  readonly 'piece.no-room-for-notch': OfPiece & { readonly notch: Phrase };
  readonly 'piece.no-room-for-letter': OfPiece & { readonly edge: Phrase };
  readonly 'piece.no-room-for-level': OfPiece & { readonly level: Phrase };
  readonly 'piece.no-room-for-label': OfPiece;
  readonly 'piece.label-shortened': OfPiece;
  readonly 'piece.grain-line-short': OfPiece & { readonly wanted: number; readonly found: number };
  readonly 'piece.sheet-width': { readonly width: number; readonly least: number; readonly most: number };
  readonly 'piece.gap': { readonly gap: number; readonly least: number; readonly most: number };
  readonly 'piece.wider-than-sheet': OfPiece & Wide;
  readonly 'test-bars.wider-than-sheet': Wide;
}

interface Wide {
  readonly width: number;
  readonly sheet: number;
  readonly usable: number;
}

/** What this room says, and what is put in. */
export type PatternPhrases = Lettering &
  Faults & {
    /** What to cut a piece from. */
    readonly [Id in Material as `material.${Id}`]: NoValues;
  } & {
    /** Its sheets and files. */
    readonly [Id in Material as `material.${Id}.short`]: NoValues;
  } & {
    readonly [Id in Side as `side.${Id}` | `side.${Id}.short`]: NoValues;
  } & {
    readonly [Word in EdgeWord as `edge.${Word}`]: NoValues;
  } & {
    /** Edges of a kind, with a capital. */
    readonly [Kind in AllowanceKind as `allowance.${Kind}`]: NoValues;
  };

export const phrase = phrasesOf<PatternPhrases>();

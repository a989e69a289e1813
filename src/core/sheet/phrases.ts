import { type DisplayUnit, type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { Piece, Twins } from '../pattern/index.ts';

export type PaperId = 'a4' | 'letter' | 'both' | 'a3' | 'ledger' | 'a0' | 'roll24' | 'roll36';
export type MatId = 'mat12x12' | 'mat12x24' | 'mat18x24' | 'mat24x36';

interface WithProject {
  readonly project: string;
}

/** The first page and those with the key, the cautions and the labels; lengths in mm. */
interface FrontPages {
  readonly 'cover.title': WithProject;
  readonly 'cover.true-size': { readonly paper: Phrase };
  /** How much longer or shorter everything was made, fractions. */
  readonly 'cover.corrected': { readonly across: number; readonly up: number };
  readonly 'cover.bar': { readonly length: number; readonly way: 'across' | 'up' };
  /** Rows apart by line breaks, none wider than a square of 100 mm at 4.2 mm. */
  readonly 'cover.square': NoValues;
  readonly 'cover.if-off': { readonly across: number; readonly up: number };
  readonly 'cover.print-the-rest': { readonly pages: number };
  readonly 'cover.join': { readonly joint: 'overlap' | 'butt' };
  readonly 'cover.measure-joints': NoValues;
  readonly 'cover.lines': NoValues;
  readonly 'cover.clips': NoValues;
  readonly 'cover.blades': NoValues;
  readonly 'key.title': WithProject;
  readonly 'key.title-continued': WithProject;
  readonly 'key.heading': NoValues;
  readonly 'key.heading-continued': NoValues;
  readonly 'key.count': WithProject & { readonly pages: number };
  /** How many pieces stand on the sheet of numbers instead. */
  readonly 'key.told': { readonly pieces: number };
  readonly 'key.row': {
    readonly piece: Phrase;
    readonly side: Piece['side'];
    readonly material: Phrase;
    /** Names of pages. */
    readonly pages: readonly string[];
    /** Cut from one drawing: a right and a left, or two that lie alike. */
    readonly twins?: Twins['kind'];
  };
  readonly 'take-care.title': WithProject;
  readonly 'take-care.heading': NoValues;
  readonly 'take-care.heading-continued': NoValues;
  /** On a line that is another layer's edge. */
  readonly 'numbers.layer-line': NoValues;
  readonly 'labels.title': WithProject;
  readonly 'labels.how': NoValues;
  readonly 'labels.count': { readonly pieces: number };
}

interface WithUnit {
  /** In which lengths are told. */
  readonly unit: DisplayUnit;
}

/** A piece that is not drawn, how many of it, and whether they are a right and a left. */
interface ToldHead {
  readonly piece: Phrase;
  readonly material: Phrase;
  readonly count: number;
  readonly areSides: boolean;
}

/** The sheet of pieces that need no drawing; lengths in mm. */
interface NumbersPages {
  readonly 'numbers.title': WithProject;
  readonly 'numbers.heading': NoValues;
  readonly 'numbers.heading-continued': NoValues;
  readonly 'numbers.how': NoValues;
  readonly 'numbers.piece': ToldHead;
  /** `of`: the piece it is cut like; `hasLine`: along another line drawn on that. */
  readonly 'numbers.layer': ToldHead & { readonly of: Phrase; readonly hasLine: boolean };
  readonly 'numbers.cover': ToldHead & {
    readonly of: Phrase;
    readonly allowance: number;
    /** Holes of the plate go through it. */
    readonly hasHoles: boolean;
  };
  readonly 'numbers.length': WithUnit & { readonly length: number };
  readonly 'numbers.rectangle': WithUnit & { readonly width: number; readonly height: number };
  readonly 'numbers.circle': WithUnit & { readonly diameter: number };
  readonly 'numbers.no-allowance': NoValues;
  readonly 'numbers.allowance': { readonly allowance: number };
  readonly 'numbers.allowances': WithUnit & {
    readonly left: number;
    readonly right: number;
    readonly bottom: number;
    readonly top: number;
  };
  /** Notches from the lower or left end of the cut edge. */
  readonly 'numbers.side': WithUnit & {
    readonly side: 'left' | 'right' | 'bottom' | 'top';
    readonly edge: Phrase;
    readonly notches: readonly { readonly name: string; readonly at: number }[];
  };
  readonly 'numbers.notch-round': { readonly name: string; readonly hour: number };
  /** Upright lines so far from the left cut edge, level ones from the lower; and between which distances from the other. */
  readonly 'numbers.line': WithUnit & {
    readonly line: Phrase;
    readonly isUpright: boolean;
    readonly at: number;
    readonly spans: readonly { readonly from: number; readonly to: number }[];
  };
}

/** The page that is projected; lengths in mm. */
interface ProjectorPage {
  /** Rows apart by line breaks. */
  readonly 'projector.how': WithUnit & { readonly side: number; readonly square: number };
  /** The same for pages that must all be shown where the square was measured. */
  readonly 'projector.frames': WithUnit & { readonly side: number; readonly pages: number };
  readonly 'projector.line': { readonly kind: 'cut' | 'notch' | 'sew' | 'level' | 'grain' };
  readonly 'projector.far-off': {
    readonly line: 'top' | 'right' | 'bottom' | 'left' | 'diagonal';
    readonly length: number;
    readonly wanted: number;
    /** A fraction. */
    readonly largest: number;
  };
  readonly 'projector.no-square': { readonly diagonal: number };
}

interface WithPage {
  /** Name of the page that comes there. */
  readonly page: string;
}

/** What stands on the pages of the pattern. */
interface PatternPages {
  readonly 'joint.glue': WithPage;
  readonly 'joint.glue-short': WithPage;
  readonly 'joint.lay-on': WithPage;
  readonly 'joint.edge-to-edge': WithPage;
  /** Stands over the distance, of the pages joined; room for 38 mm at 2.4 mm. */
  readonly 'joint.to-cross': WithPage;
  /** The same where pages are named by number; no longer. */
  readonly 'joint.to-cross-of-page': WithPage;
  readonly 'joint.cross-distance': { readonly length: number };
  /** How a page is spoken of by its number. */
  readonly 'page.name': { readonly number: string };
  readonly 'page.number': { readonly number: number; readonly pages: number };
}

/** Options that cannot be; lengths in mm. */
interface Faults {
  readonly 'paper.unknown': { readonly paper: string; readonly known: readonly string[] };
  readonly 'paper.margin': { readonly margin: number; readonly least: number };
  readonly 'paper.overlap': { readonly overlap: number; readonly least: number; readonly most: number };
  readonly 'paper.too-small': {
    readonly paper: Phrase;
    readonly margin: number;
    readonly left: number;
    readonly least: number;
  };
  /** `off` and the largest error that can be corrected are fractions. */
  readonly 'print.far-off': {
    readonly bar: number;
    readonly measured: number;
    readonly off: number;
    readonly largest: number;
  };
  readonly 'cutter.letters-lacking': { readonly letters: readonly string[] };
  readonly 'cutter.length': {
    readonly what: 'bladeOffset' | 'overcut' | 'kerf';
    readonly length: number;
    readonly most: number;
  };
  /** Of cloth; the least mat that holds them whole. */
  readonly 'cutter.would-divide': {
    readonly pieces: readonly Phrase[];
    readonly width: number;
    readonly height: number;
  };
  readonly 'cutter.divided-boards': { readonly pieces: readonly Phrase[]; readonly lap: number };
  readonly 'cutter.mat-too-small': { readonly width: number; readonly least: number };
}

/** What this room says, and what is put in. */
export type SheetPhrases = FrontPages &
  NumbersPages &
  ProjectorPage &
  PatternPages &
  Faults & {
    readonly [Id in PaperId | MatId as `paper.${Id}`]: NoValues;
  };

export const phrase = phrasesOf<SheetPhrases>();

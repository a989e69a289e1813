import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { CautionId, SectionPlace, Side } from './types.ts';

type Half = 'front' | 'back';
/** One side, or the same of both. */
export type Sides = Side | 'both';

interface BraceNames {
  readonly 'brace.tie': { readonly half: Half };
  readonly 'brace.web': { readonly side: Side };
  readonly 'brace.throat': { readonly side: Side };
  readonly 'brace.throat-alone': NoValues;
  /** `place` tells the straps of one level apart. */
  readonly 'brace.strap': { readonly level: Phrase; readonly place?: Half; readonly side: Side };
  /** Where its side is told by the letter beside it, and its kind by what it lies on. */
  readonly 'brace.strap-alone': { readonly level: Phrase; readonly place?: Half };
  /** Where a brace is sewn to the sleeve. */
  readonly 'brace.on-sleeve': { readonly letter: string; readonly brace: Phrase };
  /** Lines drawn on the panels, to sew braces to. */
  readonly 'brace.centre-line': { readonly half: Half };
  readonly 'brace.web-line': { readonly half: Half };
  readonly 'brace.strap-line': NoValues;
  readonly 'brace.throat-line': NoValues;
}

/** Parts of the inside that may be there or not. */
interface FurtherParts {
  readonly 'part.throat': NoValues;
  readonly 'part.straps': { readonly level: Phrase };
  /** Off the body in the mean, and at the size farthest off or the throat, without and with it, mm. */
  readonly 'part.gain': {
    readonly without: number;
    readonly with: number;
    readonly at: 'size' | 'throat';
    readonly atWithout: number;
    readonly atWith: number;
  };
  readonly 'part.needed': NoValues;
}

interface PieceNames {
  readonly 'plate.base': NoValues;
  readonly 'plate.neck': NoValues;
  readonly 'plate.armhole': { readonly side: Side };
  readonly 'plate.arm': { readonly side: Side };
  readonly 'plate.cushion': { readonly side: Side };
  readonly 'plate.pin-cushion': { readonly side: Side };
  readonly 'plate.wrist': { readonly side: Side };
  /** `pole`: of its magnets, the one that looks outwards. A short one says no more than its number. */
  readonly 'plate.layer': {
    readonly plate: Phrase;
    readonly layer: 1 | 2;
    readonly face?: 'outside' | 'inside';
    readonly pole?: 'N' | 'S';
    readonly isShort?: boolean;
  };
  readonly 'plate.cover': { readonly plate: Phrase };
  readonly 'plate.gathered-cover': { readonly plate: Phrase };
  readonly 'plate.lid': { readonly side: Side };
  /** What the grain line of board and foam shows. */
  readonly 'grain.flutes': NoValues;
  readonly 'grain.up': NoValues;
  readonly 'sleeve.name': NoValues;
  readonly 'sleeve.tab': { readonly number: number };
  /** The pole goes on by so many mm and the thickness of a plate. */
  readonly 'sleeve.tube-end': { readonly above: number };
  readonly 'neck-block.from-above': NoValues;
  readonly 'neck-block.from-front': NoValues;
  readonly 'neck-block.from-side': NoValues;
  readonly 'shoulder-support.name': { readonly side: Side };
}

interface TestTube {
  readonly 'test-tube.name': NoValues;
  readonly 'test-tube.end': { readonly end: 'bottom' | 'top' };
  readonly 'test-tube.line': { readonly number: number };
  readonly 'test-tube.why': NoValues;
  readonly 'test-tube.numbered': { readonly number: number; readonly text: Phrase };
  readonly 'test-tube.cut': NoValues;
  /** Letters of its closing seam and of its two ends. */
  readonly 'test-tube.sew': { readonly closingLetter: string; readonly endLetter: string };
  readonly 'test-tube.stuff': NoValues;
  readonly 'test-tube.measure': NoValues;
  /** As sewn, over the cloth, mm. */
  readonly 'test-tube.type': { readonly girth: number };
}

/** Openings of a web as they are counted on it, from below. */
interface OpeningNames {
  readonly 'opening.for-fill': { readonly number: number };
  readonly 'opening.for-strap': { readonly number: number };
  readonly 'opening.for-straps': { readonly number: number };
}

interface Gains {
  /** mm off the body; `place`: at the farthest. */
  readonly 'inside.strap-gain': {
    readonly level: Phrase;
    readonly of: 'width' | 'depth' | 'place';
    readonly before: number;
    readonly after: number;
  };
}

/** What cannot be built inside. mm, kg, kPa, N/mm, fractions. */
interface Faults {
  readonly 'inside.webs-near-pole': {
    readonly side: Sides;
    readonly nearest: number;
    readonly room: number;
    readonly remedy: Phrase;
  };
  readonly 'inside.webs-on-other-side': {
    readonly side: Sides;
    readonly over: number;
    readonly remedy: Phrase;
  };
  readonly 'inside.take-thinner-pole': { readonly most: number };
  readonly 'inside.take-webs-on-panels': NoValues;
  /** No growth given: it has no end. */
  readonly 'inside.cloth-gives-way': Growing & {
    readonly pressure: number;
    readonly stiffness: number;
    readonly mostPressure: number;
  };
  readonly 'inside.cloth-gives-way-as-measured': Growing;
  readonly 'inside.level-deviates': {
    readonly level: Phrase;
    readonly by: number;
    readonly way: 'flatter' | 'fuller';
    readonly at: Phrase;
    readonly wanted: number;
    readonly remedy: 'cup' | 'wadding' | 'less-filling';
  };
  readonly 'inside.line-leaves-panels': { readonly line: Phrase; readonly side: Side | 'centre' };
  /** Room wanted beside a seam, and the least height worth sewing. */
  readonly 'inside.throat-web-without-room': { readonly room: number; readonly least: number };
  readonly 'inside.tube-too-thick': {
    readonly diameter: number;
    readonly where: 'neck' | 'upright';
    readonly most: number;
    /** Thickness over the shell, where it takes room too. */
    readonly layers?: number;
  };
  readonly 'inside.little-cloth-at-edge': LittleCloth & { readonly opening: Phrase };
  readonly 'inside.little-cloth-between': LittleCloth & {
    readonly opening: Phrase;
    readonly other: Phrase;
  };
  readonly 'inside.web-too-open': { readonly brace: Phrase; readonly open: number; readonly most: number };
  readonly 'inside.hole-near-edge': {
    readonly hole: 'pole' | 'stuffing';
    readonly side?: Sides;
    readonly plate: 'base' | 'neck';
    readonly least: number;
  };
  readonly 'inside.plate-vanishes': Vanished & {
    readonly layers: number;
    readonly cloth: number;
    readonly most: number;
  };
  readonly 'inside.plate-vanishes-under-cover': Vanished & { readonly cover: number; readonly most: number };
  /** Board left beside the holes; 0 or less: none. `most`: of the magnets, absent where none fits. */
  readonly 'inside.magnets-near-edge': {
    readonly side: Sides;
    readonly magnet: number;
    readonly toEdge: number;
    readonly toPeg: number;
    readonly least: number;
    readonly most?: number;
  };
  readonly 'inside.peg-near-edge': {
    readonly side: Sides;
    readonly peg: number;
    readonly toEdge: number;
    readonly least: number;
    readonly most: number;
  };
}

interface Growing {
  readonly level: Phrase;
  readonly girth: number;
  readonly growth?: number;
  readonly mostGrowth: number;
}

interface LittleCloth {
  readonly brace: Phrase;
  /** 0 or less: none. */
  readonly left: number;
  readonly least: number;
}

interface Vanished {
  readonly plate: 'base' | 'neck' | 'armhole' | 'wrist';
  readonly side?: Sides;
}

/** What would fall or lean, and readings of the test tube. mm, kg, degrees where they say so, fractions. */
interface FaultsOfStandAndTube {
  readonly 'stand.tips-under-garment': Tipping & {
    readonly mass: number;
    readonly offset: number;
    /** The heaviest garment that may hang so. */
    readonly most: number;
  };
  readonly 'stand.tips-under-form': Tipping;
  readonly 'stand.pole-leans': {
    readonly lean: number;
    readonly mass: number;
    readonly offset: number;
    readonly most: number;
  };
  readonly 'stand.form-too-low': {
    readonly waist: number;
    readonly base: number;
    readonly leastBase: number;
    readonly leastWaist: number;
  };
  readonly 'stand.stem-too-thick': { readonly stem: number; readonly bore: number };
  readonly 'stand.wall-too-thick': {
    readonly wall: number;
    readonly diameter: number;
    readonly material: 'steel' | 'aluminium' | 'beech' | 'pvc';
    readonly most: number;
  };
  readonly 'test-tube.too-small': { readonly line: number; readonly girth: number; readonly least: number };
  readonly 'test-tube.too-large': { readonly line: number; readonly girth: number; readonly most: number };
  readonly 'test-tube.uneven': { readonly spread: number; readonly most: number };
  /** The level at which the forecast is widest, and how wide, mm. */
  readonly 'test-tube.skipped': { readonly level: Phrase; readonly width: number };
  readonly 'test-tube.growth-twice': { readonly growth: number };
}

interface Tipping {
  /** 0 or less: it falls by itself. */
  readonly tipAngleDeg: number;
  readonly leastAngleDeg: number;
  readonly ballast: number;
  readonly legRadius: number;
}

/** What is bought without a number in its name. */
type Bought =
  | 'shell'
  | 'interfacing'
  | 'webs'
  | 'covers'
  | 'foam'
  | 'thread'
  | 'cord'
  | 'fill'
  | 'arms'
  | 'arm-fill'
  | 'magnets'
  | 'pegs'
  | 'collar'
  | 'disc'
  | 'packing'
  | 'foot'
  | 'glue'
  | 'needles'
  | 'tape'
  | 'binding'
  | 'test-tube';
type Told =
  | 'binding'
  | 'foam'
  | 'fill'
  | 'arm-fill'
  | 'magnets'
  | 'pegs'
  | 'collar'
  | 'disc'
  | 'packing'
  | 'foot'
  | 'test-tube';
type Noted = 'card' | Exclude<Bought, Told | 'covers'>;

/** The list to buy by. mm, kg. */
type Buying = {
  readonly [Id in Bought as `buy.${Id}`]: NoValues;
} & {
  readonly [Id in Noted as `buy.${Id}.note`]: NoValues;
} & {
  readonly 'buy.card': { readonly thickness: number };
  readonly 'buy.tube': { readonly diameter: number };
  readonly 'buy.tube.note': { readonly insideForm: number; readonly isHeightAssumed: boolean };
  readonly 'buy.fill.note': {
    readonly low: number;
    readonly high: number;
    /** kg a cubic metre; null where it was weighed. */
    readonly assumed: { readonly low: number; readonly high: number } | null;
  };
  readonly 'buy.binding.note': { readonly width: number };
  readonly 'buy.disc.note': { readonly diameter: number };
  readonly 'buy.packing.note': { readonly thickness: number };
  readonly 'buy.foam.note': { readonly width: number; readonly depth: number; readonly height: number };
  readonly 'buy.collar.note': { readonly diameter: number };
  readonly 'buy.foot.note': { readonly legs: number; readonly radius: number };
  readonly 'buy.magnets.note': { readonly diameter: number };
  readonly 'buy.pegs.note': { readonly diameter: number };
  readonly 'buy.test-tube.note': { readonly low: number; readonly high: number };
  readonly 'buy.arm-fill.note': { readonly low: number; readonly high: number };
};

/** What this room says, and what is put in. */
export type InsidePhrases = BraceNames &
  FurtherParts &
  PieceNames &
  TestTube &
  OpeningNames &
  Gains &
  Faults &
  FaultsOfStandAndTube &
  Buying & {
    readonly [Place in SectionPlace as `section.${Place}`]: NoValues;
  } & {
    readonly [Id in CautionId as `caution.${Id}.title` | `caution.${Id}.text`]: NoValues;
  };

export const phrase = phrasesOf<InsidePhrases>();

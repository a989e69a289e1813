import type { OptionsOf } from '../base/index.ts';
import type { LAYING_OPTIONS } from './laying-options.ts';
import type { UseId } from './uses.ts';

/** A piece of cloth or board that one has: closed polygons, points [along, across] in mm. */
export interface StockPiece {
  readonly outline: readonly (readonly [number, number])[];
  /** Places not to be cut from: flaws of cloth. */
  readonly flaws?: readonly (readonly (readonly [number, number])[])[];
  /** Lines no piece may cross: folds of a box torn open. Two points or more each. */
  readonly folds?: readonly (readonly (readonly [number, number])[])[];
}

/** Where a piece was laid by hand or found by an earlier search: see `LaidPiece`. */
export interface KeptPlace {
  readonly piece: string;
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly sheet?: number;
  /** Not to be moved by a search. */
  readonly isHeld?: boolean;
}

/** What the pieces of one use are laid on, and where; what is absent is as `LAYING_OPTIONS` and `USES` say. */
export interface Stock extends OptionsOf<typeof LAYING_OPTIONS> {
  /** Laid at all; uses that are extra are only when this is true. */
  readonly isLaid?: boolean;
  /** Instead of the roll or whole sheets: what one has, used in this order. */
  readonly pieces?: readonly StockPiece[];
  /** Of a roll: places not to be cut from. */
  readonly flaws?: StockPiece['flaws'];
  /** Tolerance of single pieces off the grain, radians. */
  readonly grainTolerances?: Readonly<Record<string, number>>;
  readonly placed?: readonly KeptPlace[];
}

/** What is laid on what, by use. */
export type Laying = { readonly [Id in UseId]?: Stock };

/**
 * A piece on its cloth. The cloth lies with its warp along x from its cut end, and across from selvedge to selvedge along y, right
 * side up: a point p of the piece goes to R(angle)·p + (x, y), angle counter-clockwise from the piece as it is drawn, y up.
 * A piece whose top lies to the far end has the angle −π/2.
 */
export interface LaidPiece {
  readonly piece: string;
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  /** Of several sheets or pieces of cloth, the one it lies on; else 0. */
  readonly sheet: number;
  readonly isHeld: boolean;
}

/** Where the print does not go on across a seam at its mark, and by how much, mm; 0 both ways where it does. */
export interface PrintGap {
  readonly seam: string;
  readonly pieces: readonly [string, string];
  /** A level, or an end of the seam. */
  readonly at: string;
  readonly along: number;
  readonly across: number;
}

/** How the pieces of one use lie. mm. */
export interface LayPlan {
  readonly use: UseId;
  readonly placed: readonly LaidPiece[];
  /** Cut lines with room for nothing else: pieces that found no place on what one has. */
  readonly left: readonly string[];
  readonly ground: LayGround;
  /** On folded cloth: twins cut from the lower layer under another piece. */
  readonly under?: readonly { readonly piece: string; readonly twin: string }[];
  /** Of a roll, how much is used; of sheets, of the last one. */
  readonly length: number;
  readonly sheetsUsed: number;
  /** mm²: all pieces; what is bought or taken for them. */
  readonly area: number;
  readonly taken: number;
  /** No plan is shorter than this. */
  readonly bound: number;
  readonly print?: {
    /** Every mark of every seam at the level, and where the print does not go on. */
    readonly met: readonly PrintGap[];
    readonly others: readonly PrintGap[];
  };
  /** Evaluations the search has taken. */
  readonly evaluations: number;
}

/** What is laid on, worked out. mm. */
export interface LayGround {
  readonly kind: 'roll' | 'sheets';
  /** From selvedge to selvedge as it lies, folded where it is. */
  readonly width: number;
  /** y of the first usable line and how wide it is from there. */
  readonly usableFrom: number;
  readonly usableWidth: number;
  readonly isFolded: boolean;
  /** Of a roll, none. */
  readonly sheets: readonly GroundSheet[];
  readonly flaws: readonly Float64Array[];
}

export interface GroundSheet {
  readonly outline: Float64Array;
  readonly flaws: readonly Float64Array[];
  /** Polylines. */
  readonly folds: readonly Float64Array[];
}

/** What of a plan is seen: one sheet, or the roll up to its end. mm of cloth. */
export interface LayView {
  readonly length: number;
  readonly width: number;
  readonly sheet: number;
}

/** Where the item's own origin may lie along one axis: at phase + k · period, k whole. Same unit as the outlines. */
export interface NestLattice {
  readonly period: number;
  readonly phase: number;
}

/** One way an item may lie: mirrored first (x → −x), then turned about its origin. */
export interface NestTurn {
  /** Radians, counter-clockwise. */
  readonly angle: number;
  readonly mirrored: boolean;
  /** Absent: anywhere. Counted from the origin of the strip or of the sheet. */
  readonly latticeX?: NestLattice;
  readonly latticeY?: NestLattice;
}

/** Point p of the outline goes to R(angle) · (mirrored p) + (x, y). */
export interface NestPlacement {
  /** Index into the item's turns. */
  readonly turn: number;
  /** Index into the sheets; 0 on a strip. */
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
}

export interface NestItem {
  readonly id: string;
  /** n × 2, closed, first point not repeated, in either sense. */
  readonly outline: Float64Array;
  /** At least one. */
  readonly turns: readonly NestTurn[];
  /** It stays there, and counts as taken. */
  readonly held?: NestPlacement;
  /** Where to begin from; it may overlap others. */
  readonly start?: NestPlacement;
}

/** A piece of cloth, card or board of any outline. */
export interface NestSheet {
  /** n × 2, closed, first point not repeated. */
  readonly outline: Float64Array;
  /** Polygons not to be used. */
  readonly flaws: readonly Float64Array[];
}

/** Items to be laid on an endless strip or on sheets, all in one unit of length; mm in this project. */
export interface NestProblem {
  readonly items: readonly NestItem[];
  /** Between items; half of it to flaws and to sides of a sheet that are not those of its box. 0: neighbours share a cut line. */
  readonly gap: number;
  /** An endless strip: x from 0 on, y from 0 to this. */
  readonly width?: number;
  /** Polygons of the strip not to be used. */
  readonly flaws?: readonly Float64Array[];
  /** Instead of a strip: filled in this order, the last used as little as possible. */
  readonly sheets?: readonly NestSheet[];
  /** Places of items to be tried. */
  readonly budget: number;
  readonly seed: number;
}

export interface NestPlan {
  /** In the order of the items; undefined where there was no room. */
  readonly placements: readonly (NestPlacement | undefined)[];
  /** Of the strip; of sheets, of the last one used. From 0 or the sheet's left side to the last item's right end. */
  readonly length: number;
  readonly sheetsUsed: number;
  /** Share of strip or sheets used that items cover; of the last sheet up to `length`. */
  readonly density: number;
  /** No plan can be shorter: what one item needs in the best of its turns, or the area of all over the width. 0 for sheets. */
  readonly bound: number;
  /** Places tried so far. */
  readonly evaluations: number;
  /** Ids of items that found no room. */
  readonly left: readonly string[];
}

export interface NestProgress {
  /** Best valid plan so far; undefined until the first. */
  readonly plan: NestPlan | undefined;
  /** Share of the budget spent, 0 … 1. */
  readonly share: number;
}

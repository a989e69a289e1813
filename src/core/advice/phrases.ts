import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { View } from '../mesh/index.ts';

/** Which way a point of a line goes: on the body, round the armhole, or along the shoulder. */
export type PointWay =
  | 'up'
  | 'down'
  | 'on-round-armhole'
  | 'back-round-armhole'
  | 'to-neck'
  | 'from-neck'
  | 'to-front'
  | 'to-back';

/** Where lines go on the body. */
export type LineWay =
  | 'to-neck'
  | 'from-neck'
  | 'to-bust-point'
  | 'from-bust-point'
  | 'to-blade'
  | 'from-blade'
  | 'to-front'
  | 'to-back';

/** One move of a line, mm. `point`: counted from 1; absent: the height of a level line. */
export interface PointMove {
  readonly point?: number;
  readonly mm: number;
  readonly way: PointWay;
}

/** Seams moved, added and judged. mm; strains are fractions. */
export interface SeamAdvicePhrases {
  readonly 'advice.move-points': { readonly line: Phrase; readonly moves: readonly PointMove[] };
  readonly 'advice.add-line': { readonly line: Phrase };
  /** What to do, as the name of a step. `way` is absent where the line cannot be placed any more. */
  readonly 'advice.step-move': {
    readonly lines: readonly Phrase[];
    readonly mm: number;
    readonly way?: LineWay;
  };
  readonly 'advice.step-add': { readonly line: Phrase };
  /** What that does to the strain (p95) within `reach` of the place, and to that of the whole form. */
  readonly 'advice.gain': {
    readonly step: Phrase;
    readonly reach: number;
    readonly near: { readonly before: number; readonly after: number };
    readonly form: { readonly before: number; readonly after: number };
  };
  readonly 'advice.trying-lines': NoValues;
  readonly 'advice.trying-one-more': NoValues;
  readonly 'advice.layout-unsound': { readonly layout: Phrase };
  readonly 'advice.no-line-helps': NoValues;
  /** `most`: by how much the nearest seam was moved at most. */
  readonly 'advice.nothing-helps': { readonly most: number };
  readonly 'advice.stopped': NoValues;
  readonly 'advice.region-overlaps-flat': NoValues;
}

/** The map of distances between two bodies. mm. */
export type DistanceMapPhrases = { readonly [Seen in View as `distance-map.${Seen}`]: NoValues } & {
  readonly 'distance-map.title': NoValues;
  readonly 'distance-map.inside': { readonly end: number };
  readonly 'distance-map.outside': { readonly end: number };
};

/** What this room says, and what is put in. */
export type AdvicePhrases = SeamAdvicePhrases & DistanceMapPhrases;

export const phrase = phrasesOf<AdvicePhrases>();

import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { LineLevel, LineName } from './line-keys.ts';
import type { PanelWords } from './panel-key.ts';

export type LayoutId =
  | 'upright6'
  | 'upright8'
  | 'upright8Armhole'
  | 'upright8Bust'
  | 'upright8Hip'
  | 'upright8Underbust'
  | 'upright8Waist'
  | 'upright8Yoke'
  | 'upright12'
  | 'upright12Bust'
  | 'upright12BustWaist'
  | 'upright16';

/** Seam layouts to choose from. */
export type LayoutPhrases = {
  readonly [Id in LayoutId as `layout.${Id}.${'name' | 'description'}`]: NoValues;
};

export type OpeningId = 'base' | 'neck' | 'armholeRight' | 'armholeLeft';

/** What lines, panels and openings are called. */
export type SeamNamePhrases = { readonly [Line in LineName as `line.${Line}`]: NoValues } & {
  readonly [Id in OpeningId as `opening.${Id}`]: NoValues;
} & {
  readonly 'line.own': { readonly number: number };
  readonly 'line.along-level': { readonly level: LineLevel; readonly isFrontOnly: boolean };
  readonly 'line.middle': { readonly panel: Phrase };
  readonly 'panel.place': PanelWords;
};

interface OfLine {
  readonly line: Phrase;
}

/** What is wrong with one line. */
export interface LineFaultPhrases {
  readonly 'seams.line-waits-for-line': OfLine;
  readonly 'seams.line-too-short': OfLine;
  readonly 'seams.ease-unsound': OfLine;
  readonly 'seams.line-leaves-half': OfLine;
  readonly 'seams.line-not-rising': OfLine;
  readonly 'seams.line-on-centre': OfLine;
  readonly 'seams.line-leaves-surface': OfLine;
  readonly 'seams.line-off-centre': OfLine;
  readonly 'seams.line-misses-armhole': OfLine;
  readonly 'seams.line-along-unknown': OfLine & { readonly level: string };
  readonly 'seams.line-through-unknown': OfLine & {
    readonly kind: 'landmark' | 'level';
    readonly place: string;
  };
  readonly 'seams.line-ends-on-unknown': OfLine & { readonly other: string };
  /** Ends beside a level line, or above or below an upright one. */
  readonly 'seams.line-ends-beside': OfLine & { readonly other: Phrase };
  readonly 'seams.line-ends-off-height': OfLine & { readonly other: Phrase };
  readonly 'seams.line-over-armhole': OfLine;
  readonly 'seams.lines-cross': OfLine & { readonly other: Phrase };
  readonly 'seams.line-meets-level-often': OfLine & { readonly level: Phrase; readonly times: number };
  readonly 'seams.line-end-loose': OfLine & { readonly end: 'start' | 'end' };
  readonly 'seams.level-end-loose': OfLine;
  readonly 'seams.centre-end-loose': OfLine;
  readonly 'seams.no-point-to-pull': OfLine;
  readonly 'seams.no-place-for-point': OfLine;
  readonly 'seams.no-point-to-leave-out': OfLine;
  /** Others end on it. */
  readonly 'seams.line-carries-lines': OfLine & { readonly leaning: readonly Phrase[] };
  readonly 'seams.no-such-line': { readonly line: string };
}

/** A line, level or opening by its id, which English shows, and its name. */
export interface NamedById {
  readonly id: string;
  readonly name: Phrase;
}

/** What is wrong with lines together, and with the panels between them. mm, mm², radians. */
export interface PanelFaultPhrases {
  readonly 'seams.armhole-not-reached': NoValues;
  readonly 'seams.level-outside-form': { readonly level: Phrase };
  readonly 'seams.level-meets-armhole': { readonly level: Phrase };
  /** Of the panel bounded by these lines; none: by openings only. */
  readonly 'seams.panel-not-a-disk': { readonly lines: readonly Phrase[] };
  readonly 'seams.panel-small': { readonly lines: readonly Phrase[]; readonly area: number };
  readonly 'seams.panel-spike': {
    readonly panel: Phrase;
    readonly angle: number;
    readonly between: readonly [NamedById, NamedById];
  };
  /** `level`: where it is narrowest; absent: on average. */
  readonly 'seams.panel-narrow': {
    readonly panel: Phrase;
    readonly width: number;
    readonly level?: NamedById;
  };
  readonly 'seams.panel-not-split': { readonly panel: Phrase };
  readonly 'seams.no-such-panels': { readonly panels: readonly string[] };
  readonly 'seams.no-panels-chosen': NoValues;
  readonly 'seams.panels-apart': NoValues;
  readonly 'seams.panels-make-ring': NoValues;
}

/** What is wrong with a region drawn on the body; points count from 1. */
export interface RegionFaultPhrases {
  readonly 'seams.region-too-few-points': { readonly count: number };
  readonly 'seams.region-leaves-body': { readonly point: number };
  readonly 'seams.region-goes-round': NoValues;
  readonly 'seams.region-crosses-itself': { readonly points: readonly [number, number] };
  readonly 'seams.region-over-armhole': { readonly side: 'right' | 'left' };
}

/** What this room says, and what is put in. */
export type SeamsPhrases = LayoutPhrases &
  SeamNamePhrases &
  LineFaultPhrases &
  PanelFaultPhrases &
  RegionFaultPhrases;

export const phrase = phrasesOf<SeamsPhrases>();

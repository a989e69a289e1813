import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { MeasureId } from './measure-rows.ts';
import type { OutsideId, ParameterId } from './parameter-ids.ts';
import type { PhotoClick, PhotoEdge, PhotoId } from './photo-types.ts';
import type { LandmarkId, LevelName } from './place-ids.ts';
import type { ShapeCategoryId, ShapeChoicePhraseId } from './shape-questions.ts';

/** Names of measures, and where the tape lies. */
export type MeasurePhrases = {
  readonly [Id in MeasureId as `measure.${Id}.${'name' | 'how'}`]: NoValues;
} & {
  /** A tape of one side, where the sides were typed apart. */
  readonly 'measure.of-side': { readonly measure: Phrase; readonly side: 'left' | 'right' };
};

/** Questions of shape and their answers. */
export type ShapePhrases = {
  readonly [Id in ShapeCategoryId as `shape.${Id}.${'name' | 'why'}`]: NoValues;
} & { readonly [Id in ShapeChoicePhraseId]: NoValues };

/** Levels and landmarks of the body. */
export type PlacePhrases = { readonly [Name in LevelName as `level.${Name}`]: NoValues } & {
  readonly [Id in LandmarkId as `landmark.${Id}`]: NoValues;
};

/** What the unknowns of the fit shape. */
export type PartPhrases = { readonly [Id in Exclude<ParameterId, OutsideId> as `part.${Id}`]: NoValues };

/** What is wrong with one measure alone. mm. */
export interface MeasureFaultPhrases {
  readonly 'body.measure-missing': { readonly measure: Phrase };
  /** `known` only where all may stand. */
  readonly 'body.measure-unknown': { readonly id: string; readonly known?: readonly MeasureId[] };
  readonly 'body.measure-not-sided': { readonly measure: Phrase };
  readonly 'body.measure-not-a-number': { readonly measure: Phrase };
  readonly 'body.measure-not-positive': { readonly measure: Phrase; readonly value: number };
  readonly 'body.measure-unusual': MeasureOutside;
  readonly 'body.measure-out-of-range': MeasureOutside & {
    /** What the file, in millimetres, must say if it was written in another unit. */
    readonly meant?: { readonly unit: 'cm' | 'in'; readonly inFile: number };
  };
  readonly 'body.sides-contradict': UnlikeSides & { readonly limit: number };
  readonly 'body.sides-differ': UnlikeSides;
  /** `count` readings from the wall, of `least` that tell anything. */
  readonly 'body.wall-alone': { readonly count: number; readonly least: number };
  readonly 'body.height-alone': { readonly measure: Phrase; readonly needed: Phrase };
  readonly 'body.readings-differ': {
    readonly measure: Phrase;
    readonly gap: number;
    readonly limit: number;
  };
}

interface MeasureOutside {
  readonly measure: Phrase;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

interface UnlikeSides {
  readonly measure: Phrase;
  readonly gap: number;
  readonly left: number;
  readonly right: number;
}

/** How one measure must lie to another, by geometry. */
export type MeasureRule = 'shorter' | 'less' | 'less-than-half' | 'lower';

/** Measures that contradict each other, or what all others foretell. mm. */
export interface DoubtPhrases {
  readonly 'body.measures-contradict': TwoMeasures & { readonly rule: MeasureRule };
  readonly 'body.half-of-girth': TwoMeasures;
  readonly 'body.girth-of-box': {
    readonly measure: Phrase;
    readonly girth: number;
    readonly width: number;
    readonly depth: number;
    readonly least: number;
    readonly most: number;
  };
  readonly 'body.back-shorter-than-height': {
    readonly back: Phrase;
    readonly length: number;
    readonly nape: Phrase;
    readonly waist: Phrase;
    /** The height between them. */
    readonly span: number;
    readonly gap: number;
  };
  readonly 'body.girths-off': {
    readonly size: 'large' | 'small';
    /** By this part of a girth. */
    readonly share: number;
    /** Widths and depths, or all other measures, tell of it. */
    readonly seenBy: 'boxes' | 'list';
  };
  readonly 'body.please-confirm': TwoMeasures;
  readonly 'body.measures-exchanged': TwoMeasures;
  readonly 'body.measure-doubtful': {
    readonly measure: Phrase;
    readonly gap: number;
    readonly size: 'large' | 'small';
    readonly expected: number;
    readonly spread: number;
    readonly isFar: boolean;
    /** What was perhaps meant. */
    readonly guess?: number;
    readonly advice: 'correct' | 'measure';
  };
}

interface TwoMeasures {
  readonly first: Phrase;
  readonly firstValue: number;
  readonly second: Phrase;
  readonly secondValue: number;
}

/** What the fit tells, and what is wrong with answers about the shape. mm. */
export interface FitPhrases {
  readonly 'body.tape-conflict': {
    readonly tape: Phrase;
    readonly gap: number;
    readonly size: 'large' | 'small';
    /** All that cannot be met together. */
    readonly conflicting: readonly Phrase[];
  };
  readonly 'body.unusual-shape': { readonly part: Phrase; readonly isVery: boolean };
  readonly 'body.section-crosses': { readonly level: Phrase };
  /** Smoothing the trunk under the tapes did not succeed. */
  readonly 'body.not-faired': NoValues;
  readonly 'body.fit-not-converged': { readonly steps: number };
  readonly 'body.arms-incomplete': { readonly missing: readonly Phrase[] };
  readonly 'body.arm-too-short': { readonly length: number };
  readonly 'body.shape-unknown': { readonly id: string; readonly known: readonly string[] };
  /** Ids as the file has them. */
  readonly 'body.choice-unknown': {
    readonly category: Phrase;
    readonly choices: readonly string[];
    readonly given: string;
  };
  readonly 'body.shape-out-of-range': {
    readonly category: Phrase;
    readonly value: number;
    readonly least: number;
    readonly most: number;
  };
}

/** What pictures of the person tell that the measures do not, and what cannot be read from them. mm. */
export interface PhotoPhrases {
  readonly 'body.photo-too-near': { readonly photo: PhotoId; readonly least: number };
  readonly 'body.photo-unreadable': { readonly photo: PhotoId };
  readonly 'body.photo-few-points': {
    readonly photo: PhotoId;
    readonly count: number;
    readonly least: number;
  };
  /** The picture shows it as `size` as that, by `gap`. */
  readonly 'body.photo-box-differs': {
    readonly measure: Phrase;
    readonly photo: PhotoId;
    readonly gap: number;
    readonly size: 'large' | 'small';
  };
  /** A point at `height` over the floor, on an edge or of a place shown by name. */
  readonly 'body.photo-point-off': {
    readonly photo: PhotoId;
    readonly of: PhotoEdge | PhotoClick;
    readonly height: number;
    readonly gap: number;
  };
}

/** What this room says, and what is put in. */
export type BodyPhrases = MeasurePhrases &
  ShapePhrases &
  PlacePhrases &
  PartPhrases &
  MeasureFaultPhrases &
  DoubtPhrases &
  FitPhrases &
  PhotoPhrases;

export const phrase = phrasesOf<BodyPhrases>();

import type { Phrase } from '../../core/base/index.ts';
import type { FormFile } from '../../core/files/index.ts';
import type { GaugeOptions } from '../../core/gauge/index.ts';
import type { LayProgress } from '../../core/laying/index.ts';
import type { Mesh } from '../../core/mesh/index.ts';
import type { LastStage, StageId } from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { PanelEdge, SeamLine } from '../../core/seams/index.ts';
import type { Language } from '../../language/index.ts';

/** What goes to the worker and comes back from it, where the core has no name for it. */

/** A rough form, made while the person types, or the one that files are written from. */
export type Quality = 'quick' | 'full';

/** What is being made, and how much of it is done: 0..1. */
export interface Work {
  readonly quality: Quality;
  readonly fraction: number;
  /** Null before anything is known. */
  readonly what: Phrase | null;
}

/** In which language, and written as where, the worker words what it letters. */
export interface Voice {
  readonly language: Language;
  /** BCP 47. */
  readonly locale: string;
}

/** How fine a form is wanted, and how much of it; as in `MakeOptions`. */
export interface MakeWish {
  readonly targetTriangles: number;
  readonly upTo?: LastStage;
  readonly fills?: boolean;
}

export type OnProgress = (fraction: number, stage: StageId, what: Phrase) => void;

/** Told of every better plan, and now and then in between; answers whether the search is to go on. */
export type OnLaid = (progress: LayProgress) => boolean | Promise<boolean>;

/** Told how much of a long file is drawn, 0..1; answers whether to go on. */
export type OnDrawn = (share: number) => boolean | Promise<boolean>;

/** Told of every picture, an SVG file, with its step's id; answers the step whose picture is wanted next, null: no more. */
export type OnStepDrawn = (stepId: string, picture: string) => string | null | Promise<string | null>;

/** Formats as the pipeline names them. */
export interface FileOptions {
  readonly formats: readonly string[];
  /** Of the trial shell instead of the form. */
  readonly isTrialShell?: boolean;
  /** Which gauges, and how they are cut. */
  readonly gauges?: GaugeOptions;
  /** Ids of the pieces wanted; absent = all. */
  readonly pieces?: readonly string[];
}

/** A print that is only thought of. */
export interface PrintWish {
  /** Ids of the pieces wanted; absent = all. */
  readonly pieces?: readonly string[];
  /** What is otherwise than in the project. */
  readonly change?: Partial<Project['cutting']>;
}

/** The seams of a layout: polylines n × 3 mm. */
export type LayoutLines = readonly Float64Array[];

/** A layout on one body, roughly: where its seams run, and what it would come to. */
export interface LayoutSketch {
  readonly lines: LayoutLines;
  /** 95 % of the cloth is strained less, a fraction. */
  readonly strain: number;
  /** Length of cloth of the usual or typed width, mm. */
  readonly cloth: number;
  /** To cut and sew the shell, without what goes inside. */
  readonly hours: number;
}

/** Outlines of the body under each choice of one question of shape: closed, n × 2 mm, y down. */
export interface ChoiceOutlines {
  /** As the body is now. */
  readonly now: Float64Array;
  /** By id of the choice; those that cannot be are left out. */
  readonly choices: Readonly<Record<string, Float64Array>>;
}

/** How far a second body lies from a first one, mm; `picture` is an SVG file of the first from three sides. */
export interface DistancePicture {
  readonly rms: number;
  readonly mostOutside: number;
  readonly mostInside: number;
  readonly picture: string;
}

/** A piece cut out of the body as it lies flat; lengths in mm, areas in mm², strain as fractions. */
export interface FlatCut {
  readonly area: number;
  readonly length3d: number;
  readonly lengthFlat: number;
  /** 95 % of the cloth is strained less. */
  readonly strain: number;
  readonly min: number;
  readonly max: number;
  /** SVG file in true size, coloured by strain. */
  readonly picture: string;
}

/** A region drawn on the body as a loop of (u, v), or panels joined. */
export type CutWish =
  | { readonly loop: Float64Array }
  | { readonly joined: { readonly mesh: Mesh; readonly edges: readonly PanelEdge[] } };

/** A change of the seam lines that was tried out and lowers the strain at one place. */
export interface SeamAdvice {
  readonly lines: readonly SeamLine[];
  /** What to do. */
  readonly step: Phrase;
  /** The same with the figures before and after. */
  readonly message: Phrase;
}

/** What makes a form that stands serve another body, in words; and pads and cover as one archive, null where it is better made anew. */
export interface RefitAnswer {
  readonly zones: readonly {
    readonly id: string;
    readonly name: Phrase;
    readonly steps: readonly Phrase[];
  }[];
  readonly verdict: Phrase;
  /** mm. */
  readonly toFront: number;
  readonly pads: readonly {
    readonly number: number;
    readonly name: Phrase;
    readonly notes: readonly Phrase[];
  }[];
  readonly archive: FormFile | null;
}

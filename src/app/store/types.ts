import type { SeamPreview } from '../../core/advice/index.ts';
import type { DisplayUnit, Issue, Say } from '../../core/base/index.ts';
import type { Body, BodyUncertainty, GuessedBody } from '../../core/body/index.ts';
import type { FillingTrial } from '../../core/filled/index.ts';
import type { Form, FormFilled, TriedForm } from '../../core/form/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { ControlPointName, SeamEdit } from '../../core/seams/index.ts';
import type { Language, Numbers, Words } from '../../language/index.ts';
import type { ChoiceOutlines, LayoutSketch, Quality, Work } from '../calls/index.ts';
import type { FilledView } from './filled-view.ts';
import type { LayWork } from './lay-in-view.ts';
import type { DrawnKind, Layers, Stage } from './stages.ts';

export type { ControlPointName, DrawnKind, Layers, Quality, Stage, Work };

export type Seam = Form['shell']['seams'][number];

/** The one thing pointed at; every view shows it in its own way. */
export interface Highlight {
  readonly kind: 'tape' | 'seam' | 'panel' | 'level' | 'mark';
  /** Of a mark: `markId` of its seam and number. */
  readonly id: string;
  /** Pointed at on the body: lists bring its row into view. */
  readonly isFromBody?: true;
}

export interface Mention {
  readonly text: string;
}

/** A step taken back or done again. */
export interface Retraced {
  readonly way: 'undo' | 'redo';
  readonly step: string;
  /** The project, or what was drawn, that the step had made; by identity. */
  readonly made: object;
}

export type Theme = 'system' | 'light' | 'dark';
export type ViewName = 'front' | 'side' | 'back' | 'threeQuarter';

/** Where a maker works at the bench: the step last looked at of a body's order of work, and whether it fills the page. */
export interface Bench {
  readonly bodyId: string;
  readonly stepId: string;
  readonly isOpen: boolean;
}

/** What the person typed into a field while it cannot be used. */
export interface Draft {
  readonly text: string;
  /** Empty while the person is still typing. */
  readonly message: string;
}

export interface Notice {
  readonly tone: 'plain' | 'warning';
  readonly text: string;
  /** More lines, for example every problem in a file. */
  readonly details?: readonly string[];
  /** Stays until it is closed; others give way to the next. */
  readonly isLasting?: true;
  /** It holds once the page is loaded again. */
  readonly offersReload?: true;
  /** What would else be lost, to be saved by hand. */
  readonly file?: { readonly name: string; readonly text: string };
}

/** Another body, drawn over this one to compare. */
export interface Ghost {
  readonly name: string;
  readonly body: Body;
  /** Whose body it is. */
  readonly project: Project;
}

/** A place on the body that has a name. */
export type PlaceId = keyof Words['places'];

/** A place on the body, mm. */
export interface BodyPlace {
  readonly at: readonly [number, number, number];
  /** Null when it was pointed at. */
  readonly id: PlaceId | null;
}

/** A thread being laid over the body from one place to another. */
export interface Thread {
  readonly from: BodyPlace | null;
  readonly to: BodyPlace | null;
  /** The next click on the body sets an end. */
  readonly isPicking: boolean;
}

/** Where a point is wanted; the last of a pull is kept. */
export interface SeamPull extends SeamEdit {
  readonly isLast?: boolean;
}

/** Seam lines being pulled by hand. */
export interface SeamWork {
  /** The project `preview` began from; a pull starts only while this is the present one. */
  readonly base: Project | null;
  readonly preview: SeamPreview | null;
  /** Strain before the first pull since the lines were last made anew. */
  readonly before: SeamPreview['strain'] | null;
  readonly chosen: ControlPointName | null;
  /** null = nothing is being pulled. */
  readonly pull: SeamPull | null;
  /** Why the point cannot go where it was last wanted. */
  readonly refusal: string;
  /** Advice is to be sought as soon as it can be. */
  readonly wantsAdvice: boolean;
}

/** A point drawn on the body: angle round it and height over its base, mm. */
export interface DrawnPoint {
  readonly u: number;
  readonly v: number;
  /** What it caught on; empty when it stands free. */
  readonly caughtOn: string;
}

/** What the person draws on the body point by point: a region to unroll, a line to sew along. */
export type Drawn = Readonly<Record<DrawnKind, readonly DrawnPoint[]>>;

/** The pencil: whether clicks set points, which point is chosen, and one being dragged. */
export interface Pencil {
  readonly isDown: boolean;
  readonly chosen: number | null;
  readonly held: { readonly index: number; readonly point: DrawnPoint } | null;
}

export const PHOTO_SIDES = ['front', 'side'] as const;
export type PhotoSide = (typeof PHOTO_SIDES)[number];

/** A photo laid under the body as seen straight from one side. Kept in this browser, never in the project. */
export interface Photo {
  readonly side: PhotoSide;
  readonly name: string;
  readonly file: Blob;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly mmPerPixel: number;
  /** Where its middle lies in the picture, mm: to the right, and up from the body's zero. */
  readonly x: number;
  readonly z: number;
  /** 0..1. */
  readonly opacity: number;
  readonly isFlipped: boolean;
}

/** A photo of the cloth, as a print to lay on. Kept in this browser; the project holds the lengths of its repeat only. */
export interface ClothPhoto {
  readonly name: string;
  readonly file: Blob;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Null until it is scaled. */
  readonly mmPerPixel: number | null;
  /** One repeat, from its top left, pixels; null = the whole photo. */
  readonly repeat: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  } | null;
}

/** A place on a photo, pixels from its top left as it is shown. */
export type PhotoMark = readonly [number, number];

/** Every layout on one body, roughly. */
export interface LayoutSketches {
  /** The project they belong to, by identity of its `body`. */
  readonly body: Project['body'];
  /** By id, as far as they are made; null where a layout does not fit the body. */
  readonly layouts: Readonly<Record<string, LayoutSketch | null>>;
}

/** Outlines of the body under each choice of shape. */
export interface ShapePictures {
  /** The project they belong to, by identity of its `body`. */
  readonly body: Project['body'];
  /** By id of the question, as far as they are made; null where there are none. */
  readonly outlines: Readonly<Record<string, ChoiceOutlines | null>>;
}

/** How well the shape of one body is known. */
export interface ShownUncertainty extends BodyUncertainty {
  /** The project it belongs to, by identity of its `body`. */
  readonly body: Project['body'];
}

/** A body guessed while some of the first measures are missing. */
export interface ShownGuess extends GuessedBody {
  /** The project it belongs to, by identity of its `body`. */
  readonly of: Project['body'];
}

/** What is tried of a filled form, and what came of it; over with the form it is about. */
export interface ShownTrial {
  readonly of: FormFilled;
  readonly trial: FillingTrial;
  /** What came of `answered`: this trial, or while it is awaited the one before. */
  readonly tried: TriedForm | null;
  readonly answered: FillingTrial | null;
  /** Why nothing came of it. */
  readonly failure: readonly Issue[] | null;
}

export interface AppState {
  /** What undo brings back. */
  readonly project: Project | null;
  /** Under which the project is kept among the maker's bodies. */
  readonly bodyId: string;
  /** The project as it was opened, while it need not be kept: a demo only looked at. */
  readonly asOpened: Project | null;
  /** Name of the step that led to `project`. */
  readonly step: string;

  readonly form: Form | null;
  /** The project `form` was made from, by identity. */
  readonly formOf: Project | null;
  readonly formQuality: Quality | null;
  /** Why the last attempt made no form. */
  readonly failure: readonly Issue[] | null;
  readonly work: Work | null;
  /** The person stopped the last computation. */
  readonly isStopped: boolean;

  readonly sketches: LayoutSketches | null;
  readonly shapePictures: ShapePictures | null;
  readonly uncertainty: ShownUncertainty | null;

  /** Null before anything was made in this browser. */
  readonly bench: Bench | null;
  readonly stage: Stage;
  readonly highlight: Highlight | null;
  readonly drafts: Readonly<Record<string, Draft>>;
  /** Nonce, so that asking for the same view twice turns the camera again. */
  readonly view: { readonly name: ViewName; readonly nonce: number };
  readonly layers: Layers;
  readonly filledView: FilledView;
  /** Read by `trialOf`, which knows whether it is of the form that is there. */
  readonly filledTrial: ShownTrial | null;
  /** How often a picture of the body was asked for; each change takes one. */
  readonly pictureNonce: number;
  /** Height of the section looked at, mm; null = none. */
  readonly sectionZ: number | null;
  readonly photos: Readonly<Record<PhotoSide, Photo | null>>;
  /** Points being set to scale a photo; null = it is moved. */
  readonly photoMarks: readonly PhotoMark[] | null;
  readonly layWork: LayWork;
  readonly clothPhoto: ClothPhoto | null;
  readonly ghost: Ghost | null;
  /** The name of a kept body chosen to compare with, until it is there. */
  readonly ghostAwaited: string | null;
  /** Shown while there is no form. */
  readonly guess: ShownGuess | null;
  readonly thread: Thread;
  /** Undo brings it back too. */
  readonly drawn: Drawn;
  readonly pencil: Pencil;
  readonly seamWork: SeamWork;
  readonly theme: Theme;
  readonly language: Language;
  /** All that is said, in the present language. */
  readonly words: Words;
  /** What comes from the core, numbers in both systems of units. */
  readonly say: Say;
  /** The same in one of them. */
  readonly sayIn: Readonly<Record<DisplayUnit, Say>>;
  readonly numbers: Numbers;
  /** Lasting ones first, in the order they came; at most one other. */
  readonly notices: readonly Notice[];
  /** Keys and words of the trade are asked for. */
  readonly isHelpOpen: boolean;
  /** At which stop of the round of the page somebody is; null while there is no round. */
  readonly roundAt: number | null;
  /** What was just done and needs no answer; shown for a while. A new object each time. */
  readonly mention: Mention | null;
  /** The last step that was undone or repeated, for whoever goes to where it was made. */
  readonly retraced: Retraced | null;
  /** When the project was last kept in this browser; null when it could not be. */
  readonly keptAt: number | null;
}

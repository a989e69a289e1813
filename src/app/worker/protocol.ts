import type { PreviewOptions, SeamPreview } from '../../core/advice/index.ts';
import { type Issue, type Phrase, plain, type Result } from '../../core/base/index.ts';
import type { Body } from '../../core/body/index.ts';
import type { FormFile } from '../../core/files/index.ts';
import type { FlattenJob, JobResult } from '../../core/flatten/index.ts';
import type { Form, LastStage, StageId, WorstZone } from '../../core/form/index.ts';
import type { Mesh } from '../../core/mesh/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { ChartPlace, PanelEdge, SeamLine } from '../../core/seams/index.ts';
import type { Language } from '../../language/index.ts';

export const QUICK_TRIANGLES = 2_500;
export const FULL_TRIANGLES = 20_000;

/** The words pieces are lettered and files are written in. */
export interface Voice {
  readonly language: Language;
  /** BCP 47, of the numbers. */
  readonly locale: string;
}

export interface MakeRequest {
  readonly voice: Voice;
  readonly project: Project;
  readonly targetTriangles: number;
  /** As in `MakeOptions`. */
  readonly upTo: LastStage;
  /** One Int32 in shared memory, non-zero = stop; null where the page may not share memory. */
  readonly stopFlag: Int32Array | null;
}

/** Formats as the pipeline names them. */
export interface FileOptions {
  readonly formats: readonly string[];
  /** Ids of the pieces wanted; absent = all. */
  readonly pieces?: readonly string[];
}

export type OnProgress = (fraction: number, stage: StageId, what: Phrase) => void;

/** Polylines n × 3 mm by layout id. */
export type LayoutLines = Readonly<Record<string, readonly Float64Array[]>>;

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
  readonly rms: number;
  readonly p95: number;
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
  /** In plain words, with the figures before and after. */
  readonly message: Phrase;
}

/** Calls the second worker answers: single panels, for the worker that started it. */
export interface PanelWorker {
  isReady(): boolean;
  /** Jobs not begun when the flag is raised come back as failures without issues. */
  runJobs(jobs: readonly FlattenJob[], stopFlag: Int32Array | null): readonly Result<JobResult>[];
}

/** Calls the worker answers, through comlink. */
export interface FormWorker {
  makeForm(request: MakeRequest, onProgress: OnProgress): Promise<Result<Form>>;
  /** The files asked for, as one archive when there are several; the form is made anew at full quality when the worker does not hold it. */
  writeFiles(project: Project, options: FileOptions, voice: Voice): Promise<Result<readonly FormFile[]>>;
  /** Where the seams of every layout run on the project's body; roughly, for pictures. */
  sketchLayouts(project: Project): LayoutLines;
  /** The seams alone, coarse and quick, with one point of a line being dragged. */
  previewSeams(project: Project, options: PreviewOptions): Result<SeamPreview>;
  /** One flat piece of the project's body. */
  unrollCut(project: Project, wish: CutWish, voice: Voice): Promise<Result<FlatCut>>;
  /** Places most over the cloth's limits, worst first, of the form at full quality. */
  worstZones(project: Project, count: number, voice: Voice): Promise<Result<readonly WorstZone[]>>;
  /** What would lower the strain at a place of the body, tried out on a coarse mesh; nothing is applied. */
  adviseSeams(
    project: Project,
    place: ChartPlace,
    stopFlag: Int32Array | null,
  ): Result<readonly SeamAdvice[]>;
  /** Outline of the project's body under one choice of shape (`null` = as it is), n × 2 mm; null when it has none. */
  outlineShape(project: Project, category: string, choice: string | null): Float64Array | null;
  /** The body only, for comparing; null when it has none. */
  shapeBody(project: Project): Body | null;
  pictureDistance(before: Body, after: Body, voice: Voice): Promise<DistancePicture>;
  /** Points all over the project's body, n × 3 mm, for a small picture; null when it has none. */
  scatterBody(project: Project): Float64Array | null;
}

/** A defect of ours told as an issue, so that the person sees something and can report it. */
export function issueOfDefect(error: unknown): Issue {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    code: 'internal-fault',
    path: '',
    message: plain(
      `Something went wrong inside the program, not in what you typed. Undo the last step to go on. (${reason})`,
    ),
    severity: 'error',
  };
}

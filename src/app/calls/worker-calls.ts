import type { PreviewOptions, SeamPreview } from '../../core/advice/index.ts';
import { failure, type Result } from '../../core/base/index.ts';
import type { Body, BodyUncertainty, GuessedBody } from '../../core/body/index.ts';
import type { FormFile } from '../../core/files/index.ts';
import type { FillingTrial } from '../../core/filled/index.ts';
import type { Form, TriedForm, WorstZone } from '../../core/form/index.ts';
import type { LayPlan, LayTask } from '../../core/laying/index.ts';
import type { Piece } from '../../core/pattern/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { ChartPlace } from '../../core/seams/index.ts';
import type { PrintPlan } from '../../core/sheet/index.ts';
import type {
  CutWish,
  DistancePicture,
  FileOptions,
  FlatCut,
  LayoutSketch,
  MakeWish,
  OnDrawn,
  OnLaid,
  OnProgress,
  OnStepDrawn,
  PrintWish,
  RefitAnswer,
  SeamAdvice,
} from './answers.ts';
import { describeCall, signature } from './describe-call.ts';
import { issueOfDefect } from './issue-of-defect.ts';

const tellDefect = (error: unknown): Result<never> => failure([issueOfDefect(error)]);
const none = () => null;

/**
 * Every call from the page to a worker. The page's side of it, what the views may ask, and what the worker must implement
 * all follow from this table.
 */
export const workerCalls = {
  /** A form as fine and as far as wished; its progress is told while it is made. */
  makeForm: describeCall(
    signature<(project: Project, wish: MakeWish, onProgress: OnProgress) => Result<Form>>(),
    { worker: 'either', onDefect: tellDefect, isWorded: true, whenStopped: 'isDropped' },
  ),

  /**
   * The files asked for, as one archive when there are several; the form is made anew at full quality when the worker does not hold it.
   * Told of a long one while it is drawn, the page says whether it is to go on; what is stopped fails without an issue.
   */
  writeFiles: describeCall(
    signature<(project: Project, options: FileOptions, onDrawn: OnDrawn) => Result<readonly FormFile[]>>(),
    {
      worker: 'full',
      onDefect: tellDefect,
      isWorded: true,
      needsFilled: true,
      keepsWorker: true,
      isOfPresentProject: true,
    },
  ),

  /**
   * Pictures of steps of the order of work, one after the other as the page asks for them, the first one first; other calls have their
   * turn in between. Answers how many were drawn; null when there is no form to draw.
   */
  drawSteps: describeCall(
    signature<(project: Project, first: string, onDrawn: OnStepDrawn) => number | null>(),
    {
      worker: 'full',
      onDefect: none,
      isWorded: true,
      needsFilled: true,
      isOfPresentProject: true,
    },
  ),

  /** How many pages the print would have, and how they look; needs the form the files are made of. */
  planPrint: describeCall(signature<(project: Project, wish: PrintWish) => Result<PrintPlan>>(), {
    worker: 'full',
    onDefect: tellDefect,
    isWorded: true,
    needsFilled: true,
    isOfPresentProject: true,
  }),

  /** Where the seams of a layout run on the project's body and what it would come to; roughly; null when it does not fit the body. */
  sketchLayout: describeCall(signature<(project: Project, layoutId: string) => LayoutSketch | null>(), {
    worker: 'quick',
    onDefect: none,
  }),

  /** As `outlineShape`, from rough bodies: sooner, and some millimetres off. */
  sketchShape: describeCall(
    signature<(project: Project, category: string, choice: string | null) => Float64Array | null>(),
    { worker: 'quick', onDefect: none },
  ),

  /** The seams alone, coarse and quick, with one point of a line being dragged: a drag asks far more often than it gets. */
  previewSeams: describeCall(
    signature<(project: Project, options: PreviewOptions) => Result<SeamPreview>>(),
    { worker: 'quick', onDefect: tellDefect, isLatestOnly: true },
  ),

  /** A region or joined panels of the project's body as one flat piece. */
  flattenCut: describeCall(signature<(project: Project, wish: CutWish) => Result<FlatCut>>(), {
    worker: 'quick',
    onDefect: tellDefect,
    isWorded: true,
    isOfPresentProject: true,
  }),

  /** Places most over the cloth's limits, worst first, of the form at full quality. */
  worstZones: describeCall(signature<(project: Project, count: number) => Result<readonly WorstZone[]>>(), {
    worker: 'full',
    onDefect: tellDefect,
    isWorded: true,
    needsFilled: true,
    isOfPresentProject: true,
  }),

  /** What would lower the strain at a place of the body, tried out on a coarse mesh; nothing is applied. Takes a second or two. */
  adviseSeams: describeCall(
    signature<(project: Project, place: ChartPlace) => Result<readonly SeamAdvice[]>>(),
    { worker: 'full', onDefect: tellDefect, whenStopped: 'answers', isOfPresentProject: true },
  ),

  /** The filled form with something otherwise than foretold; undefined where it is not cut for its filling. A slider asks far more often than it gets. */
  tryFilling: describeCall(
    signature<(project: Project, trial: FillingTrial) => Result<TriedForm | undefined>>(),
    { worker: 'full', onDefect: tellDefect, isLatestOnly: true, needsFilled: true, isOfPresentProject: true },
  ),

  /**
   * The shortest plan a budget finds for pieces on their cloth. Told of what it has found several times a second, the page says each
   * time whether it is to go on: whatever else is asked of the worker is done in between, and who stops the search has the last plan.
   */
  layPieces: describeCall(signature<(task: LayTask, onLaid: OnLaid) => Result<LayPlan>>(), {
    worker: 'quick',
    onDefect: tellDefect,
  }),

  /** The trial shell's pieces of a project that lays them, for a form that was made before it did. */
  trialPieces: describeCall(signature<(project: Project) => Result<readonly Piece[]>>(), {
    worker: 'full',
    onDefect: tellDefect,
    isWorded: true,
    needsFilled: true,
    isOfPresentProject: true,
  }),

  /** Outline of the project's body under one choice of shape (`null` = as it is), n × 2 mm; null when it has none. */
  outlineShape: describeCall(
    signature<(project: Project, category: string, choice: string | null) => Float64Array | null>(),
    { worker: 'full', onDefect: none },
  ),

  /** How well the body's shape is known, and what to measure next; null when it has none. */
  uncertaintyOfBody: describeCall(signature<(project: Project) => BodyUncertainty | null>(), {
    worker: 'full',
    onDefect: none,
  }),

  /** The body as far as it can be guessed before the first measures are all there; null when it cannot. */
  guessBody: describeCall(signature<(project: Project) => GuessedBody | null>(), {
    worker: 'quick',
    onDefect: none,
    isLatestOnly: true,
  }),

  /** The body only, for comparing; null when it has none. */
  shapeBody: describeCall(signature<(project: Project) => Body | null>(), {
    worker: 'full',
    onDefect: none,
  }),

  /** How far the second body lies from the first; null when it cannot be told. */
  pictureDistance: describeCall(signature<(before: Body, after: Body) => DistancePicture | null>(), {
    worker: 'full',
    onDefect: none,
    isWorded: true,
  }),

  /** What makes the form of the first project serve the body of the second; wadding of so many mm. Several seconds. */
  refitForm: describeCall(
    signature<(before: Project, after: Project, wadding: number | undefined) => Result<RefitAnswer>>(),
    { worker: 'full', onDefect: tellDefect, isWorded: true },
  ),

  /** Points all over the project's body, n × 3 mm, for a small picture; null when it has none. */
  scatterBody: describeCall(signature<(project: Project) => Float64Array | null>(), {
    worker: 'quick',
    onDefect: none,
  }),
};

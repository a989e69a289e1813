import { createSeamPreview, type PreviewSeams } from '../advice/index.ts';
import {
  type CutPieces,
  designOfShell,
  draftPieces,
  type FlatArms,
  flattenArms,
  flattenProblemFromShell,
  type InsideDesign,
  layAlongGrain,
  layoutOf,
  makeInside,
  nameFlattenIssues,
  orderSeams,
  pieceInputsFromShell,
  prefixIssues,
  shrinkGirths,
} from '../assembly/index.ts';
import {
  failure,
  InvariantError,
  type Issue,
  type Phrase,
  plain,
  type RememberLast,
  type Result,
  rememberLast,
  success,
} from '../base/index.ts';
import { type Body, fitBody, surfaceOfBody } from '../body/index.ts';
import {
  CLOTHS,
  createFlattenMemory,
  type FlatDisk,
  type FlattenOptions,
  type FlattenProblem,
  findCloth,
  flattenAhead,
  flattenTogether,
  measureFreeStrain,
  type RunJobsElsewhere,
} from '../flatten/index.ts';
import { type Form, type MakeForm, type MakeOptions, makeReport, type StageId } from '../form/index.ts';
import { makeWorkshop } from '../making/index.ts';
import { type ChartSurface, capBoundaryLoops, type Mesh } from '../mesh/index.ts';
import type { Project } from '../project/index.ts';
import {
  bridgeHollows,
  cutIntoPanels,
  type SeamedShell,
  type SeamLayout,
  USUAL_BRIDGING,
} from '../seams/index.ts';
import { cutGirth, doesTakeOff, takenOffBy } from '../supports/index.ts';

const defaultTriangles = 20_000;

const NO_PIECES: CutPieces & Pick<Form, 'inside'> = { pieces: [], drawings: [] };

/** Parts of the whole work at which each stage starts, for progress; measured on an average body at 20 000 triangles. */
const stageStart: Readonly<Record<StageId, number>> = {
  tape: 0,
  body: 0.01,
  seams: 0.25,
  panels: 0.5,
  inside: 0.78,
  cutting: 0.85,
};

export interface Pipeline {
  /** Makes the whole form; stages whose inputs did not change since the last call are not run again. */
  readonly makeForm: MakeForm;
  /**
   * The same form, bytes and all, with part of the panels unrolled elsewhere at the same time, as by a second worker. The
   * promise is never refused: what fails elsewhere is done here.
   */
  readonly makeFormShared: (
    project: Project,
    options: MakeOptions,
    elsewhere: RunJobsElsewhere,
  ) => Promise<Result<Form>>;
  /** The first two stages only: check the measures and fit the body. */
  readonly fitBody: (project: Project) => Result<Body>;
  /** Lines, cut and strain of the seams alone, coarse and quick, while a line is dragged. */
  readonly previewSeams: PreviewSeams;
}

/** Panels about to be unrolled: whoever drives the steps may do so ahead. */
interface PanelsAhead {
  readonly problem: FlattenProblem;
  readonly options: FlattenOptions;
}

interface CutShell {
  readonly surface: ChartSurface;
  readonly shell: SeamedShell;
  readonly closedMesh: Mesh;
}

/** Pieces made of one form, and the inputs the next stage is known by. */
interface StageKeys {
  readonly body: string;
  readonly shell: string;
  readonly flat: string;
  readonly laid: string;
  readonly inside: string;
  readonly pieces: string;
}

/**
 * The stages in order: tape and body, seams, panels, inside, cutting. Each remembers its last result, so a wider seam allowance
 * does not fit the body again. A broken promise between rooms comes back as an issue, so that a person sees one.
 */
export function createPipeline(): Pipeline {
  const memory = {
    body: rememberLast<Body>(),
    shell: rememberLast<CutShell>(),
    flat: rememberLast<readonly FlatDisk[]>(),
    laid: rememberLast<readonly FlatDisk[]>(),
    /** Single panels, so that a moved seam unrolls only those next to it again. */
    panels: createFlattenMemory(),
    arms: rememberLast<FlatArms>(),
    inside: rememberLast<InsideDesign>(),
    shellPieces: rememberLast<CutPieces>(),
    pieces: rememberLast<CutPieces & Pick<Form, 'inside'>>(),
  };
  let lastBody: Body | undefined;
  const shapeBody = (project: Project, startFrom?: Body) => {
    const fitted = memory.body(keysOf(project, startFrom ? { isDraft: true } : {}).body, () =>
      within('body', fitBody(project.body, startFrom)),
    );
    if (fitted.ok) lastBody = fitted.value;
    return fitted;
  };

  function* makeInSteps(project: Project, options: MakeOptions): Generator<PanelsAhead, Result<Form>, void> {
    const keys = keysOf(project, options);
    const { upTo = 'cutting' } = options;
    const isUnrolled = upTo !== 'seams';
    const clock = startClock(options);
    const issues: Issue[] = [];
    const collect = <T>(result: Result<T>): result is Extract<Result<T>, { ok: true }> => {
      issues.push(...result.issues);
      return result.ok;
    };

    // 1. Tape and body.
    clock.enter('tape', 'Checking the measures');
    clock.enter('body', 'Shaping the body');
    const body = shapeBody(project, options.isDraft ? lastBody : undefined);
    const layout = layoutOf(project);
    issues.push(...body.issues, ...layout.issues);
    if (!body.ok || !layout.ok) return failure(issues);
    if (clock.isCancelled()) return cancelled(issues);

    // 2. Seams.
    clock.enter('seams', 'Drawing the seams');
    const cut = memory.shell(keys.shell, () =>
      within('seams', cutShell(body.value, layout.value, project.seams.bridging ?? USUAL_BRIDGING, options)),
    );
    if (!collect(cut)) return failure(issues);
    if (clock.isCancelled()) return cancelled(issues);

    // 3. Panels.
    clock.enter('panels', 'Unrolling the panels');
    const { shell, closedMesh } = cut.value;
    const problem = problemOf(shell, project);
    const flattenOptions: FlattenOptions = {
      ...(project.seams.lengthBlend === undefined ? {} : { seamLengthBlend: project.seams.lengthBlend }),
      ...(project.seams.wrinkleAversion === undefined
        ? {}
        : { wrinkleAversion: project.seams.wrinkleAversion }),
      memory: memory.panels,
      onProgress: clock.within,
      ...(options.isCancelled ? { isCancelled: options.isCancelled } : {}),
    };
    if (isUnrolled) yield { problem, options: flattenOptions };
    if (clock.isCancelled()) return cancelled(issues);
    const unroll = () => {
      const unrolled = flattenTogether(problem, flattenOptions);
      return within('seams', { ...unrolled, issues: nameFlattenIssues(unrolled.issues, shell) });
    };
    const flat = isUnrolled ? memory.flat(keys.flat, unroll) : success<readonly FlatDisk[]>([]);
    if (clock.isCancelled()) return cancelled(issues);
    if (!collect(flat)) return failure(issues);

    // 4. Inside: webs, sleeve and plates. Drafts go without.
    const { surface } = cut.value;
    const whole = { surface, body: body.value, shell, flat: flat.value, disks: problem.disks, closedMesh };
    clock.enter('inside', 'Designing webs and plates');
    const design =
      options.isDraft || upTo !== 'cutting'
        ? undefined
        : memory.inside(keys.inside, () => {
            const unrolledArms = memory.arms(keys.body, () => flattenArms(body.value.arms));
            return within('inside', designOfShell({ ...whole, unrolledArms }, project));
          });
    if (design && !collect(design)) return failure(issues);
    if (clock.isCancelled()) return cancelled(issues);

    // 5. Cutting, every panel laid along its grain.
    clock.enter('cutting', 'Drafting the pieces');
    const lay = () => layAlongGrain(shell, flat.value, project.cloth.grain);
    const laid = isUnrolled ? memory.laid(keys.laid, lay) : flat;
    if (!collect(laid)) return failure(issues);
    const drafted =
      upTo !== 'cutting'
        ? success(NO_PIECES)
        : memory.pieces(keys.pieces, () =>
            draftAll(
              { shell, flat: laid.value, neckV: body.value.landmarks.neckFront.v },
              design?.ok ? design.value : undefined,
              project,
              { date: options.date ?? '', speaker: options.speaker },
              keys.laid,
              memory.shellPieces,
            ),
          );
    if (!collect(drafted)) return failure(issues);

    const timingsMs = clock.finish();
    const made = { body: body.value, shell, closedMesh, flat: laid.value };
    const free = options.compareFree && isUnrolled ? measureFreeStrain(problem, flat.value) : undefined;
    issues.push(...(free?.issues ?? []));
    const cloth = findCloth(project.cloth.kind ?? '') ?? CLOTHS[0];
    const report = makeReport({
      ...made,
      cloth,
      ...(project.cloth.grain === undefined ? {} : { grain: project.cloth.grain }),
      ...(free?.ok ? { free: free.value } : {}),
      ...(drafted.value.inside === undefined ? {} : { inside: drafted.value.inside }),
      issues,
      timingsMs,
    });
    const form: Form = { project, ...made, ...drafted.value, report };
    return success(
      options.isDraft || upTo !== 'cutting' ? form : { ...form, workshop: makeWorkshop(form) },
      issues,
    );
  }

  const makeForm = (project: Project, options: MakeOptions): Result<Form> => {
    const steps = makeInSteps(project, options);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
    }
  };
  const makeFormShared: Pipeline['makeFormShared'] = async (project, options, elsewhere) => {
    const steps = makeInSteps(project, options);
    for (;;) {
      // Between the steps nothing else can break a promise: what fails elsewhere is solved again here.
      let ahead: PanelsAhead | undefined;
      const made = catchingBrokenPromises<Form>(() => {
        const step = steps.next();
        if (step.done) return step.value;
        ahead = step.value;
        return failure([]);
      });
      if (!ahead) return made;
      await flattenAhead(ahead.problem, ahead.options, elsewhere);
    }
  };

  const previewSeams = createSeamPreview(shapeBody);

  return {
    makeForm: (project, options) => catchingBrokenPromises(() => makeForm(project, options)),
    fitBody: (project) => catchingBrokenPromises(() => shapeBody(project)),
    makeFormShared,
    previewSeams: (project, options) => catchingBrokenPromises(() => previewSeams(project, options)),
  };
}

/** Makes one form, remembering nothing. */
export const makeForm: MakeForm = (project, options) => createPipeline().makeForm(project, options);

function keysOf(project: Project, options: Partial<MakeOptions>): StageKeys {
  // A draft body may depend on the one before it, so it never stands in for a final one.
  const body = JSON.stringify([project.body, options.isDraft ?? false]);
  const shell = JSON.stringify([
    body,
    project.seams.layout,
    project.seams.lines,
    project.seams.bridging,
    options.targetTriangles,
  ]);
  const flat = JSON.stringify([
    shell,
    project.seams.lengthBlend,
    project.seams.wrinkleAversion,
    takenOffBy(project.inside),
  ]);
  const laid = JSON.stringify([flat, project.cloth.grain]);
  const inside = JSON.stringify([flat, project.inside]);
  const pieces = JSON.stringify([inside, project.cloth, project.name, options.date, options.speaker?.key]);
  return { body, shell, flat, laid, inside, pieces };
}

function cutShell(body: Body, layout: SeamLayout, bridging: number, options: MakeOptions): Result<CutShell> {
  const surface = bridgeHollows(surfaceOfBody(body), body, bridging);
  const shell = cutIntoPanels(surface, body, layout, {
    targetTriangles: options.targetTriangles ?? defaultTriangles,
  });
  if (!shell.ok) return shell;
  const loops = shell.value.openings.map((opening) => opening.vertices);
  const closedMesh = capBoundaryLoops(shell.value.mesh, loops);
  return success({ surface, shell: shell.value, closedMesh }, shell.issues);
}

/** What is to be unrolled: smaller in girth than the body by growth and layers, if these were typed in. */
function problemOf(shell: SeamedShell, { inside }: Project): FlattenProblem {
  const problem = flattenProblemFromShell(shell);
  return doesTakeOff(inside) ? shrinkGirths(problem, shell, (girth) => cutGirth(girth, inside)) : problem;
}

/** The shell's pieces, and with a design the inner ones; those of the shell again only if they changed. */
function draftAll(
  whole: { readonly shell: SeamedShell; readonly flat: readonly FlatDisk[]; readonly neckV: number },
  design: InsideDesign | undefined,
  project: Project,
  { date, speaker }: Pick<MakeOptions, 'speaker'> & { readonly date: string },
  laidKey: string,
  remember: RememberLast<CutPieces>,
): Result<CutPieces & Pick<Form, 'inside'>> {
  const lines = design?.shape.panelLines ?? [];
  const order = orderSeams(whole.shell, whole.neckV).map(({ seam }) => seam.id);
  const drawn = lines.map(({ chart, ...line }) => ({ ...line, chart: Array.from(chart) }));
  const { key, say } = speaker;
  const shell = remember(JSON.stringify([laidKey, project.cloth, project.name, date, key, drawn]), () => {
    const inputs = pieceInputsFromShell(whole.shell, whole.flat, lines, order);
    return within('cloth', draftPieces(inputs, project, date, say));
  });
  if (!shell.ok || !design) return shell;
  const inner = within('inside', makeInside(design, shell.value.pieces, project, date, say));
  const issues = [...shell.issues, ...inner.issues];
  if (!inner.ok) return failure(issues);
  const drawings = [...shell.value.drawings, ...inner.value.drawings];
  return success({ pieces: shell.value.pieces, drawings, inside: inner.value.inside }, issues);
}

function within<T>(section: string, result: Result<T>): Result<T> {
  const issues = prefixIssues(result.issues, section);
  return result.ok ? success(result.value, issues) : failure(issues);
}

function cancelled(issues: readonly Issue[]): Result<Form> {
  const message = 'Stopped before the form was finished.';
  return failure([...issues, { code: 'cancelled', path: '', message: plain(message), severity: 'error' }]);
}

function catchingBrokenPromises<T>(work: () => Result<T>): Result<T> {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InvariantError)) throw error;
    const message = `Something went wrong inside the program, not in what you typed: ${error.message}.`;
    return failure([{ code: 'internal-fault', path: '', message: plain(message), severity: 'error' }]);
  }
}

/** Progress and time of each stage; time is 0 without a clock. */
function startClock(options: MakeOptions) {
  const now = options.now ?? (() => 0);
  const stages = Object.keys(stageStart) as StageId[];
  const timingsMs: Record<string, number> = {};
  let stage: StageId = 'tape';
  let since = now();
  const stop = () => {
    timingsMs[stage] = now() - since;
    since = now();
  };
  return {
    enter(next: StageId, what: string) {
      if (next !== stage) stop();
      stage = next;
      options.onProgress?.(stageStart[stage], stage, plain(what));
    },
    within(fraction: number, what: Phrase) {
      const end = stageStart[stages[stages.indexOf(stage) + 1]] ?? 1;
      const start = stageStart[stage];
      options.onProgress?.(start + (end - start) * Math.min(1, Math.max(0, fraction)), stage, what);
    },
    isCancelled: () => options.isCancelled?.() ?? false,
    finish() {
      stop();
      options.onProgress?.(1, stage, plain('Done'));
      return timingsMs;
    },
  };
}

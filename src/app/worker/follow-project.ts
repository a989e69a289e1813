import type { Issue, Phrase } from '../../core/base/index.ts';
import type { Form, LastStage } from '../../core/form/index.ts';
import type { Project } from '../../core/project/index.ts';
import { createLane, type Lane } from './create-lane.ts';
import { FULL_TRIANGLES, type MakeRequest, QUICK_TRIANGLES, type Voice } from './protocol.ts';

type Quality = 'quick' | 'full';

export interface FollowHandlers {
  onWork(work: { quality: Quality; fraction: number; what: Phrase | null } | null): void;
  onForm(form: Form, project: Project, quality: Quality): void;
  onFailure(issues: readonly Issue[], project: Project): void;
  /** How much of a rough form is looked at now: the less, the sooner it comes. */
  upTo(): LastStage;
  /** What pieces are lettered in now. */
  voice(): Voice;
}

export interface Follower {
  /** Makes a rough form now and a full one after a pause; a newer request takes the place of an older one. */
  request(project: Project): void;
  /** Stops everything under way. */
  stop(): void;
  /** Every file of the project, at full quality. */
  writeFiles: Lane['writeFiles'];
  sketchLayouts: Lane['sketchLayouts'];
  /** For dragging a seam: see `PreviewSeams`. */
  previewSeams: Lane['previewSeams'];
  unrollCut: Lane['unrollCut'];
  worstZones: Lane['worstZones'];
  adviseSeams: Lane['adviseSeams'];
  stopAdvice: Lane['stopAdvice'];
  outlineShape: Lane['outlineShape'];
  shapeBody: Lane['shapeBody'];
  pictureDistance: Lane['pictureDistance'];
  scatterBody: Lane['scatterBody'];
}

const PAUSE_MS = 120;
type How = Pick<MakeRequest, 'targetTriangles' | 'upTo'>;
const WHOLE: How = { targetTriangles: FULL_TRIANGLES, upTo: 'cutting' };
const SHAPE: How = { targetTriangles: FULL_TRIANGLES, upTo: 'seams' };

/**
 * Two workers: one answers quickly while the person types, the other makes the full form once they pause. The full
 * one is interrupted by every newer request, the quick one finishes and then takes the latest.
 */
export function followProject(
  handlers: FollowHandlers,
  { quick, full }: { readonly quick: Lane; readonly full: Lane } = startLanes(handlers.voice),
): Follower {
  let wanted: Project | null = null;
  let askedAt = 0;
  let isQuickBusy = false;
  let fullTimer: ReturnType<typeof setTimeout> | undefined;

  const runQuick = async (project: Project) => {
    isQuickBusy = true;
    handlers.onWork({ quality: 'quick', fraction: 0, what: null });
    const how = { targetTriangles: QUICK_TRIANGLES, upTo: handlers.upTo() };
    const made = await quick.make(project, how, () => {});
    isQuickBusy = false;
    if (wanted === null) return;
    if (made?.ok) handlers.onForm(made.value, project, 'quick');
    if (wanted !== project) return void runQuick(wanted);
    // The full form is tried all the same: a rough one starts from the body before, and may fail where it does not.
    if (made && !made.ok) handlers.onFailure(made.issues, project);
    fullTimer = setTimeout(() => void runFull(project), Math.max(0, askedAt + PAUSE_MS - performance.now()));
  };

  /** The full shape is there long before its pieces. False when it was stopped. */
  const showShape = async (project: Project) => {
    const made = await full.make(project, SHAPE, () => {});
    if (wanted !== project || !made) return false;
    if (made.ok) handlers.onForm(made.value, project, 'quick');
    return true;
  };

  const runFull = async (project: Project) => {
    handlers.onWork({ quality: 'full', fraction: 0, what: null });
    if (handlers.upTo() === 'seams' && !(await showShape(project))) return;
    const made = await full.make(project, WHOLE, (fraction, _stage, what) => {
      if (wanted === project && fraction < 1) handlers.onWork({ quality: 'full', fraction, what });
    });
    if (wanted !== project || !made) return;
    if (made.ok) handlers.onForm(made.value, project, 'full');
    else handlers.onFailure(made.issues, project);
    handlers.onWork(null);
  };

  return {
    request(project) {
      wanted = project;
      askedAt = performance.now();
      clearTimeout(fullTimer);
      full.stop();
      if (!isQuickBusy) void runQuick(project);
    },
    stop() {
      wanted = null;
      clearTimeout(fullTimer);
      full.stop();
      quick.stop();
    },
    writeFiles: full.writeFiles,
    sketchLayouts: quick.sketchLayouts,
    previewSeams: quick.previewSeams,
    unrollCut: quick.unrollCut,
    // On the full lane, so that typing is never kept waiting.
    worstZones: full.worstZones,
    adviseSeams: full.adviseSeams,
    stopAdvice: full.stopAdvice,
    outlineShape: full.outlineShape,
    shapeBody: full.shapeBody,
    pictureDistance: full.pictureDistance,
    scatterBody: quick.scatterBody,
  };
}

function startLanes(voice: () => Voice) {
  const start = (name: 'quick' | 'full') => () =>
    new Worker(new URL('./form-worker.ts', import.meta.url), { type: 'module', name });
  return { quick: createLane(start('quick'), voice), full: createLane(start('full'), voice) };
}

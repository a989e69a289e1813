import type { Project } from '../core/project/index.ts';
import { LAYOUTS } from '../core/seams/index.ts';
import {
  type Actions,
  type AppState,
  type AppStore,
  arePicturesAwaited,
  categoriesAsSeen,
  isFillingAwaited,
  isFormBehind,
  type Stage,
} from './store/index.ts';
import { type Follower, pictureChoices } from './worker/index.ts';

type Calls = Pick<Follower, 'sketchLayout' | 'sketchShape' | 'outlineShape'>;
type Receivers = Pick<Actions, 'receiveSketch' | 'receiveShapePictures'>;

/** Small pictures of what may be chosen are made of the body while that is looked at, from its first rough form on. */
export function keepPictures(store: AppStore, actions: Receivers, worker: Calls): void {
  whileLookedAt(store, 'seams', arePicturesAwaited, async (project, isWanted) => {
    for (const { id } of LAYOUTS) {
      if (!isWanted()) return;
      actions.receiveSketch(project.body, id, await worker.sketchLayout(project, id));
    }
  });
  const pictureShape = (project: Project, outline: Calls['outlineShape'], isWanted: () => boolean) =>
    pictureChoices(
      (category, choice) => outline(project, category, choice),
      categoriesAsSeen(project.body),
      isWanted,
      (category, outlines) => actions.receiveShapePictures(project.body, category, outlines),
    );
  whileLookedAt(store, 'body', arePicturesAwaited, (project, isWanted) =>
    pictureShape(project, worker.sketchShape, isWanted),
  );
  let finished: unknown = null;
  const canBeFinished = (state: AppState) =>
    finished !== state.project?.body &&
    !arePicturesAwaited(state) &&
    !isFormBehind(state) &&
    !isFillingAwaited(state);
  // They move by a millimetre or so: nothing else waits for that.
  whileLookedAt(store, 'body', canBeFinished, async (project, isWanted) => {
    await pictureShape(project, worker.outlineShape, isWanted);
    if (isWanted()) finished = project.body;
  });
}

/**
 * Runs `make` for the body looked at in a stage, once a form, be it a rough one, was made of it: while `isLacking`, anew for
 * another body, and again where it was left before its end.
 */
function whileLookedAt(
  store: AppStore,
  stage: Stage,
  isLacking: (state: AppState) => boolean,
  make: (project: Project, isWanted: () => boolean) => Promise<void>,
): void {
  let running: unknown = null;
  store.subscribe((now) => {
    const { project, formOf } = now;
    if (now.stage !== stage || !project || formOf?.body !== project.body) return;
    const { body } = project;
    if (running === body || !isLacking(now)) return;
    running = body;
    const isWanted = () => store.getState().stage === stage && store.getState().project?.body === body;
    void make(project, isWanted).finally(() => {
      if (running === body) running = null;
    });
  });
}

import { askOfProject, type PageCalls, type ViewCalls } from '../calls/index.ts';
import {
  type Actions,
  type AppStore,
  type BodyDatabase,
  type EarlierState,
  type KeyValueStore,
  readEarlierStates,
} from '../store/index.ts';
import { addClothPhotos, type ClothPhotos } from './add-cloth-photo.ts';
import { addPhotos, type Photos } from './add-photos.ts';
import { type Comparing, compareBodies } from './compare-bodies.ts';
import { type Demo, demos } from './demos.ts';
import { type Downloads, downloadFiles } from './download-files.ts';
import { handOverProgram, type ProgramItself } from './hand-over-program.ts';
import { type ScreenKeeping, screenKeeping } from './keep-screen-on.ts';
import { type LayingOut, layOut } from './lay-out.ts';
import { type Opening, openProjects } from './open-projects.ts';
import { type WardrobeOpening, wardrobeOpening } from './open-wardrobe.ts';
import { type DemoPictures, pictureDemos } from './picture-demos.ts';
import { type GuidanceMemory, rememberGuidance } from './remember-guidance.ts';
import { type ProblemReports, reportProblems } from './report-problems.ts';
import { type ProjectSaving, saveProjects } from './save-projects.ts';
import { type ShownSaving, saveShown } from './save-shown.ts';
import { type Speaking, speakLanguages } from './speak-languages.ts';
import { type FormMaker, steerWork, type WorkSteering } from './steer-work.ts';
import { type SeamTrial, trySeams } from './try-seams.ts';

/** What the views ask of the world outside: files, the browser and the worker. */
export interface Services
  extends Opening,
    WardrobeOpening,
    DemoPictures,
    Comparing,
    SeamTrial,
    Photos,
    ClothPhotos,
    ShownSaving,
    ProjectSaving,
    Downloads,
    LayingOut,
    ProblemReports,
    ProgramItself,
    Speaking,
    ScreenKeeping,
    GuidanceMemory,
    WorkSteering {
  readonly demos: readonly Demo[];
  /** What this browser kept before, newest first. */
  listEarlierStates(): readonly EarlierState[];
  /** Every call of the table. */
  readonly worker: ViewCalls;
}

/** What the services join. */
export interface World {
  readonly store: AppStore;
  readonly actions: Actions;
  readonly worker: PageCalls & FormMaker;
  readonly database: Promise<BodyDatabase>;
  readonly storage: KeyValueStore;
  readonly canDrawInSpace: boolean;
}

export function createServices({
  store,
  actions,
  worker,
  database,
  storage,
  canDrawInSpace,
}: World): Services {
  const opening = openProjects(store, actions);
  return {
    demos,
    ...pictureDemos(worker),
    ...opening,
    ...wardrobeOpening({ store, actions, worker, database }),
    listEarlierStates: () => readEarlierStates(storage),
    ...compareBodies(store, actions, worker, opening),
    ...trySeams(store, worker),
    ...addPhotos(store, actions),
    ...addClothPhotos(store, actions),
    ...saveShown(store, actions),
    ...saveProjects(store, actions),
    ...downloadFiles(store, actions, worker),
    ...layOut(store, actions, worker),
    ...reportProblems(store, actions, canDrawInSpace),
    ...handOverProgram(),
    ...speakLanguages(store, actions),
    ...screenKeeping(),
    ...rememberGuidance(storage),
    ...steerWork(store, actions, worker),
    worker: askOfProject(worker, () => store.getState().project),
  };
}

export { greaterStrain, STRAIN_LIMIT, strainColour, strainCss } from '../../core/flatten/index.ts';
export { catchPlace, sayCaught, surfaceDrawnOn } from './catch-place.ts';
export { cropRepeat, repeatOfPhoto, scaleClothPhoto } from './cloth-photo.ts';
export { type Actions, createActions } from './create-actions.ts';
export { type AppStore, createAppStore } from './create-app-store.ts';
export {
  distanceColour,
  FILLED_LOOKS,
  type FilledView,
  looseness,
  loosenessColour,
  MOST_DISTANCE,
  MOST_TENSION,
  positionsInView,
  sharesOfStates,
  tensionColour,
} from './filled-view.ts';
export { AS_FORETOLD, filledOrTried, trialIn, trialOf, triedIn } from './filling-trial.ts';
export { isMarkOf, isTapeLit, markId } from './highlights.ts';
export { keepBench, readKeptBench } from './keep-bench.ts';
export { keepBodies, newBodyId } from './keep-bodies.ts';
export { keepClothPhoto } from './keep-cloth-photo.ts';
export { keepLanguage, readKeptLanguage } from './keep-language.ts';
export { keepPhotos } from './keep-photos.ts';
export {
  type EarlierState,
  type Keeper,
  type KeyValueStore,
  keepProject,
  readEarlierStates,
  readKeptBodyId,
  readKeptProject,
  readKeptTheme,
  readUnreadableHistory,
  setAsideUnreadable,
} from './keep-project.ts';
export { isUnderWay } from './lay-actions.ts';
export {
  type FoundLay,
  isLaid,
  isShorter,
  type LayDrag,
  type LayKey,
  type LaySearch,
  type LaySeen,
  type LayWork,
  layInView,
  piecesOfForm,
  stockOf,
  trialOfForm,
  usesOfForm,
} from './lay-in-view.ts';
export { type LaidThread, layThread, namedChartPlaces, namedPlaces } from './lay-thread.ts';
export { lineFromPoints, traceDrawnLine } from './line-from-points.ts';
export {
  type BodyDatabase,
  type CardPicture,
  isOfNewerProgram,
  type KeptBodies,
  type KeptBody,
  type KeptCard,
  openBodyDatabase,
  type WholeBody,
} from './open-body-database.ts';
export { boxOf, keptPlaces, moveBy, stepBy, turnOn, turnsByHand, turnTo } from './place-by-hand.ts';
export {
  markAtPlace,
  photoSideOf,
  placeNewPhoto,
  placeOfMark,
  scaleByMarks,
} from './place-photo.ts';
export { type PrintTile, printTileOf } from './print-tile.ts';
export { repeatShift } from './repeat-shift.ts';
export { seamColour } from './seam-colour.ts';
export { type Section, sectionOfMesh } from './section-of-mesh.ts';
export {
  arePicturesAwaited,
  filledInView,
  guessIn,
  historyOf,
  isBegun,
  isFillingAwaited,
  isFormBehind,
  isSameForm,
  issuesOf,
  issuesOfMeasure,
  lacksFirstMeasure,
  placeAtBench,
  reaches,
  tapesOfMeasure,
} from './selectors.ts';
export { categoriesAsSeen, type PartOfShape, partsOfShape } from './shape-parts.ts';
export { sideOfSeam } from './side-of-seam.ts';
export { type SideOfSection, sidesOfSection } from './sides-of-section.ts';
export { type Silhouette, silhouetteOfMesh } from './silhouette-of-mesh.ts';
export { issuesOfStage, stageOfIssue } from './stage-of-issue.ts';
export { isShown, STAGES, stageOf } from './stages.ts';
export { today } from './today.ts';
export * from './types.ts';
export { VEIL_FROM, VEIL_TO, veilAt } from './veil-of-body.ts';
export {
  type BodyCard,
  describeBodies,
  layOutWardrobe,
  oneLength,
  personsOf,
  SIZE_MEASURES,
  WARDROBE_ORDERS,
  type WardrobeCard,
  type WardrobeOrder,
} from './wardrobe.ts';

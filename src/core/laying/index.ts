export {
  drawLay,
  type LayBox,
  type LayDrawing,
  placePiece,
  viewsOfPlan,
} from './draw-lay.ts';
export { drawLayPages, type LayPaper, tellOfPlan } from './draw-lay-pages.ts';
export { drawListToBuy } from './draw-list-to-buy.ts';
export { findFaults, type LayFault } from './find-faults.ts';
export { isAsKept, type LayProgress, type LayTask, layAll, layPieces } from './lay-pieces.ts';
export { type LaidForm, layTask, layTasks } from './lay-tasks.ts';
export { LAYING_OPTIONS } from './laying-options.ts';
export { type LengthToBuy, lengthToBuy } from './length-to-buy.ts';
export { listToBuy } from './list-to-buy.ts';
export {
  type ClothPrint,
  type MatchedPrint,
  type MotifPlace,
  type Phase,
  wayOfMeeting,
} from './match-print.ts';
export type { LayingPhrases } from './phrases.ts';
export { planOfPlaces } from './plan-of-places.ts';
export { type LayRules, rulesOfLay } from './rules-of-lay.ts';
export { snapPlace, stepPlace } from './snap-place.ts';
export type * from './types.ts';
export { findUse, piecesOfUse, USE_IDS, USES, type Use, type UseId } from './uses.ts';

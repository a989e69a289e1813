export { type CutUnknowns, changesOfRungs, movesOfPanel } from './cut-unknowns.ts';
export { designedBraces, type FilledChoices, filledProblem } from './filled-problem.ts';
export { type FitCutOptions, type FittedCut, fitCut } from './fit-cut.ts';
export { loadOfFilling } from './load-of-filling.ts';
export { measureFilled } from './measure-filled.ts';
export { MOST_SHARE, type TriedFilling, tryFilling } from './try-filling.ts';
export type * from './types.ts';
export { type GarmentSag, weighGarment } from './weigh-garment.ts';

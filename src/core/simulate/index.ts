export * from './filling-targets.ts';
export { divideFill, type FillZone } from './filling-zones.ts';
export { findTieChange, type HeldSection, type TieChange } from './find-tie-change.ts';
export { type Correction, type FillingContext, judgeFilling, type NamedSection } from './judge-filling.ts';
export type { SimulatePhrases } from './phrases.ts';
export { type PredictedLevel, predictLevels } from './predict-levels.ts';
export { wordCheck } from './word-check.ts';
export { type CorrectionWords, wordCorrection } from './word-correction.ts';

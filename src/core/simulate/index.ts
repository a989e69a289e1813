export { findTieChange, type HeldSection, type TieChange } from './find-tie-change.ts';
export { type ForetoldLevel, foretellLevels } from './foretell-levels.ts';
export { type Correction, judgeStuffing, type NamedSection, type StuffingContext } from './judge-stuffing.ts';
export type { SimulatePhrases } from './phrases.ts';
export * from './stuffing-targets.ts';
export { divideFill, type FillZone } from './stuffing-zones.ts';
export { wordCheck } from './word-check.ts';
export { type CorrectionWords, wordCorrection } from './word-correction.ts';

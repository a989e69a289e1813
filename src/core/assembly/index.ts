export { draftBare } from './draft-bare.ts';
export { draftGauges } from './draft-gauges.ts';
export type { DraftPhrases } from './draft-phrases.ts';
export { bodyInWords, type CutPieces, draftPieces } from './draft-pieces.ts';
export {
  changeBraces,
  type FittedFilling,
  fitFilling,
  movesOfCut,
  onBody,
  type TrialShell,
} from './fit-filled.ts';
export { type FlatArms, flattenArms } from './flatten-arms.ts';
export { flattenProblemFromShell } from './flatten-problem.ts';
export { heightOfWaist } from './height-of-waist.ts';
export { judgeFilled } from './judge-filled.ts';
export { layAlongGrain } from './lay-along-grain.ts';
export { checkLayout, layoutOf } from './layout-of-project.ts';
export { designOfShell, type InsideDesign, makeInside } from './make-inside.ts';
export { nameFlattenIssues } from './name-flatten-issues.ts';
export { type OrderedSeam, orderSeams } from './order-seams.ts';
export type { ArmNamePhrases, AssemblyPhrases } from './phrases.ts';
export { pieceInputsFromShell } from './piece-input.ts';
export { prefixIssues } from './prefix-issues.ts';
export { type CuttingOptions, readCutting } from './read-cutting.ts';
export { recutPanels } from './recut-panels.ts';
export { seamsAcross } from './seams-across.ts';
export { shrinkGirths } from './shrink-girths.ts';
export { doesHold, levelForStraps } from './straps-wanted.ts';
export { surfaceOfProject } from './surface-of-project.ts';
export {
  checkOpening,
  openingOfTrial,
  type TrialOpening,
  trialInputs,
  trialProjectOf,
} from './trial-shell.ts';

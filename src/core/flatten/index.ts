export type { AxisLimits, ClothId } from './cloth-limits.ts';
export { CLOTHS, type Cloth, findCloth } from './cloths.ts';
export { findGrain, type GrainChoice, measureGrain } from './find-grain.ts';
export { findOverLimit, type OverLimitZone } from './find-over-limit.ts';
export { findSelfCrossings } from './find-self-crossings.ts';
export { flattenFree } from './flatten-free.ts';
export { type FlattenJob, runFlattenJob } from './flatten-jobs.ts';
export { createFlattenMemory, type FlattenMemory, type JobResult } from './flatten-memory.ts';
export { flattenRounds } from './flatten-rounds.ts';
export {
  type FlattenPlan,
  finishFlatten,
  flattenTogether,
  matchSeams,
  planFlatten,
} from './flatten-together.ts';
export { type ClothAxis, type ClothStrain, measureClothStrain } from './measure-cloth-strain.ts';
export { type FormStrain, measureFormStrain } from './measure-form-strain.ts';
export { measureFreeStrain } from './measure-free-strain.ts';
export { measureStrain } from './measure-strain.ts';
export type { ClothPhrases, DiskPhrases, FlattenPhrases, UnrollingPhrases } from './phrases.ts';
export { pictureStrain } from './picture.ts';
export { greaterStrain, STRAIN_LIMIT, strainColour, strainCss } from './strain-colour.ts';
export { type PanelStretch, tracerOfPanels } from './trace-on-panels.ts';
export { turnFlat } from './turn-flat.ts';
export type * from './types.ts';
export { unrolling } from './unrolling.ts';

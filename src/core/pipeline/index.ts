export { adviseZone, type ZoneAdvice } from './advise-zone.ts';
export { createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';
export { EXPORT_FORMATS, type ExportFormat, type ExportOptions, exportForm } from './export-form.ts';
export { type FormFile, filesOfForm } from './files-of-form.ts';
export { checkLayout, layoutOf } from './layout-of-project.ts';
export { type DistanceMap, mapDistance } from './picture-comparison.ts';
export { picturePatch } from './picture-patch.ts';
export type { PreviewOptions, SeamPreview } from './preview-seams.ts';
export {
  type FormStrain,
  measureFormStrain,
  type ProposeOptions,
  proposeLine,
  proposeMoves,
  type SeamProposal,
} from './propose-seams.ts';
export { readCutting } from './read-cutting.ts';
export { surfaceOfProject } from './surface-of-project.ts';
export type * from './types.ts';
export {
  type FlatPatch,
  type FlatRegion,
  type RegionOptions,
  unrollJoined,
  unrollRegion,
} from './unroll-region.ts';
export { wordOrderOfWork } from './word-order-of-work.ts';
export type * from './work-step.ts';
export { type WorstZone, worstZones } from './worst-zones.ts';

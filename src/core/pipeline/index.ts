export { checkLayout, createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';
export { EXPORT_FORMATS, type ExportFormat, type ExportOptions, exportForm } from './export-form.ts';
export { type FormFile, filesOfForm } from './files-of-form.ts';
export {
  type FormStrain,
  measureFormStrain,
  type ProposeOptions,
  proposeLine,
  proposeMoves,
  type SeamProposal,
} from './propose-seams.ts';
export type * from './types.ts';

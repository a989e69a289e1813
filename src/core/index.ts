/**
 * The way from measures to files, for those who use the core as a library. What each room offers beyond it is had
 * from the rooms themselves: `loftseam/body`, `loftseam/seams`, ….
 */
export type { Issue, Result, Severity } from './base/index.ts';
export { FIRST_MEASURES, findMeasure, MEASURES, type MeasureDefinition } from './body/index.ts';
export { CLOTHS, type Cloth } from './flatten/index.ts';
export {
  createPipeline,
  EXPORT_FORMATS,
  type ExportFormat,
  type ExportOptions,
  exportForm,
  type Form,
  type FormFile,
  type MakeOptions,
  makeForm,
  type Pipeline,
  type Report,
  readCutting,
} from './pipeline/index.ts';
export { type Project, parseProject, serializeProject } from './project/index.ts';
export { LAYOUTS } from './seams/index.ts';
export { MATS, PAPERS } from './sheet/index.ts';

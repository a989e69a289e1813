/**
 * The way from measures to files, for those who use the core as a library. What each room offers beyond it is had
 * from the rooms themselves: `loftseam/body`, `loftseam/seams`, ….
 */

export { readCutting } from './assembly/index.ts';
export type { Issue, Result, Severity } from './base/index.ts';
export { FIRST_MEASURES, findMeasure, MEASURES, type MeasureDefinition } from './body/index.ts';
export {
  EXPORT_FORMATS,
  type ExportFormat,
  type ExportOptions,
  exportForm,
  type FormFile,
} from './files/index.ts';
export { CLOTHS, type Cloth } from './flatten/index.ts';
export type { Form, Report } from './form/index.ts';
export { createPipeline, type MakeOptions, makeForm, type Pipeline } from './pipeline/index.ts';
export { type Project, parseProject, serializeProject } from './project/index.ts';
export { LAYOUTS } from './seams/index.ts';
export { MATS, PAPERS } from './sheet/index.ts';

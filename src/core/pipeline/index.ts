export { createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';
export { reportOf } from './make-report.ts';
export type * from './types.ts';

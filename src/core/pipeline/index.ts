export { checkLayout, createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';
export { type FormFile, filesOfForm } from './files-of-form.ts';
export type * from './types.ts';

export { createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';
export type { PipelinePhrases } from './phrases.ts';

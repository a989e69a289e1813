export { createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';

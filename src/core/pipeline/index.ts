export { createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';
export { JOB_KINDS } from './job-kinds.ts';
export { createJobRunner, type Job, type RunJobsElsewhere } from './jobs.ts';
export type { MakeForm, MakeOptions } from './make-options.ts';
export { type LastStage, STAGES, type StageId } from './stages.ts';

export { createPipeline, makeForm, type Pipeline } from './create-pipeline.ts';
export type { MakeForm, MakeOptions } from './make-options.ts';
export { makeRefit, type Refit } from './make-refit.ts';
export { makeTrialShell, type ShellToTryOn } from './make-trial-shell.ts';
export type { PipelinePhrases } from './phrases.ts';
export { type LastStage, STAGES, type StageId } from './stages.ts';

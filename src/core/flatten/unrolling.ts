import type { JobKind } from '../base/index.ts';
import { type FlattenJob, keepJob, recallJob, runFlattenJob } from './flatten-jobs.ts';
import { createFlattenMemory, type FlattenMemory, type JobResult } from './flatten-memory.ts';

/** One panel, unrolled alone or to fit its neighbours, wherever there is time. */
export const unrolling: JobKind<FlattenJob, JobResult, FlattenMemory> = {
  id: 'unroll',
  createMemory: createFlattenMemory,
  run: runFlattenJob,
  recall: recallJob,
  keep: keepJob,
};

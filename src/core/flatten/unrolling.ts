import type { JobKind } from '../base/index.ts';
import {
  createFlattenMemory,
  type FlattenJob,
  type FlattenMemory,
  type JobResult,
  keepJob,
  recallJob,
  runFlattenJob,
} from './flatten-jobs.ts';

/** One panel, unrolled alone or to fit its neighbours, wherever there is time. */
export const unrolling: JobKind<FlattenJob, JobResult, FlattenMemory> = {
  id: 'unroll',
  createMemory: createFlattenMemory,
  run: runFlattenJob,
  recall: recallJob,
  keep: keepJob,
};

import {
  createFlattenMemory,
  type FlattenJob,
  type FlattenMemory,
  type JobResult,
  keepJob,
  recallJob,
  runFlattenJob,
} from '../flatten/index.ts';
import type { AnyJobKind, JobKind } from './jobs.ts';

/** One panel, unrolled alone or to fit its neighbours. */
export const unrolling: JobKind<FlattenJob, JobResult, FlattenMemory> = {
  id: 'unroll',
  createMemory: createFlattenMemory,
  run: runFlattenJob,
  recall: recallJob,
  keep: keepJob,
};

/** What another place must know to do: every kind that a step's rounds are made of. */
export const JOB_KINDS: readonly AnyJobKind[] = [unrolling];

import { expose } from 'comlink';
import { createJobRunner, failure } from '../../core/base/index.ts';
import { unrolling } from '../../core/flatten/index.ts';
import { issueOfDefect } from '../calls/index.ts';
import type { JobWorker } from './second-worker.ts';

/** Every kind that a step's rounds are made of; jobs of others come back, and are done where they were asked for. */
const runJob = createJobRunner([unrolling]);

/** Does jobs of any stage for the worker that started it. */
const service: JobWorker = {
  isReady: () => true,
  runJobs: (jobs, stopFlag) =>
    jobs.map((job) => {
      if (stopFlag && Atomics.load(stopFlag, 0) !== 0) return failure([]);
      try {
        return runJob(job);
      } catch (error) {
        // The one who asked does it again and tells.
        return failure([issueOfDefect(error)]);
      }
    }),
};

expose(service);

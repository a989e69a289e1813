import { expose } from 'comlink';
import { failure } from '../../core/base/index.ts';
import { createJobRunner, JOB_KINDS } from '../../core/pipeline/index.ts';
import { issueOfDefect } from './protocol.ts';
import type { JobWorker } from './second-worker.ts';

const runJob = createJobRunner(JOB_KINDS);

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

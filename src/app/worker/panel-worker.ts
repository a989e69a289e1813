import { expose } from 'comlink';
import { failure } from '../../core/base/index.ts';
import { createFlattenMemory, runFlattenJob } from '../../core/flatten/index.ts';
import { issueOfDefect } from '../calls/index.ts';
import type { PanelWorker } from './second-worker.ts';

const memory = createFlattenMemory();

/** Unrolls single panels for the worker that started it. */
const service: PanelWorker = {
  isReady: () => true,
  runJobs: (jobs, stopFlag) =>
    jobs.map((job) => {
      if (stopFlag && Atomics.load(stopFlag, 0) !== 0) return failure([]);
      try {
        return runFlattenJob(job, memory);
      } catch (error) {
        // The one who asked solves it again and tells.
        return failure([issueOfDefect(error)]);
      }
    }),
};

expose(service);

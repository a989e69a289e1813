import type { Job, Result, RunJobsElsewhere } from '../../core/base/index.ts';
import type { StopFlag } from '../calls/index.ts';
import { linkWorker } from './link-worker.ts';

/** Calls the second worker answers: jobs of any kind, for the worker that started it. */
export interface JobWorker {
  isReady(): boolean;
  /** Jobs not begun when the flag is raised come back as failures without issues. */
  runJobs(jobs: readonly Job[], stopFlag: StopFlag): readonly Result<unknown>[];
}

/** As `RunJobsElsewhere`; a stop flag that is raised leaves the jobs not yet begun undone. */
export type RunJobs = (jobs: readonly Job[], stopFlag: StopFlag) => ReturnType<RunJobsElsewhere>;

/** Its share takes about as long as ours. Past this, after ours is done, it is taken for dead. */
const PATIENCE_MS = 10_000;
const PATIENCE_SHARES = 3;

/**
 * Starts a second worker for jobs on another core. Until it has answered once, and for good when it cannot
 * start, breaks or keeps silent, work is refused and stays with the caller.
 */
export function startSecondWorker(start: () => Worker): RunJobs {
  let isReady = false;
  const link = linkWorker<JobWorker>(start);
  const giveUp = (reason: string) => {
    isReady = false;
    link.end(reason);
  };
  link
    .ask((remote) => remote.isReady())
    .then(
      () => {
        isReady = true;
      },
      () => {},
    );
  return async (jobs, stopFlag) => {
    if (!isReady) throw new Error('there is no second worker');
    const asked = performance.now();
    let timer: ReturnType<typeof setTimeout>;
    // The caller works on its own share first: time to wait begins when it comes to this.
    timer = setTimeout(() => {
      const share = performance.now() - asked;
      timer = setTimeout(
        () => giveUp('the second worker kept silent'),
        Math.max(PATIENCE_MS, PATIENCE_SHARES * share),
      );
    });
    try {
      return await link.ask((remote) => remote.runJobs(jobs, stopFlag));
    } catch (error) {
      isReady = false;
      throw error;
    } finally {
      clearTimeout(timer);
    }
  };
}

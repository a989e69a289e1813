import { wrap } from 'comlink';
import type { RunJobsElsewhere } from '../../core/flatten/index.ts';
import type { PanelWorker } from './protocol.ts';

/**
 * Starts a second worker for unrolling panels on another core. Until it has answered once, and for good when it cannot
 * start or breaks, work is refused at once and stays with the caller.
 */
export function startSecondWorker(): RunJobsElsewhere {
  let isReady = false;
  const refuse: RunJobsElsewhere = () => Promise.reject(new Error('there is no second worker'));
  if (typeof Worker === 'undefined' || navigator.hardwareConcurrency < 2) return refuse;
  try {
    const worker = new Worker(new URL('./panel-worker.ts', import.meta.url), {
      type: 'module',
      name: 'panels',
    });
    const remote = wrap<PanelWorker>(worker);
    const broken = new Promise<never>((_, reject) => {
      worker.onerror = () => {
        isReady = false;
        reject(new Error('the second worker broke'));
      };
    });
    broken.catch(() => {});
    remote.isReady().then(
      () => {
        isReady = true;
      },
      () => {},
    );
    return (jobs) => (isReady ? Promise.race([remote.runJobs(jobs), broken]) : refuse(jobs));
  } catch {
    return refuse;
  }
}

import { expose } from 'comlink';
import { implementCalls } from './implement-calls.ts';
import JobWorker from './job-worker.ts?worker';
import { readFont } from './read-font.ts';
import { startSecondWorker } from './second-worker.ts';

/** Only the worker of full forms has one: quick forms are too small to be worth sharing. */
const runElsewhere =
  self.name === 'full' && typeof Worker !== 'undefined' && navigator.hardwareConcurrency > 1
    ? startSecondWorker(() => new JobWorker({ name: 'jobs' }))
    : null;

expose(implementCalls({ runElsewhere, readFont }));

import { expose } from 'comlink';
import fontUrl from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import { implementCalls } from './implement-calls.ts';
import { startSecondWorker } from './second-worker.ts';

/** Only the worker of full forms has one: quick forms are too small to be worth sharing. */
const runElsewhere =
  self.name === 'full' && typeof Worker !== 'undefined' && navigator.hardwareConcurrency > 1
    ? startSecondWorker(
        () => new Worker(new URL('./job-worker.ts', import.meta.url), { type: 'module', name: 'jobs' }),
      )
    : null;

/** From beside the program. */
async function readFont(): Promise<Uint8Array> {
  const answer = await fetch(fontUrl);
  if (!answer.ok) throw new Error(`the letters for printing could not be read (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

expose(implementCalls({ runElsewhere, readFont }));

import { type Remote, wrap } from 'comlink';

/** What a call that is no longer wanted is refused with. */
export class CallDropped extends Error {}

/** How long a worker may go on with a call that was dropped before it is taken for stuck, ms. */
const STUCK_MS = 20_000;

/**
 * Calls to a worker that is started when first needed. Every call is settled: when the worker breaks or is ended, all that
 * wait are refused, and the next call starts a fresh one.
 */
export interface WorkerLink<Calls> {
  /**
   * `signal` drops the call: it is refused at once, while the worker may finish it unheard. A worker that does not come
   * back from it is replaced, and the calls behind it are asked again: calls must not mind being asked twice.
   */
  ask<Answer extends Promise<unknown>>(
    call: (remote: Remote<Calls>) => Answer,
    signal?: AbortSignal,
  ): Promise<Awaited<Answer>>;
  /** Ends the worker and refuses all that wait. */
  end(reason: string): void;
}

interface Waiting<Calls> {
  send(remote: Remote<Calls>): Promise<void>;
  refuse(error: Error): void;
}

export function linkWorker<Calls>(start: () => Worker): WorkerLink<Calls> {
  const waiting = new Set<Waiting<Calls>>();
  let present: { readonly worker: Worker; readonly remote: Remote<Calls> } | null = null;

  const leave = () => {
    present?.worker.terminate();
    present = null;
  };
  const end = (reason: string) => {
    leave();
    const refused = [...waiting];
    waiting.clear();
    for (const { refuse } of refused) refuse(new Error(reason));
  };
  const connect = () => {
    if (present) return present;
    const worker = start();
    const mine = { worker, remote: wrap<Calls>(worker) };
    // Handled here: an error left to itself goes on from a worker to the one that started it, and breaks that too.
    const onBreak = (event: ErrorEvent | MessageEvent) => {
      event.preventDefault();
      if (present === mine) end(('message' in event && event.message) || 'the worker could not start');
    };
    worker.onerror = onBreak;
    worker.onmessageerror = onBreak;
    present = mine;
    return mine;
  };
  const replace = () => {
    leave();
    for (const call of waiting) void call.send(connect().remote);
  };

  return {
    ask: (call, signal) =>
      new Promise((resolve, reject) => {
        let isAnswered = false;
        const entry: Waiting<Calls> = {
          async send(remote) {
            try {
              resolve(await call(remote));
            } catch (error) {
              reject(error);
            }
            isAnswered = true;
            waiting.delete(entry);
          },
          refuse: reject,
        };
        const { remote } = connect();
        waiting.add(entry);
        void entry.send(remote);
        signal?.addEventListener('abort', () => {
          const busy = present;
          waiting.delete(entry);
          reject(new CallDropped('dropped'));
          setTimeout(() => {
            if (!isAnswered && busy && present === busy) replace();
          }, STUCK_MS);
        });
      }),
    end,
  };
}

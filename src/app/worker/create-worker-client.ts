import { proxy } from 'comlink';
import {
  type AskedCalls,
  type CallName,
  callNames,
  rulesOf,
  type StopFlag,
  type StoppableCallName,
  type Voice,
} from '../calls/index.ts';
import { CallDropped, linkWorker } from './link-worker.ts';

/** The page's side of one worker, which does one thing at a time. */
export interface WorkerClient extends AskedCalls {
  /** Brings the latest call of this name to an early answer, where the page may share memory. */
  stopCall(name: StoppableCallName | 'makeForm'): void;
  /** Stops everything under way that can be stopped. */
  stop(): void;
}

type Ask = (...args: unknown[]) => Promise<unknown>;

/** A call under way that can be stopped. */
interface Run {
  readonly flag: StopFlag;
  /** Of a call that is dropped when it is stopped. */
  readonly dropped: AbortController | null;
}

/**
 * Carries every call of the table to a worker that is started when first needed. Where the page may share memory, stopping
 * raises a flag the computation polls and the worker stays warm. Elsewhere the worker is ended and a fresh one takes its
 * place.
 */
export function createWorkerClient(
  start: () => Worker,
  voice: () => Voice,
  canShare = globalThis.crossOriginIsolated === true,
): WorkerClient {
  const link = linkWorker<Record<CallName, Ask>>(start);
  /** The latest of each call. */
  const running = new Map<CallName, Run>();
  let keepingWorker = 0;

  const begin = (name: CallName): Run | null => {
    const { whenStopped } = rulesOf(name);
    if (whenStopped === undefined) return null;
    const run = {
      flag: canShare ? new Int32Array(new SharedArrayBuffer(4)) : null,
      dropped: whenStopped === 'isDropped' ? new AbortController() : null,
    };
    running.set(name, run);
    return run;
  };

  const askerOf = (name: CallName): Ask => {
    const { onDefect, keepsWorker, isLatestOnly, isWorded } = rulesOf(name);
    const ask: Ask = async (...args) => {
      const run = begin(name);
      const sent = [...args.map(asSent), ...(isWorded ? [voice()] : []), ...(run ? [run.flag] : [])];
      if (keepsWorker) keepingWorker += 1;
      try {
        return await link.ask((remote) => remote[name](...sent), run?.dropped?.signal);
      } catch (error) {
        return error instanceof CallDropped ? null : onDefect(error);
      } finally {
        if (keepsWorker) keepingWorker -= 1;
        if (run && running.get(name) === run) running.delete(name);
      }
    };
    return isLatestOnly ? latestOnly(ask) : ask;
  };

  return {
    ...(Object.fromEntries(callNames.map((name) => [name, askerOf(name)])) as unknown as AskedCalls),
    stopCall: (name) => raise(running.get(name)?.flag),
    stop() {
      for (const [name, { flag, dropped }] of [...running]) {
        raise(flag);
        if (!dropped) continue;
        running.delete(name);
        dropped.abort();
        if (!flag && keepingWorker === 0) link.end('stopped');
      }
    },
  };
}

/** Functions stay here and are called back. */
function asSent(argument: unknown): unknown {
  return typeof argument === 'function' ? proxy(argument) : argument;
}

function raise(flag: StopFlag | undefined): void {
  if (flag) Atomics.store(flag, 0, 1);
}

/** While one is being answered only the latest of those asked waits; the others are answered null when its turn comes. */
function latestOnly(ask: Ask): Ask {
  let asked = 0;
  let underWay: Promise<unknown> = Promise.resolve();
  return async (...args) => {
    asked += 1;
    const mine = asked;
    await underWay;
    if (mine !== asked) return null;
    underWay = ask(...args);
    return await underWay;
  };
}

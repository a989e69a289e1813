import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CallDropped, linkWorker } from '../../src/app/worker/link-worker.ts';
import { type PretendWorker, pretendWorker } from './fixtures/pretend-worker.ts';

interface Calls {
  double(x: number): number;
  never(): Promise<string>;
}

const healthy: Calls = { double: (x) => 2 * x, never: () => new Promise(() => {}) };

/** A link whose workers are the given ones, one after the other; the last serves for good. */
function linkTo(...workers: PretendWorker[]) {
  let started = 0;
  const link = linkWorker<Calls>(() => workers[Math.min(started++, workers.length - 1)].worker);
  return { link, countStarted: () => started };
}

describe('a link to a worker', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
  afterEach(() => void vi.useRealTimers());

  it('starts one worker for many calls', async () => {
    const { link, countStarted } = linkTo(pretendWorker(healthy));
    expect(await Promise.all([1, 2, 3].map((x) => link.ask((remote) => remote.double(x))))).toEqual([
      2, 4, 6,
    ]);
    expect(countStarted()).toBe(1);
  });

  it('refuses every waiting call when the worker breaks, and starts a fresh one', async () => {
    const broken = pretendWorker(healthy);
    const { link, countStarted } = linkTo(broken, pretendWorker(healthy));
    const waiting = [1, 2].map(() => link.ask((remote) => remote.never()));
    broken.fail('out of memory');
    for (const call of waiting) await expect(call).rejects.toThrow('out of memory');
    expect(broken.isEnded()).toBe(true);
    expect(await link.ask((remote) => remote.double(4))).toBe(8);
    expect(countStarted()).toBe(2);
  });

  it('refuses every waiting call when the worker is ended', async () => {
    const { link } = linkTo(pretendWorker(healthy));
    const waiting = link.ask((remote) => remote.never());
    link.end('stopped');
    await expect(waiting).rejects.toThrow('stopped');
  });

  it('refuses a call when no worker can be started', async () => {
    const link = linkWorker<Calls>(() => {
      throw new Error('not allowed');
    });
    await expect(link.ask((remote) => remote.double(1))).rejects.toThrow('not allowed');
  });

  it('replaces a worker that does not come back from a dropped call, and asks again what waits behind it', async () => {
    const stuck = pretendWorker(null);
    const { link } = linkTo(stuck, pretendWorker(healthy));
    const dropped = new AbortController();
    const call = link.ask((remote) => remote.never(), dropped.signal);
    dropped.abort();
    await expect(call).rejects.toBeInstanceOf(CallDropped);
    const behind = link.ask((remote) => remote.double(5));
    vi.advanceTimersByTime(19_000);
    expect(stuck.isEnded()).toBe(false);
    vi.advanceTimersByTime(2_000);
    expect(stuck.isEnded()).toBe(true);
    expect(await behind).toBe(10);
  });

  it('keeps a worker that came back from a dropped call', async () => {
    const worker = pretendWorker(healthy);
    const { link } = linkTo(worker);
    const dropped = new AbortController();
    const call = link.ask((remote) => remote.double(1), dropped.signal);
    dropped.abort();
    await expect(call).rejects.toBeInstanceOf(CallDropped);
    expect(await link.ask((remote) => remote.double(2))).toBe(4);
    vi.advanceTimersByTime(60_000);
    expect(worker.isEnded()).toBe(false);
  });
});

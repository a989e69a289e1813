import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startSecondWorker } from '../../src/app/worker/second-worker.ts';
import { type PretendWorker, pretendWorker } from './fixtures/pretend-worker.ts';

const answers = { isReady: () => true, runJobs: () => [{ ok: false, issues: [] }] };
const mute = { isReady: () => true, runJobs: () => new Promise(() => {}) };

/** Ready once it has answered the first question. */
async function startReady(second: PretendWorker) {
  const run = startSecondWorker(() => second.worker);
  await vi.waitFor(async () => {
    const waiting = run([], null);
    await Promise.race([waiting, new Promise((resolve) => setImmediate(resolve))]);
  });
  return run;
}

describe('a second worker', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] }));
  afterEach(() => void vi.useRealTimers());

  it('refuses work until it has answered once', async () => {
    const run = startSecondWorker(() => pretendWorker(null).worker);
    await expect(run([], null)).rejects.toThrow('no second worker');
  });

  it('is refused for good when it cannot be started', async () => {
    const run = startSecondWorker(() => {
      throw new Error('not allowed');
    });
    await expect(run([], null)).rejects.toThrow('no second worker');
  });

  it('answers', async () => {
    const run = await startReady(pretendWorker(answers));
    expect(await run([], null)).toEqual([{ ok: false, issues: [] }]);
  });

  it('gives its work back when it breaks', async () => {
    const second = pretendWorker(mute);
    const run = await startReady(second);
    const work = run([], null);
    second.fail('gone');
    await expect(work).rejects.toThrow('gone');
    await expect(run([], null)).rejects.toThrow('no second worker');
  });

  it('gives its work back when it keeps silent, but only a good while after the caller has done its own', async () => {
    const second = pretendWorker(mute);
    const run = await startReady(second);
    const work = run([], null);
    const refused = expect(work).rejects.toThrow('kept silent');
    vi.advanceTimersByTime(1);
    vi.advanceTimersByTime(9_000);
    expect(second.isEnded()).toBe(false);
    vi.advanceTimersByTime(2_000);
    await refused;
    expect(second.isEnded()).toBe(true);
    await expect(run([], null)).rejects.toThrow('no second worker');
  });
});

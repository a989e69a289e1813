import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { MakeWish } from '../../src/app/calls/index.ts';
import type { WorkerClient } from '../../src/app/worker/create-worker-client.ts';
import { followProject } from '../../src/app/worker/follow-project.ts';
import { failure, type Issue, type Result, success, verbatim } from '../../src/core/base/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import type { Project } from '../../src/core/project/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const refusal: Issue = { code: 'test', path: '', message: verbatim('No.'), severity: 'error' };
const formOf = (project: Project, fills = false) => ({ project, ...(fills ? { filled: {} } : {}) }) as Form;

/**
 * A client that takes `ms` for every form and can be stopped, as the real one; what it tells of the progress may come late,
 * as the order of messages is kept within one port only (HTML standard, 9.4). It does one thing at a time: another call waits
 * for the form under way.
 */
function pretendClient(ms: number, makeOne: MakeOne): WorkerClient {
  let stop: (() => void) | null = null;
  let end: (() => void) | null = null;
  const makeForm = (project: Project, wish: MakeWish, onProgress: (fraction: number) => void) =>
    new Promise<Result<Form> | null>((resolve) => {
      const answer = (made: Result<Form> | null) => {
        end = null;
        resolve(made);
      };
      stop = () => answer(null);
      end = () => answer(failure([refusal]));
      const takes = wish.fills ? FILLING_MS : ms;
      setTimeout(() => answer(makeOne(project, wish)), takes);
      setTimeout(() => onProgress(0.5), takes + 5);
    });
  const other = async () => {
    while (end) await new Promise((resolve) => setTimeout(resolve, 10));
    return 'answered';
  };
  const calls = { uncertaintyOfBody: other, writeFiles: other };
  return { makeForm, ...calls, stop: () => stop?.(), stopCall: () => end?.() } as unknown as WorkerClient;
}

type MakeOne = (project: Project, wish: MakeWish) => Result<Form>;
const FILLING_MS = 3_000;
/** Longer than anything takes here. */
const LONG_MS = 20_000;

function follow(makeQuick: MakeOne, makeFull = makeQuick) {
  const seen = {
    full: null as Project | null,
    filled: null as Project | null,
    work: null as unknown,
    failures: 0,
    awaitsFilled: true,
  };
  const follower = followProject(
    {
      onWork: (work) => {
        seen.work = work;
      },
      onForm: (form, project, quality) => {
        if (quality === 'full') seen.full = project;
        if (form.filled) seen.filled = project;
      },
      onFailure: () => {
        seen.failures += 1;
      },
      upTo: () => 'seams',
      awaitsFilled: () => seen.awaitsFilled,
      voice: () => ({ language: 'en', locale: 'en' }),
    },
    { quick: pretendClient(30, makeQuick), full: pretendClient(200, makeFull) },
  );
  return { seen, follower };
}

const works: MakeOne = (project, { fills }) => success(formOf(project, fills));
const fails = () => failure<Form>([refusal]);

describe('following the project', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('always comes to the full form of the latest, whatever was asked and stopped before', async () => {
    const step = fc.record({
      wait: fc.integer({ min: 0, max: 700 }),
      what: fc.constantFrom('new', 'same', 'stop', 'stop and ask again'),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 12 }), async (steps) => {
        const { seen, follower } = follow(works);
        let latest = projectForTests();
        follower.request(latest);
        for (const { wait, what } of steps) {
          await vi.advanceTimersByTimeAsync(wait);
          if (what.startsWith('stop')) follower.stop();
          if (what === 'new') latest = projectForTests();
          if (what !== 'stop') follower.request(latest);
        }
        if (steps.at(-1)?.what === 'stop') follower.request(latest);
        await vi.advanceTimersByTimeAsync(LONG_MS);
        expect(seen.full).toBe(latest);
        expect(seen.filled).toBe(latest);
        expect(seen.work).toBeNull();
      }),
      { numRuns: 200 },
    );
  });

  it('makes the full form although the rough one failed, and tells both', async () => {
    const { seen, follower } = follow(fails, works);
    const project = projectForTests();
    follower.request(project);
    await vi.advanceTimersByTimeAsync(100);
    expect(seen.failures).toBe(1);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(seen.full).toBe(project);
    expect(seen.work).toBeNull();
  });

  it('shows the full form as soon as ever, and then the one cut for its filling', async () => {
    const { seen, follower } = follow(works);
    const project = projectForTests();
    follower.request(project);
    // 120 of pause, and twice 200: the shape, and the whole of it.
    await vi.advanceTimersByTimeAsync(530);
    expect(seen).toMatchObject({ full: project, filled: null, work: null });
    await vi.advanceTimersByTimeAsync(500);
    expect(seen).toMatchObject({ filled: null, work: { quality: 'full' } });
    await vi.advanceTimersByTimeAsync(FILLING_MS);
    expect(seen).toMatchObject({ filled: project, work: null });
  });

  it('fills nothing where the project has its panels cut as unrolled', async () => {
    const { seen, follower } = follow(works);
    const project = { ...projectForTests(), inside: { recut: false } };
    follower.request(project);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(seen).toMatchObject({ full: project, filled: null, work: null });
  });

  it('waits longer to fill what nobody looks at, until somebody does', async () => {
    const { seen, follower } = follow(works);
    seen.awaitsFilled = false;
    follower.request(projectForTests());
    await vi.advanceTimersByTimeAsync(530 + 3_000);
    expect(seen.work).toBeNull();
    seen.awaitsFilled = true;
    follower.noticeStage();
    await vi.advanceTimersByTimeAsync(500);
    expect(seen.work).not.toBeNull();
  });

  it('answers what is asked while it fills, and then fills', async () => {
    const { seen, follower } = follow(works);
    const project = projectForTests();
    follower.request(project);
    await vi.advanceTimersByTimeAsync(530 + 1_500);
    expect(seen.work).not.toBeNull();
    const answered = vi.fn();
    void follower.uncertaintyOfBody(project).then(answered);
    await vi.advanceTimersByTimeAsync(100);
    expect(answered).toHaveBeenCalledWith('answered');
    expect(seen).toMatchObject({ filled: null, work: null, failures: 0 });
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(seen).toMatchObject({ filled: project, work: null, failures: 0 });
  });

  it('lets files, which need it, wait for the filled form', async () => {
    const { seen, follower } = follow(works);
    const project = projectForTests();
    follower.request(project);
    await vi.advanceTimersByTimeAsync(530 + 1_500);
    const filledFirst = vi.fn();
    void follower.writeFiles(project, { formats: ['svg'] }, () => true).then(() => filledFirst(seen.filled));
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(filledFirst).toHaveBeenCalledWith(project);
  });

  it('keeps the full form when it cannot be filled, and tells why', async () => {
    const { seen, follower } = follow((project, wish) => (wish.fills ? fails() : works(project, wish)));
    const project = projectForTests();
    follower.request(project);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(seen).toMatchObject({ full: project, filled: null, work: null, failures: 1 });
  });

  it('comes to rest when nothing can be made', async () => {
    const { seen, follower } = follow(fails);
    follower.request(projectForTests());
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(seen).toMatchObject({ full: null, work: null, failures: 2 });
  });
});

import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { WorkerClient } from '../../src/app/worker/create-worker-client.ts';
import { followProject } from '../../src/app/worker/follow-project.ts';
import { failure, type Issue, type Result, success, verbatim } from '../../src/core/base/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import type { Project } from '../../src/core/project/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const refusal: Issue = { code: 'test', path: '', message: verbatim('No.'), severity: 'error' };
const formOf = (project: Project) => ({ project }) as Form;

/**
 * A client that takes `ms` for every form and can be stopped, as the real one; what it tells of the progress may come late,
 * as the order of messages is kept within one port only (HTML standard, 9.4).
 */
function pretendClient(ms: number, makeOne: (project: Project) => Result<Form>): WorkerClient {
  let stop: (() => void) | null = null;
  const makeForm = (project: Project, _wish: unknown, onProgress: (fraction: number) => void) =>
    new Promise<Result<Form> | null>((resolve) => {
      stop = () => resolve(null);
      setTimeout(() => resolve(makeOne(project)), ms);
      setTimeout(() => onProgress(0.5), ms + 5);
    });
  return { makeForm, stop: () => stop?.() } as unknown as WorkerClient;
}

function follow(makeQuick: (project: Project) => Result<Form>, makeFull = makeQuick) {
  const seen = { full: null as Project | null, work: null as unknown, failures: 0 };
  const follower = followProject(
    {
      onWork: (work) => {
        seen.work = work;
      },
      onForm: (_form, project, quality) => {
        if (quality === 'full') seen.full = project;
      },
      onFailure: () => {
        seen.failures += 1;
      },
      upTo: () => 'seams',
      voice: () => ({ language: 'en', locale: 'en' }),
    },
    { quick: pretendClient(30, makeQuick), full: pretendClient(200, makeFull) },
  );
  return { seen, follower };
}

const works = (project: Project) => success(formOf(project));
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
        await vi.advanceTimersByTimeAsync(2_000);
        expect(seen.full).toBe(latest);
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
    await vi.advanceTimersByTimeAsync(2_000);
    expect(seen.full).toBe(project);
    expect(seen.work).toBeNull();
  });

  it('comes to rest when nothing can be made', async () => {
    const { seen, follower } = follow(fails);
    follower.request(projectForTests());
    await vi.advanceTimersByTimeAsync(2_000);
    expect(seen).toEqual({ full: null, work: null, failures: 2 });
  });
});

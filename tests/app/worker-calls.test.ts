/**
 * Every call of the table, carried to a worker served in this thread. What is expected of each is written down here, from
 * what the page was promised before there was a table; calls added later are held to the general rules.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import {
  askOfProject,
  type CallName,
  callNames,
  type ImplementedCalls,
  type PageCalls,
  pageCallNames,
} from '../../src/app/calls/index.ts';
import { createWorkerClient, type WorkerClient } from '../../src/app/worker/create-worker-client.ts';
import { followProject } from '../../src/app/worker/follow-project.ts';
import { implementCalls } from '../../src/app/worker/implement-calls.ts';
import type { Result } from '../../src/core/base/index.ts';
import type { Body } from '../../src/core/body/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';
import { pretendWorker } from './fixtures/pretend-worker.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const TOLD_AS_ISSUES = [
  ...['makeForm', 'writeFiles', 'previewSeams', 'flattenCut', 'worstZones', 'adviseSeams', 'tryFilling'],
  'planPrint',
];
const ON_QUICK = ['sketchLayout', 'sketchShape', 'previewSeams', 'flattenCut', 'scatterBody', 'guessBody'];
const ON_FULL = [
  ...['writeFiles', 'worstZones', 'adviseSeams', 'outlineShape', 'shapeBody', 'pictureDistance'],
  ...['tryFilling', 'planPrint', 'drawSteps'],
];
/** Lettered in the page's language: pieces, files, pictures. */
const WORDED = [
  'makeForm',
  'writeFiles',
  'planPrint',
  'flattenCut',
  'worstZones',
  'pictureDistance',
  'drawSteps',
];
const STOPPABLE = ['makeForm', 'adviseSeams'];

type Asked = (...args: unknown[]) => Promise<unknown>;
/** A call by its name, with whatever arguments. */
const call = (calls: object, name: CallName): Asked => (calls as Record<CallName, Asked>)[name];

const voice = () => ({ language: 'en', locale: 'en' }) as const;

/** A client of one worker which does `every` for every call, or what `some` say. */
function clientOf(every: (name: CallName, args: unknown[]) => unknown, some: object = {}, canShare = true) {
  const all = callNames.map((name) => [name, (...args: unknown[]) => every(name, args)]);
  const pretend = pretendWorker({ ...Object.fromEntries(all), ...some });
  const start = vi.fn(() => pretend.worker);
  return { pretend, start, client: createWorkerClient(start, voice, canShare) };
}
const never = () => new Promise(() => {});

/** The reason is among the issues of a result, or the answer says there is nothing. */
function expectTold(name: CallName, answer: unknown, reason: string) {
  if (answer !== null && typeof answer === 'object' && 'ok' in answer) {
    const { ok, issues } = answer as Result<unknown>;
    expect([name, ok, issues.map(({ code }) => code)]).toEqual([name, false, ['internal-fault']]);
    expect(inEnglish(issues[0].message)).toContain(reason);
  } else {
    expect(TOLD_AS_ISSUES).not.toContain(name);
    expect([null, {}]).toContainEqual(answer);
  }
}

describe('every call of the table', () => {
  it.each(callNames)('%s reaches what the worker does for it, and is answered', async (name) => {
    const seen: unknown[] = [];
    const { client } = clientOf((called, args) => {
      seen.push(called, ...args);
      return { answerTo: called };
    });
    const given = [{ of: name }, 7, 'as it is'];
    expect(await call(client, name)(...given)).toEqual({ answerTo: name });
    expect(seen.slice(0, 4)).toEqual([name, ...given]);
    // Those that letter something are told the language.
    const spoken = WORDED.includes(name) ? [voice()] : [];
    expect(seen.slice(4, 4 + spoken.length)).toEqual(spoken);
    // Only calls that can be stopped are given a flag to look at, in memory both sides see.
    const rest = seen.slice(4 + spoken.length) as Int32Array[];
    if (STOPPABLE.includes(name)) expect(rest[0].buffer).toBeInstanceOf(SharedArrayBuffer);
    else if ([...ON_QUICK, ...ON_FULL].includes(name)) expect(rest).toEqual([]);
    expect(rest.length).toBeLessThanOrEqual(1);
  });

  it.each(callNames)('%s tells when what it does throws', async (name) => {
    const { client } = clientOf(() => {
      throw new Error('a broken promise');
    });
    expectTold(name, await call(client, name)(), 'a broken promise');
  });

  it.each(callNames)('%s tells when the worker breaks', async (name) => {
    const { client, pretend } = clientOf(never);
    const answer = call(client, name)();
    // A call that waits its turn is sent a moment later.
    await new Promise((resolve) => setTimeout(resolve));
    pretend.fail('out of memory');
    expectTold(name, await answer, 'out of memory');
  });

  it.each(pageCallNames)('%s goes to its own worker', async (name) => {
    const clients = { quick: clientOf(() => 'quick').client, full: clientOf(() => 'full').client };
    const nobody = {
      onWork() {},
      onForm() {},
      onFailure() {},
      upTo: () => 'seams' as const,
      awaitsFilled: () => false,
      voice,
    };
    const answer = await call(followProject(nobody, clients), name)();
    if (ON_QUICK.includes(name)) expect(answer).toBe('quick');
    else if (ON_FULL.includes(name)) expect(answer).toBe('full');
    else expect(['quick', 'full']).toContain(answer);
  });

  it('is done by the worker, and the worker does no other', () => {
    const done = implementCalls({ runElsewhere: null, readFont: () => Promise.reject() });
    expect(Object.keys(done).sort()).toEqual([...callNames].sort());
    expect(callNames).toEqual(expect.arrayContaining(['makeForm', ...ON_QUICK, ...ON_FULL]));
  });
});

describe('the calls as the worker does them', () => {
  const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
  const read = parseProject(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
  const demo = read.value;
  const done: ImplementedCalls = implementCalls({ runElsewhere: null, readFont: () => Promise.reject() });
  const client = createWorkerClient(() => pretendWorker(done).worker, voice, true);

  it('come back over the line', async () => {
    const body = (await client.shapeBody(demo)) as Body;
    // A body lies nowhere off itself.
    const same = await client.pictureDistance(body, body);
    expect(same?.rms).toBeLessThan(1e-6);
    expect(same?.picture).toContain('<svg');
    const points = await client.scatterBody(demo);
    expect((points?.length ?? 1) % 3).toBe(0);
    expect((await client.sketchLayout(demo, 'upright8'))?.lines.length).toBeGreaterThan(3);
    expect(await client.sketchLayout(demo, 'no such layout')).toBeNull();
  });

  it('call back while they go on', async () => {
    const progress: number[] = [];
    const wish = { targetTriangles: 1_500, upTo: 'seams' } as const;
    const made = await client.makeForm(demo, wish, (fraction) => void progress.push(fraction));
    expect(made?.ok).toBe(true);
    await vi.waitFor(() => expect(progress.length).toBeGreaterThan(2));
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
  });

  it('tell a defect, here a project without a body', async () => {
    const broken = { ...demo, body: null } as unknown as typeof demo;
    expectTold('flattenCut', await client.flattenCut(broken, { loop: new Float64Array(6) }), 'null');
    expectTold('scatterBody', await client.scatterBody(broken), '');
  });
});

describe('calls asked faster than they are answered', () => {
  it('leaves those out that a later one overtook, and no other', async () => {
    let free = () => {};
    const asked: unknown[] = [];
    const { client } = clientOf((_name, [what]) => {
      asked.push(what);
      return what === 1 ? new Promise((resolve) => (free = () => resolve(1))) : what;
    });
    const preview = call(client, 'previewSeams');
    const first = preview(1);
    await vi.waitFor(() => expect(asked).toEqual([1]));
    const others = [2, 3, 4].map((what) => preview(what));
    free();
    expect(await Promise.all([first, ...others])).toEqual([1, null, null, 4]);
    expect(asked).toEqual([1, 4]);
  });
});

describe('calls that are stopped', () => {
  /** What a call is given last, once it is under way. */
  const flagOf = (args: unknown[]) => args.at(-1) as Int32Array | null;
  const untilRaised = async (flag: Int32Array | null) => {
    while (flag && Atomics.load(flag, 0) === 0) await new Promise((resolve) => setTimeout(resolve, 1));
    return 'as far as it came';
  };
  const follow = (client: WorkerClient, name: CallName) => call(client, name)();

  it('drops a form and leaves the worker', async () => {
    const stopped = vi.fn();
    const { client, pretend } = clientOf((_name, args) => untilRaised(flagOf(args)).then(stopped));
    const form = follow(client, 'makeForm');
    client.stop();
    expect(await form).toBeNull();
    await vi.waitFor(() => expect(stopped).toHaveBeenCalledOnce());
    expect(pretend.isEnded()).toBe(false);
  });

  it.each(['stopCall', 'stop'] as const)('lets advice come to an early answer by %s', async (how) => {
    const { client } = clientOf((_name, args) => untilRaised(flagOf(args)));
    const advice = follow(client, 'adviseSeams');
    if (how === 'stop') client.stop();
    else client.stopCall('adviseSeams');
    expect(await advice).toBe('as far as it came');
  });

  it('does not stop a form when only the advice is stopped', async () => {
    let isFormStopped = false;
    const { client } = clientOf((name, args) =>
      untilRaised(flagOf(args)).then(() => {
        isFormStopped ||= name === 'makeForm';
      }),
    );
    const form = follow(client, 'makeForm');
    const advice = follow(client, 'adviseSeams');
    client.stopCall('adviseSeams');
    await advice;
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(isFormStopped).toBe(false);
    client.stop();
    await form;
  });

  it('ends the worker where memory is not shared, and tells those behind', async () => {
    const { client, pretend } = clientOf(never, {}, false);
    const form = follow(client, 'makeForm');
    const zones = follow(client, 'worstZones');
    client.stop();
    expect(await form).toBeNull();
    expect(pretend.isEnded()).toBe(true);
    expectTold('worstZones', await zones, 'stopped');
  });

  it('never ends the worker under files being written', async () => {
    const { client, pretend } = clientOf(never, { writeFiles: () => 'files' }, false);
    const form = follow(client, 'makeForm');
    const files = follow(client, 'writeFiles');
    client.stop();
    expect(await form).toBeNull();
    expect(pretend.isEnded()).toBe(false);
    expect(await files).toBe('files');
  });

  it('starts no worker to stop nothing', () => {
    const { client, start } = clientOf(never);
    client.stop();
    client.stopCall('adviseSeams');
    expect(start).not.toHaveBeenCalled();
  });
});

describe('calls as the views ask them', () => {
  const OF_PRESENT = ['writeFiles', 'flattenCut', 'worstZones', 'adviseSeams'];

  it.each(OF_PRESENT as (keyof PageCalls)[])('%s is about the project as it is then', async (name) => {
    const { client } = clientOf((_name, args) => args.slice(0, 2));
    let present: ReturnType<typeof projectForTests> | null = null;
    const asked = askOfProject(client, () => present);
    expect(await call(asked, name)('this')).toBeNull();
    present = projectForTests();
    expect(await call(asked, name)('this')).toEqual([present, 'this']);
  });

  it('others are asked as they are', async () => {
    const { client } = clientOf((_name, args) => args.slice(0, 2));
    const asked = askOfProject(client, () => null);
    expect(await call(asked, 'pictureDistance')('one', 'other')).toEqual(['one', 'other']);
    expect(Object.keys(asked).sort()).toEqual([...pageCallNames].sort());
    expect(Object.keys(asked)).not.toContain('makeForm');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createJobRunner,
  failure,
  type Issue,
  type JobKind,
  type Phrase,
  type Result,
  type RunJobsElsewhere,
  success,
  verbatim,
} from '../../src/core/base/index.ts';
import { createStageRunner, type RunOptions, type StageRunner } from '../../src/core/pipeline/run-stages.ts';
import { shareWork } from '../../src/core/pipeline/share-work.ts';
import { type DefineStep, defineStep, type Stage } from '../../src/core/pipeline/step.ts';
import { inEnglish } from '../in-english.ts';

/*
 * Two made-up stages whose results are known by closed form: a count of steps, and the sum of the squares up to it,
 * n (n + 1) (2n + 1) / 6, plus a number of its own.
 */

interface Given {
  readonly count: number;
  readonly extra: number;
  readonly isPlain: boolean;
  readonly isWrong: boolean;
}
const usual: Given = { count: 4, extra: 100, isPlain: false, isWrong: false };
const sumOfSquares = (n: number): number => (n * (n + 1) * (2 * n + 1)) / 6;
const wrong = (code: string): Issue => ({ code, path: 'size', message: verbatim('No.'), severity: 'error' });

type Squares = Map<number, number>;

/** Everything made anew, so that each test counts its own work. */
function makeUp(remembered?: number) {
  const ran: string[] = [];
  const squaring: JobKind<number, number, Squares> = {
    id: 'square',
    createMemory: () => new Map(),
    run(n, memory) {
      if (!memory.has(n)) ran.push(`${n}²`);
      memory.set(n, n * n);
      return success(n * n);
    },
    recall: (n, memory) => memory.get(n),
    keep: (n, square, memory) => void memory.set(n, square),
  };
  const step: DefineStep<Given> = defineStep;
  const count = step({
    id: 'count',
    needs: {},
    section: 'inside',
    dependsOn: ({ count, isWrong }) => [count, isWrong],
    run(_, { given }): Result<{ n: number }> {
      ran.push('count');
      return given.isWrong ? failure([wrong('bad-count')]) : success({ n: given.count });
    },
  });
  const label = step({
    id: 'label',
    needs: {},
    dependsOn: ({ isWrong }) => isWrong,
    run(_, { given }): Result<string> {
      ran.push('label');
      return given.isWrong ? failure([wrong('bad-label')]) : success('sum');
    },
  });
  const numbers = (n: number) => Array.from({ length: n }, (_, i) => i + 1);
  const parity = step({
    id: 'parity',
    needs: { count },
    dependsOn: () => null,
    run: ({ count: { n } }): Result<number> => success(n % 2),
    nameOf: String,
  });
  const onParity = step({
    id: 'onParity',
    needs: { parity },
    dependsOn: () => null,
    run({ parity }): Result<number> {
      ran.push('onParity');
      return success(10 * parity);
    },
  });
  const extra = step({
    id: 'extra',
    needs: {},
    isLeftOut: ({ isPlain }) => isPlain,
    dependsOn: ({ extra }) => extra,
    run(_, { given }): Result<number> {
      ran.push('extra');
      return success(given.extra);
    },
  });
  const sum = step({
    id: 'sum',
    needs: { count, extra },
    dependsOn: () => null,
    *rounds({ count: { n } }) {
      ran.push('plan');
      // Odd ones first: two rounds, as with work that builds on work.
      for (const odd of [1, 0]) {
        const some = numbers(n).filter((k) => k % 2 === odd);
        const jobs = some.map((k) => ({ data: k, lot: k, weight: k }));
        yield { kind: squaring, jobs, what: verbatim('Squaring'), share: 0.5 };
      }
    },
    run({ count: { n }, extra }, { memoryOf, onProgress }): Result<number> {
      ran.push('sum');
      const memory = memoryOf(squaring);
      let total = extra ?? 0;
      for (const k of numbers(n)) {
        onProgress(k / n, verbatim('Adding'));
        const square = squaring.run(k, memory);
        if (square.ok) total += square.value;
      }
      return success(total);
    },
  });
  const first: Stage<'first', Given> = {
    id: 'first',
    what: verbatim('Counting'),
    share: 2,
    steps: [count, label],
  };
  const second: Stage<'second', Given> = {
    id: 'second',
    what: verbatim('Adding up'),
    share: 6,
    steps: [parity, onParity, extra, sum],
  };
  const runner = createStageRunner<Given>(remembered);
  return {
    ran,
    squaring,
    runner,
    stages: [first, second] as const,
    steps: { count, label, extra, sum, onParity },
  };
}

type MadeUp = ReturnType<typeof makeUp>;
type Options = RunOptions<'first' | 'second'>;

/** Passes over what may be done elsewhere. */
function runAlone({ runner, stages }: MadeUp, given: Given, options: Options = {}) {
  const steps = runner.run(stages, given, options);
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
}

async function runShared(
  { runner, stages }: { runner: StageRunner<Given>; stages: MadeUp['stages'] },
  given: Given,
  elsewhere: RunJobsElsewhere,
  options: Options = {},
) {
  const steps = runner.run(stages, given, options);
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
    await shareWork(next.value, elsewhere);
  }
}

function sumOf(made: ReturnType<typeof runAlone>, { steps }: MadeUp): number | undefined {
  if (!made.ok) throw new Error(made.issues.map(({ code }) => code).join());
  return made.value.take(steps.sum);
}

/** What was run since the last call. */
const since = ({ ran }: MadeUp): string[] => ran.splice(0);

describe('running stages', () => {
  it('makes every step once, in order, from what it needs', () => {
    const up = makeUp();
    expect(sumOf(runAlone(up, usual), up)).toBe(sumOfSquares(4) + 100);
    expect(since(up)).toEqual(['count', 'label', 'onParity', 'extra', 'sum', '1²', '2²', '3²', '4²']);
  });

  it('makes again only what depends on what changed', () => {
    const up = makeUp();
    runAlone(up, usual);
    since(up);
    expect(sumOf(runAlone(up, usual), up)).toBe(sumOfSquares(4) + 100);
    expect(since(up)).toEqual([]);
    expect(sumOf(runAlone(up, { ...usual, extra: 7 }), up)).toBe(sumOfSquares(4) + 7);
    expect(since(up)).toEqual(['extra', 'sum']);
    // Two more squares are asked for; the even count stays even, so what goes by that stays too.
    expect(sumOf(runAlone(up, { ...usual, count: 6, extra: 7 }), up)).toBe(sumOfSquares(6) + 7);
    expect(since(up)).toEqual(['count', 'sum', '5²', '6²']);
    expect(sumOf(runAlone(up, { ...usual, count: 5, extra: 7 }), up)).toBe(sumOfSquares(5) + 7);
    expect(since(up)).toEqual(['count', 'onParity', 'sum']);
  });

  it('remembers as many results of a step as it is told, and the latest used of them', () => {
    const up = makeUp(2);
    const [one, two, three] = [7, 8, 9].map((extra) => ({ ...usual, extra }));
    for (const given of [one, two]) runAlone(up, given);
    since(up);
    expect(sumOf(runAlone(up, one), up)).toBe(sumOfSquares(4) + 7);
    expect(sumOf(runAlone(up, two), up)).toBe(sumOfSquares(4) + 8);
    expect(sumOf(runAlone(up, one), up)).toBe(sumOfSquares(4) + 7);
    expect(since(up)).toEqual([]);
    // A third pushes out the second, which was not asked for last.
    runAlone(up, three);
    expect(since(up)).toEqual(['extra', 'sum']);
    expect(sumOf(runAlone(up, one), up)).toBe(sumOfSquares(4) + 7);
    expect(since(up)).toEqual([]);
    expect(sumOf(runAlone(up, two), up)).toBe(sumOfSquares(4) + 8);
    expect(since(up)).toEqual(['extra', 'sum']);
  });

  it('leaves out what is not wanted, and still knows it afterwards', () => {
    const up = makeUp();
    runAlone(up, usual);
    since(up);
    expect(sumOf(runAlone(up, { ...usual, isPlain: true }), up)).toBe(sumOfSquares(4));
    expect(since(up)).toEqual(['sum']);
    expect(sumOf(runAlone(up, usual), up)).toBe(sumOfSquares(4) + 100);
    expect(since(up)).toEqual(['sum']);
  });

  it('gives what a fresh run gives, whatever was run, stopped or failed before', () => {
    const given = fc.record({
      count: fc.integer({ min: 0, max: 6 }),
      extra: fc.integer({ min: 0, max: 2 }),
      isPlain: fc.boolean(),
      isWrong: fc.boolean(),
    });
    const asked = fc.record({
      given,
      upTo: fc.constantFrom('first', 'second'),
      patience: fc.integer({ max: 12, min: 0 }),
    });
    fc.assert(
      fc.property(fc.array(asked, { maxLength: 8 }), given, (before, last) => {
        const up = makeUp();
        for (const { given, upTo, patience } of before) {
          let left = patience;
          runAlone(up, given, { upTo, isCancelled: () => left-- <= 0 });
        }
        const made = runAlone(up, { ...last, isWrong: false });
        expect(sumOf(made, up)).toBe(sumOfSquares(last.count) + (last.isPlain ? 0 : last.extra));
      }),
    );
  });

  it('ends where it is told to', () => {
    const up = makeUp();
    const made = runAlone(up, usual, { upTo: 'first' });
    expect(since(up)).toEqual(['count', 'label']);
    expect(made.ok && made.value.stages).toEqual(['first']);
    expect(sumOf(made, up)).toBeUndefined();
  });

  it('tells all that is wrong in one stage together, with its section, and does not go on to the next', () => {
    const up = makeUp();
    const made = runAlone(up, { ...usual, isWrong: true });
    expect(made.ok).toBe(false);
    expect(made.issues.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'bad-count inside.size',
      'bad-label size',
    ]);
    expect(since(up)).toEqual(['count', 'label']);
    // A failure is not remembered.
    runAlone(up, { ...usual, isWrong: true });
    expect(since(up)).toEqual(['count', 'label']);
  });

  it('stops between steps, and says so', () => {
    const up = makeUp();
    const made = runAlone(up, usual, { isCancelled: () => up.ran.includes('count') });
    expect(made.issues.map(({ code }) => code)).toEqual(['cancelled']);
    expect(since(up)).toEqual(['count']);
  });

  it('makes one step alone with what it needs', () => {
    const up = makeUp();
    const made = up.runner.makeOne(up.steps.sum, usual);
    expect(made.ok && made.value).toBe(sumOfSquares(4) + 100);
    expect(since(up)).toEqual(['count', 'extra', 'sum', '1²', '2²', '3²', '4²']);
    runAlone(up, usual);
    expect(since(up)).toEqual(['label', 'onParity']);
    expect(up.runner.makeOne(up.steps.sum, { ...usual, isWrong: true }).issues.map((i) => i.code)).toEqual([
      'bad-count',
    ]);
  });

  it('hands a step its latest result', () => {
    const step: DefineStep<number> = defineStep;
    const grow = step<number, Record<string, never>>({
      id: 'grow',
      needs: {},
      dependsOn: (given) => given,
      run: (_, { given }, last) => success((last ?? 0) + given),
    });
    const runner = createStageRunner<number>();
    const grown = [1, 2, 4].map((given) => runner.makeOne(grow, given));
    expect(grown).toEqual([success(1), success(3), success(7)]);
  });

  it('refuses a step that comes before what it needs', () => {
    const up = makeUp();
    const turned = up.runner.run(up.stages.toReversed(), usual, {});
    expect(() => turned.next()).toThrow('a step comes after what it needs');
  });
});

describe('progress and time', () => {
  it('never falls, shares or not, and ends at 1; stages begin at their shares', async () => {
    for (const isShared of [false, true]) {
      const up = makeUp();
      const seen: [number, string, string][] = [];
      const onProgress = (fraction: number, stage: string, what: Phrase) =>
        void seen.push([fraction, stage, inEnglish(what)]);
      if (isShared) await runShared(up, usual, () => Promise.reject(new Error('no')), { onProgress });
      else runAlone(up, usual, { onProgress });
      const fractions = seen.map(([fraction]) => fraction);
      expect(fractions).toEqual(fractions.toSorted((a, b) => a - b));
      expect(seen[0]).toEqual([0, 'first', 'Counting']);
      expect(seen[1]).toEqual([0.25, 'second', 'Adding up']);
      expect(seen.at(-1)).toEqual([1, 'second', 'Done']);
      expect(seen.some(([, , what]) => what === 'Squaring')).toBe(isShared);
      // Adding goes through its whole stage: alone the second of four numbers is at 1/4 + 3/4 · 2/4.
      if (!isShared) expect(fractions).toContain(0.625);
    }
  });

  it('is measured for every stage, also those past the end', () => {
    const up = makeUp();
    let ms = 0;
    const made = runAlone(up, usual, { now: () => 5 * ms++ });
    expect(made.ok && made.value.timingsMs).toEqual({ first: 5, second: 5 });
    const early = runAlone(up, usual, { upTo: 'first' });
    expect(early.ok && Object.keys(early.value.timingsMs)).toEqual(['first', 'second']);
  });
});

describe('work shared with another place', () => {
  /** Another place with a memory of its own; all goes through messages. */
  function otherPlace() {
    const there = makeUp();
    const runJob = createJobRunner([there.squaring]);
    const sent: unknown[] = [];
    const elsewhere: RunJobsElsewhere = async (jobs) => {
      sent.push(...jobs.map(({ data }) => data));
      return structuredClone(jobs).map((job) => structuredClone(runJob(job)));
    };
    return { elsewhere, sent, runJob };
  }

  it('gives the same, and does nothing twice', async () => {
    const up = makeUp();
    const { elsewhere, sent } = otherPlace();
    expect(sumOf(await runShared(up, usual, elsewhere), up)).toBe(sumOfSquares(4) + 100);
    // Odd ones first: 3 here, 1 there; then 4 to who has less, which is there, and 2 here.
    expect(sent).toEqual([1, 4]);
    expect(since(up)).toEqual(['count', 'label', 'onParity', 'extra', 'plan', '3²', '2²', 'sum']);
    // What is known is neither sent nor done again.
    await runShared(up, { ...usual, count: 5 }, elsewhere);
    expect([...sent, ...since(up).filter((name) => name.endsWith('²'))]).toEqual([1, 4, '5²']);
    await runShared(up, { ...usual, count: 5 }, elsewhere);
    expect([sent, since(up)]).toEqual([[1, 4], []]);
  });

  it('gives the same when the other place fails, refuses, or answers too little', async () => {
    const places: RunJobsElsewhere[] = [
      async (jobs) => jobs.map(() => failure([])),
      () => Promise.reject(new Error('no such place')),
      async () => [],
    ];
    for (const elsewhere of places) {
      const up = makeUp();
      expect(sumOf(await runShared(up, usual, elsewhere), up)).toBe(sumOfSquares(4) + 100);
    }
  });

  it('does nothing more once stopped', async () => {
    const up = makeUp();
    const { elsewhere, sent } = otherPlace();
    const made = await runShared(up, usual, elsewhere, { isCancelled: () => up.ran.includes('3²') });
    expect(made.issues.map(({ code }) => code)).toEqual(['cancelled']);
    expect(since(up).at(-1)).toBe('3²');
    expect(sent).toEqual([1]);
  });

  it('is refused there when its kind is not listed', () => {
    expect(() => otherPlace().runJob({ kind: 'cube', data: 3 })).toThrow('a job is of a kind that is listed');
  });
});

import { describe, expect, test } from 'vitest';
import { type NestProblem, nest } from '../../src/core/nesting/index.ts';
import { problemOf, rectangle, TURNED, UPRIGHT } from './sample-problems.ts';

/** What is said against a problem, at once: nothing is searched. */
function issuesOf(problem: NestProblem) {
  const step = nest(problem).next();
  if (!step.done || step.value.ok) return [];
  return step.value.issues;
}

const BOW = Float64Array.of(0, 0, 100, 100, 100, 0, 0, 100);
const sheet = { outline: Float64Array.of(0, 0, 300, 0, 300, 200, 0, 200), flaws: [] };

describe('what cannot be laid', () => {
  test.each<[string, string, NestProblem]>([
    [
      'item-crosses-itself',
      'items.1',
      problemOf([rectangle('a', 9, 9), { id: 'b', outline: BOW, turns: [UPRIGHT] }], { width: 500 }),
    ],
    [
      'item-not-finite',
      'items.0',
      problemOf([{ id: 'a', outline: Float64Array.of(0, 0, 9, Number.NaN, 9, 9), turns: [UPRIGHT] }], {
        width: 500,
      }),
    ],
    [
      'item-not-finite',
      'items.0',
      problemOf([{ id: 'a', outline: Float64Array.of(0, 0, 9, 9), turns: [UPRIGHT] }], { width: 500 }),
    ],
    [
      'item-not-finite',
      'items.0',
      problemOf([rectangle('a', 9, 9, { held: { turn: 0, sheet: 0, x: Infinity, y: 0 } })], { width: 500 }),
    ],
    [
      'item-not-finite',
      'items.0',
      problemOf([rectangle('a', 9, 9, { start: { turn: 1, sheet: 0, x: 0, y: 0 } })], { width: 500 }),
    ],
    ['item-without-turn', 'items.0', problemOf([rectangle('a', 9, 9, { turns: [] })], { width: 500 })],
    ['strip-without-width', 'width', problemOf([rectangle('a', 9, 9)], {})],
    ['strip-without-width', 'width', problemOf([rectangle('a', 9, 9)], { width: -3 })],
    ['gap-negative', 'gap', problemOf([rectangle('a', 9, 9)], { width: 500, gap: -1 })],
    [
      'flaw-not-finite',
      'flaws.0',
      problemOf([rectangle('a', 9, 9)], { width: 500, flaws: [Float64Array.of(1, 2)] }),
    ],
    [
      'sheet-crosses-itself',
      'sheets.1',
      problemOf([rectangle('a', 9, 9)], { sheets: [sheet, { outline: BOW, flaws: [] }] }),
    ],
    [
      'sheet-not-finite',
      'sheets.0',
      problemOf([rectangle('a', 9, 9)], { sheets: [{ outline: BOW.map(() => Number.NaN), flaws: [] }] }),
    ],
    [
      'item-too-large',
      'items.0',
      problemOf([rectangle('a', 310, 100, { turns: [UPRIGHT, TURNED] })], { sheets: [sheet] }),
    ],
  ])('%s is said of %s', (code, path, problem) => {
    expect(issuesOf(problem).map((issue) => [issue.code, issue.path])).toEqual([[code, path]]);
  });

  test('an item wider than the strip in all its turns is named with the least width that would do', () => {
    const quarter = { angle: Math.PI / 2, mirrored: false };
    const wide = rectangle('a', 300, 250, { turns: [UPRIGHT, quarter] });
    expect(
      issuesOf(problemOf([wide], { width: 200 })).map(({ measured, limit }) => [measured, limit]),
    ).toEqual([[250, 200]]);
    expect(issuesOf(problemOf([wide], { width: 250 }))).toEqual([]);
  });

  test('a lattice that leaves an item no place on the strip counts as too wide', () => {
    // 90 high at 50, 110 …: reaches from 50 to 140 at the least.
    const turns = [{ ...UPRIGHT, latticeY: { period: 60, phase: 50 } }];
    const item = rectangle('a', 80, 90, { turns });
    expect(issuesOf(problemOf([item], { width: 120 })).map(({ measured }) => measured)).toEqual([140]);
    expect(issuesOf(problemOf([item], { width: 140 }))).toEqual([]);
  });

  test('all that is wrong is said at once', () => {
    const items = [{ id: 'a', outline: BOW, turns: [UPRIGHT] }, rectangle('b', 9, 9, { turns: [] })];
    expect(issuesOf(problemOf(items, { width: 0 }))).toHaveLength(3);
  });

  test('nothing to lay is laid at once', () => {
    const step = [...nest(problemOf([], { width: 100 }))];
    expect(step.at(-1)?.plan?.length).toBe(0);
  });
});

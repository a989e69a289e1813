import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import { chooseStraps, gainOfStraps } from '../../src/core/inside/choose-straps.ts';
import type { LevelFinding } from '../../src/core/inside/index.ts';
import type { BracePlan } from '../../src/core/inside/plan-braces.ts';
import { inEnglish } from '../in-english.ts';

/** A level whose section comes out so much wider, deeper and, at the farthest place, further off than a body of 300 by 200 mm. */
function level(width: number, depth: number, deviation: number, id = 'underbust'): LevelFinding {
  const body = { width: 300, depth: 200, girth: 800 };
  const place = { where: 'right side', x: 150, y: 0 } as const;
  return {
    id,
    name: verbatim('Underbust'),
    z: 100,
    body,
    free: { ...body, deviation: 40 },
    held: { width: 300 + width, depth: 200 + depth, girth: 800, deviation, ...place },
    slack: [],
  };
}

const plan = (straps: number[]): BracePlan => ({ straps: { underbust: straps }, webShares: {} });
const one = plan([0.5]);
const two = plan([0.4, 0.6]);

/** The rule as it is asked for: within the limit, or a third and 3 mm off the larger error. 3 mm are wanted. */
describe('straps are added', () => {
  it('that bring the level within its limit, the simplest first', () => {
    const tries = [
      { plan: one, level: level(2, 1, -2.9) },
      { plan: two, level: level(0, 0, 0.5) },
    ];
    expect(chooseStraps(level(5, 1, 6), tries, 3)?.plan).toBe(one);
    expect(chooseStraps(level(5, 1, 6), tries.slice(1), 3)?.plan).toBe(two);
  });

  type Errors = readonly [width: number, depth: number, deviation: number];
  it.each<[Errors, Errors, boolean]>([
    [[13.5, 2, -10], [-0.8, 0.5, -5.5], true],
    // 3 mm, but not a third.
    [[13.5, 2, -10], [9.5, 2, -8], false],
    // A third, but not 3 mm.
    [[6, 2, -8], [3.2, 2, -6], false],
    [[6, 2, -8], [2.9, 2, -6], true],
    // The depth becomes what the width was.
    [[12, 2, -8], [1, 11, -8], false],
    // Where it was narrow, it counts as much.
    [[-12, 2, -8], [-4, 2, -8], true],
    // Some place goes further off: by up to 1 mm.
    [[13.5, 2, -8], [1, 1, 8.9], true],
    [[13.5, 2, -8], [1, 1, 9.1], false],
  ])('of %j to %j: %s', (was, is, isTaken) => {
    const found = chooseStraps(level(...was), [{ plan: one, level: level(...is) }], 3);
    expect(found?.plan).toBe(isTaken ? one : undefined);
  });

  it('of a second kind only where these are worth it beside the first', () => {
    const first = { plan: one, level: level(6, 1, -5) };
    const before = level(13.5, 2, -10);
    expect(chooseStraps(before, [first, { plan: two, level: level(4, 1, -5) }], 3)?.plan).toBe(one);
    expect(chooseStraps(before, [first, { plan: two, level: level(2.5, 1, -5) }], 3)?.plan).toBe(two);
  });

  it('at the upper chest only where they bring it within its limit of 6.5 mm', () => {
    const before = level(14, 6, 16, 'upperChest');
    const upper = (deviation: number) => [{ plan: one, level: level(3, 3, deviation, 'upperChest') }];
    expect(chooseStraps(before, upper(-8), 3)).toBeUndefined();
    expect(chooseStraps(before, upper(-6), 3)?.plan).toBe(one);
  });

  it('and say what they buy', () => {
    const gain = gainOfStraps(level(13.5, 2, -10), level(-0.8, 0.5, -5.5));
    expect(gain).toMatchObject({ levelId: 'underbust', of: 'width', before: 13.5 });
    expect(gain.after).toBeCloseTo(0.8, 9);
    expect(inEnglish(gain.text)).toBe(
      'Underbust: the straps added there bring its width to 0.08 cm (1/16 in) off the body, 1.4 cm (9/16 in) without them.',
    );
    expect(gainOfStraps(level(2, 1, -4), level(3, 2, -2.9))).toMatchObject({
      of: 'place',
      before: 4,
      after: 2.9,
    });
  });
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { weightedPercentiles } from '../../src/core/math/index.ts';

/** By definition: the least size at which the sorted weights come to the share. */
function bySorting(pairs: readonly (readonly [number, number])[], share: number): number {
  const sorted = pairs.toSorted(([a], [b]) => a - b);
  const total = sorted.reduce((sum, [, weight]) => sum + weight, 0);
  let sum = 0;
  for (const [size, weight] of sorted) {
    sum += weight;
    if (sum >= share * total) return size;
  }
  return Number.NaN;
}

it('answers as sorting all would', () => {
  // Whole weights, so that sums are exact in any order.
  const pair = fc.tuple(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 9 }));
  fc.assert(
    fc.property(
      fc.array(pair, { minLength: 1, maxLength: 300 }),
      fc.constantFrom(0.25, 0.5, 0.875),
      (drawn, share) => {
        const pairs = drawn.map(([size, weight]) => [size / 1000, weight] as const);
        const [sizes, weights] = [0, 1].map((k) => Float64Array.from(pairs, (each) => each[k]));
        expect(weightedPercentiles(sizes, weights, [share])).toEqual([bySorting(pairs, share)]);
      },
    ),
    { numRuns: 300, seed: 3 },
  );
});

it('leaves out what is no number, and has no answer for nothing', () => {
  const sizes = Float64Array.of(Number.NaN, 2, 1);
  expect(weightedPercentiles(sizes, Float64Array.of(100, 1, 1), [0.5, 1])).toEqual([1, 2]);
  expect(weightedPercentiles(new Float64Array(0), new Float64Array(0), [0.95])).toEqual([Number.NaN]);
});

it('takes sizes that are all nought', () => {
  expect(weightedPercentiles(new Float64Array(4), Float64Array.of(1, 2, 3, 4), [0.95])).toEqual([0]);
});

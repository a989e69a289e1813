import { describe, expect, it } from 'vitest';
import { patternFromPairs } from '../../src/core/math/index.ts';
import { orderMinimumDegree } from '../../src/core/math/order-minimum-degree.ts';
import { countFill, gridPattern } from './count-fill.ts';

describe('orderMinimumDegree', () => {
  it('eliminates a tree without fill', () => {
    // A tree has a perfect elimination order: leaves first (Parter 1961). Vertex i hangs on ⌊(i − 1)/3⌋.
    const pairs: number[] = [];
    for (let i = 1; i < 500; i++) pairs.push(i, Math.floor((i - 1) / 3));
    const pattern = patternFromPairs(500, pairs);
    expect(countFill(pattern, orderMinimumDegree(pattern))).toBe(499);
  });

  it('is a permutation with far less fill than the natural order on a mesh', () => {
    const m = 40;
    const pattern = gridPattern(m);
    const order = orderMinimumDegree(pattern);
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: m * m }, (_, i) => i));
    const natural = Int32Array.from({ length: m * m }, (_, i) => i);
    // Bands keep about m entries per column; George (1973) proves 31/4 n log2 n + O(n) for dissection.
    const fill = countFill(pattern, order);
    expect(fill).toBeLessThan(0.45 * countFill(pattern, natural));
    expect(fill).toBeLessThan(7.75 * m * m * Math.log2(m));
  });

  it('takes unconnected unknowns and full matrices', () => {
    expect([...orderMinimumDegree(patternFromPairs(3, []))].sort()).toEqual([0, 1, 2]);
    const all: number[] = [];
    for (let i = 0; i < 9; i++) for (let j = 0; j < i; j++) all.push(i, j);
    expect([...orderMinimumDegree(patternFromPairs(9, all))].sort()).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('keeps those of a later stage back', () => {
    const m = 12;
    const stages = Int32Array.from({ length: m * m }, (_, i) => (i % m === 6 ? 1 : 0));
    const order = orderMinimumDegree(gridPattern(m), stages);
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: m * m }, (_, i) => i));
    // Once one side is gone, all of the column that is left may follow the last of the other side.
    expect([...order.slice(-m)].map((i) => stages[i])).toEqual(Array<number>(m).fill(1));
  });
});

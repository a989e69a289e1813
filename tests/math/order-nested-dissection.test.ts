import { describe, expect, it } from 'vitest';
import { orderMinimumDegree, orderNestedDissection, patternFromPairs } from '../../src/core/math/index.ts';
import { countFill, gridPattern } from './count-fill.ts';

/** A tube of `along` rings of `around` points, triangles between. */
function tubePattern(around: number, along: number) {
  const pairs: number[] = [];
  for (let j = 0; j < along; j++) {
    for (let i = 0; i < around; i++) {
      const [p, q] = [i + j * around, ((i + 1) % around) + j * around];
      pairs.push(p, q);
      if (j + 1 < along) pairs.push(p, p + around, p, q + around);
    }
  }
  return patternFromPairs(around * along, pairs);
}

describe('orderNestedDissection', () => {
  it('fills a grid no more than George proved, and less than minimum degree', () => {
    const m = 80;
    const pattern = gridPattern(m);
    const order = orderNestedDissection(pattern);
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: m * m }, (_, i) => i));
    // George (1973): 31/4 n log2 n + O(n).
    const fill = countFill(pattern, order);
    expect(fill).toBeLessThan(7.75 * m * m * Math.log2(m));
    expect(fill).toBeLessThan(countFill(pattern, orderMinimumDegree(pattern)));
  });

  // Cut across, a column is coupled to the rest of its ring and to one ring on either side: half of around, and twice around.
  it('cuts a long tube across', () => {
    const [around, along] = [12, 300];
    const pattern = tubePattern(around, along);
    const fill = countFill(pattern, orderNestedDissection(pattern));
    expect(fill).toBeLessThan(2.5 * around * pattern.size);
  });

  it('takes what does not hang together, and unknowns coupled to very many', () => {
    const grid = gridPattern(15);
    const pairs: number[] = [];
    for (let c = 0; c < grid.size; c++)
      for (let k = grid.columnStart[c] + 1; k < grid.columnStart[c + 1]; k++)
        for (const copy of [0, grid.size]) pairs.push(c + copy, grid.rowIndex[k] + copy);
    const hub = 2 * grid.size;
    for (let i = 0; i < grid.size; i++) pairs.push(i, hub);
    const pattern = patternFromPairs(hub + 9, pairs);
    const order = orderNestedDissection(pattern);
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: hub + 9 }, (_, i) => i));
    // With the hub last it costs one entry a column, and the copies nothing to each other.
    const alone = countFill(grid, orderNestedDissection(grid));
    expect(countFill(pattern, order)).toBeLessThan(2 * alone * 1.1 + grid.size);
  });
});

import { describe, expect, it } from 'vitest';
import { patternFromPairs, type SparsePattern } from '../../src/core/math/index.ts';
import { orderMinimumDegree } from '../../src/core/math/order-minimum-degree.ts';

/** Entries below the diagonal of the factor, by playing elimination on sets. */
function countFill(pattern: SparsePattern, order: Int32Array): number {
  const neighbours = Array.from({ length: pattern.size }, () => new Set<number>());
  for (let c = 0; c < pattern.size; c++) {
    for (let k = pattern.columnStart[c] + 1; k < pattern.columnStart[c + 1]; k++) {
      neighbours[c].add(pattern.rowIndex[k]);
      neighbours[pattern.rowIndex[k]].add(c);
    }
  }
  let count = 0;
  for (const v of order) {
    const around = [...neighbours[v]];
    count += around.length;
    for (const a of around) {
      neighbours[a].delete(v);
      for (const b of around) if (a !== b) neighbours[a].add(b);
    }
  }
  return count;
}

function gridPattern(m: number): SparsePattern {
  const pairs: number[] = [];
  for (let j = 0; j < m; j++) {
    for (let i = 0; i < m; i++) {
      if (i + 1 < m) pairs.push(i + j * m, i + 1 + j * m);
      if (j + 1 < m) pairs.push(i + j * m, i + (j + 1) * m);
      if (i + 1 < m && j + 1 < m) pairs.push(i + j * m, i + 1 + (j + 1) * m);
    }
  }
  return patternFromPairs(m * m, pairs);
}

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
});

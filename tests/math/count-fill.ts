import { patternFromPairs, type SparsePattern } from '../../src/core/math/index.ts';

/** Entries below the diagonal of the factor, by playing elimination on sets. */
export function countFill(pattern: SparsePattern, order: Int32Array): number {
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

/** An m × m grid of squares, each with one diagonal. */
export function gridPattern(m: number): SparsePattern {
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

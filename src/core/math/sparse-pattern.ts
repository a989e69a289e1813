/**
 * Where a symmetric matrix may be non-zero: the lower triangle by columns, diagonal included.
 * Entries of column c are `rowIndex[columnStart[c] … columnStart[c + 1])`, rising, the first is c itself.
 * An entry stands for one number, or for one small block when a solver is given a block size.
 */
export interface SparsePattern {
  readonly size: number;
  /** size + 1. */
  readonly columnStart: Int32Array;
  readonly rowIndex: Int32Array;
}

/**
 * Pattern of a symmetric matrix from index pairs (any order, repeats allowed); the diagonal is added.
 * `pairs`: 2 × #pairs indices below `size`. Cost linear in pairs plus size, plus a sort per column.
 */
export function patternFromPairs(size: number, pairs: ArrayLike<number>): SparsePattern {
  // 1. Bucket the larger index of each pair under the smaller one.
  const bucketStart = new Int32Array(size + 1);
  for (let k = 0; k < pairs.length; k += 2) {
    if (pairs[k] !== pairs[k + 1]) bucketStart[Math.min(pairs[k], pairs[k + 1]) + 1]++;
  }
  for (let c = 0; c < size; c++) bucketStart[c + 1] += bucketStart[c];
  const cursor = bucketStart.slice(0, size);
  const bucket = new Int32Array(bucketStart[size]);
  for (let k = 0; k < pairs.length; k += 2) {
    const a = pairs[k];
    const b = pairs[k + 1];
    if (a !== b) bucket[cursor[Math.min(a, b)]++] = Math.max(a, b);
  }
  // 2. Sort each bucket, drop repeats, put the diagonal first.
  const columnStart = new Int32Array(size + 1);
  const rowIndex = new Int32Array(bucket.length + size);
  let count = 0;
  for (let c = 0; c < size; c++) {
    columnStart[c] = count;
    rowIndex[count++] = c;
    const rows = bucket.subarray(bucketStart[c], bucketStart[c + 1]).sort();
    for (let k = 0; k < rows.length; k++) {
      if (k === 0 || rows[k] !== rows[k - 1]) rowIndex[count++] = rows[k];
    }
  }
  columnStart[size] = count;
  return { size, columnStart, rowIndex: rowIndex.slice(0, count) };
}

/** Slot of the entry (row, column), either triangle; −1 when the pattern lacks it. Cost: a binary search. */
export function findSlot(pattern: SparsePattern, row: number, column: number): number {
  const c = Math.min(row, column);
  const r = Math.max(row, column);
  let low = pattern.columnStart[c];
  let high = pattern.columnStart[c + 1] - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = pattern.rowIndex[middle];
    if (found === r) return middle;
    if (found < r) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}

import type { SparsePattern } from './sparse-pattern.ts';

/** For each position, the earlier positions it is coupled to (strict lower triangle by rows). */
export interface RowLists {
  readonly start: Int32Array;
  readonly index: Int32Array;
}

/** The strict lower triangle under an elimination order. O(pattern). */
export function permutedRows(pattern: SparsePattern, order: Int32Array): RowLists {
  const { size, columnStart, rowIndex } = pattern;
  const position = invert(order);
  const start = new Int32Array(size + 1);
  for (let c = 0; c < size; c++) {
    for (let k = columnStart[c] + 1; k < columnStart[c + 1]; k++) {
      start[Math.max(position[c], position[rowIndex[k]]) + 1]++;
    }
  }
  for (let i = 0; i < size; i++) start[i + 1] += start[i];
  const cursor = start.slice(0, size);
  const index = new Int32Array(start[size]);
  for (let c = 0; c < size; c++) {
    for (let k = columnStart[c] + 1; k < columnStart[c + 1]; k++) {
      const p = position[c];
      const q = position[rowIndex[k]];
      index[cursor[Math.max(p, q)]++] = Math.min(p, q);
    }
  }
  return { start, index };
}

/** Position of each index in an order. */
export function invert(order: Int32Array): Int32Array {
  const position = new Int32Array(order.length);
  for (let k = 0; k < order.length; k++) position[order[k]] = k;
  return position;
}

/** Parent of each column: the first row below it in the factor. Liu's algorithm with path compression. */
export function eliminationTree(rows: RowLists, size: number): Int32Array {
  const parent = new Int32Array(size).fill(-1);
  const ancestor = new Int32Array(size).fill(-1);
  for (let i = 0; i < size; i++) {
    for (let k = rows.start[i]; k < rows.start[i + 1]; k++) {
      let j = rows.index[k];
      while (j >= 0 && j < i) {
        const above = ancestor[j];
        ancestor[j] = i;
        if (above < 0) parent[j] = i;
        j = above;
      }
    }
  }
  return parent;
}

/** Children before parents, subtrees contiguous. Returns old indices in their new order. */
export function postorder(parent: Int32Array): Int32Array {
  const n = parent.length;
  const firstChild = new Int32Array(n + 1).fill(-1);
  const sibling = new Int32Array(n).fill(-1);
  for (let i = n - 1; i >= 0; i--) {
    const p = parent[i] < 0 ? n : parent[i];
    sibling[i] = firstChild[p];
    firstChild[p] = i;
  }
  const post = new Int32Array(n);
  const stack = new Int32Array(n + 1);
  let count = 0;
  for (let root = firstChild[n]; root >= 0; root = sibling[root]) {
    let depth = 0;
    stack[depth++] = root;
    while (depth > 0) {
      const i = stack[depth - 1];
      const child = firstChild[i];
      if (child >= 0) {
        firstChild[i] = sibling[child];
        stack[depth++] = child;
      } else {
        post[count++] = i;
        depth--;
      }
    }
  }
  return post;
}

/** The same entries by columns, each column rising. O(entries). */
export function transpose(rows: RowLists, size: number): RowLists {
  const start = new Int32Array(size + 1);
  for (let k = 0; k < rows.index.length; k++) start[rows.index[k] + 1]++;
  for (let i = 0; i < size; i++) start[i + 1] += start[i];
  const cursor = start.slice(0, size);
  const index = new Int32Array(rows.index.length);
  for (let i = 0; i < size; i++) {
    for (let k = rows.start[i]; k < rows.start[i + 1]; k++) index[cursor[rows.index[k]]++] = i;
  }
  return { start, index };
}

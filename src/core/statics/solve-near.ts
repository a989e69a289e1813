import type { Ldlt, SparsePattern } from '../math/index.ts';

/** How many steps of conjugate gradients are worth one factor. */
const MOST = 6;
/** What is left after every step, at the most, for the next to be taken. */
const SLOWEST = 0.75;

/**
 * Solves (K + shift) x = right by conjugate gradients, with the factor of a matrix near to K as preconditioner, until the
 * error is `tolerance` of the first in the preconditioner's norm. False when K is too far off or not positive; `out` is then spoilt.
 * K: blocks of 3 × 3 on the pattern. Source: Golub and Van Loan, Matrix Computations (2013), 11.5.
 */
export function solveNear(
  pattern: SparsePattern,
  values: Float64Array,
  shift: number,
  factor: Ldlt,
  right: Float64Array,
  tolerance: number,
  out: Float64Array,
): boolean {
  const left = right.slice();
  const direction = factor.solve(left);
  const image = new Float64Array(right.length);
  const solved = new Float64Array(right.length);
  out.fill(0);
  let size = dotOf(left, direction);
  const first = size;
  for (let k = 1; k <= MOST; k++) {
    multiply(pattern, values, shift, direction, image);
    const bend = dotOf(direction, image);
    if (!(bend > 0)) return false;
    const share = size / bend;
    for (let i = 0; i < out.length; i++) {
      out[i] += share * direction[i];
      left[i] -= share * image[i];
    }
    factor.solve(left, solved);
    const next = dotOf(left, solved);
    const done = Math.sqrt(Math.abs(next) / first);
    if (done <= tolerance) return true;
    if (k >= 3 && done > SLOWEST ** k) return false;
    const turn = next / size;
    for (let i = 0; i < direction.length; i++) direction[i] = solved[i] + turn * direction[i];
    size = next;
  }
  return false;
}

function dotOf(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

function multiply(
  { size, columnStart, rowIndex }: SparsePattern,
  values: Float64Array,
  shift: number,
  x: Float64Array,
  out: Float64Array,
): void {
  for (let i = 0; i < out.length; i++) out[i] = shift * x[i];
  for (let c = 0; c < size; c++) {
    const x0 = x[3 * c];
    const x1 = x[3 * c + 1];
    const x2 = x[3 * c + 2];
    let at = 9 * columnStart[c];
    let y0 = out[3 * c] + values[at] * x0 + values[at + 1] * x1 + values[at + 2] * x2;
    let y1 = out[3 * c + 1] + values[at + 3] * x0 + values[at + 4] * x1 + values[at + 5] * x2;
    let y2 = out[3 * c + 2] + values[at + 6] * x0 + values[at + 7] * x1 + values[at + 8] * x2;
    for (let k = columnStart[c] + 1; k < columnStart[c + 1]; k++) {
      at += 9;
      const r = 3 * rowIndex[k];
      out[r] += values[at] * x0 + values[at + 1] * x1 + values[at + 2] * x2;
      out[r + 1] += values[at + 3] * x0 + values[at + 4] * x1 + values[at + 5] * x2;
      out[r + 2] += values[at + 6] * x0 + values[at + 7] * x1 + values[at + 8] * x2;
      y0 += values[at] * x[r] + values[at + 3] * x[r + 1] + values[at + 6] * x[r + 2];
      y1 += values[at + 1] * x[r] + values[at + 4] * x[r + 1] + values[at + 7] * x[r + 2];
      y2 += values[at + 2] * x[r] + values[at + 5] * x[r + 1] + values[at + 8] * x[r + 2];
    }
    out[3 * c] = y0;
    out[3 * c + 1] = y1;
    out[3 * c + 2] = y2;
  }
}

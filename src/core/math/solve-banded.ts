/**
 * Cholesky's method for symmetric positive definite band matrices: A = L Lᵀ. A keeps its lower band, row by row: entry
 * (i, j), i − width ≤ j ≤ i, at i (width + 1) + j − i + width; entries before column 0 are 0.
 * Source: Golub and Van Loan, Matrix Computations, section 4.3.
 */
export interface BandMatrix {
  readonly size: number;
  /** Diagonals below the main one. */
  readonly width: number;
  /** size × (width + 1). */
  readonly values: Float64Array;
}

export function makeBandMatrix(size: number, width: number): BandMatrix {
  return { size, width, values: new Float64Array(size * (width + 1)) };
}

/** The rows and columns from `from` up to `to`, copied. */
export function sliceBand({ width, values }: BandMatrix, from: number, to: number): BandMatrix {
  const slice = values.slice(from * (width + 1), to * (width + 1));
  for (let i = 0; i < Math.min(width, to - from); i++)
    slice.fill(0, i * (width + 1), i * (width + 1) + width - i);
  return { size: to - from, width, values: slice };
}

/** Puts L into A, in place. False, with A spoilt, when A is not positive definite. O(size · width²). */
export function factorBanded({ size, width, values: A }: BandMatrix): boolean {
  const stride = width + 1;
  for (let i = 0; i < size; i++) {
    const row = i * stride + width - i;
    const first = Math.max(0, i - width);
    for (let j = first; j < i; j++) {
      const other = j * stride + width - j;
      let value = A[row + j];
      for (let k = Math.max(first, j - width); k < j; k++) value -= A[row + k] * A[other + k];
      A[row + j] = value / A[other + j];
    }
    let pivot = A[row + i];
    for (let k = first; k < i; k++) pivot -= A[row + k] * A[row + k];
    if (!(pivot > 0)) return false;
    A[row + i] = Math.sqrt(pivot);
  }
  return true;
}

/** Solves L y = b in place with the L of `factorBanded`. O(size · width); zeros at the start of b cost nothing. */
export function solveLowerBanded({ size, width, values: L }: BandMatrix, b: Float64Array): void {
  const stride = width + 1;
  let start = 0;
  while (start < size && b[start] === 0) start++;
  for (let i = start; i < size; i++) {
    const row = i * stride + width - i;
    let value = b[i];
    for (let k = Math.max(start, i - width); k < i; k++) value -= L[row + k] * b[k];
    b[i] = value / L[row + i];
  }
}

/** Solves Lᵀ x = y in place with the L of `factorBanded`. O(size · width). */
export function solveUpperBanded({ size, width, values: L }: BandMatrix, y: Float64Array): void {
  const stride = width + 1;
  for (let i = size - 1; i >= 0; i--) {
    const row = i * stride + width - i;
    const value = y[i] / L[row + i];
    y[i] = value;
    for (let k = Math.max(0, i - width); k < i; k++) y[k] -= L[row + k] * value;
  }
}

/** out = A x for a band matrix that is not factored. O(size · width). */
export function multiplyBanded(
  { size, width, values: A }: BandMatrix,
  x: Float64Array,
  out: Float64Array,
): void {
  const stride = width + 1;
  out.fill(0);
  for (let i = 0; i < size; i++) {
    const row = i * stride + width - i;
    let sum = A[row + i] * x[i];
    for (let k = Math.max(0, i - width); k < i; k++) {
      sum += A[row + k] * x[k];
      out[k] += A[row + k] * x[i];
    }
    out[i] += sum;
  }
}

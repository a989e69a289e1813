/**
 * Cholesky's method for small dense matrices, symmetric and positive definite, n × n row-major: A = L Lᵀ.
 * Source: Golub and Van Loan, Matrix Computations, section 4.2.
 */

/**
 * Puts L into the lower half of A, in place; what lies above the diagonal is neither read nor changed. False, with A
 * spoilt, when a pivot is not above `leastPivot`: A is not positive definite. O(n³).
 */
export function factorDense(A: Float64Array, n: number, leastPivot = 0): boolean {
  for (let j = 0; j < n; j++) {
    let pivot = A[j * n + j];
    for (let k = 0; k < j; k++) pivot -= A[j * n + k] * A[j * n + k];
    if (!(pivot > leastPivot)) return false;
    const root = Math.sqrt(pivot);
    A[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let value = A[i * n + j];
      for (let k = 0; k < j; k++) value -= A[i * n + k] * A[j * n + k];
      A[i * n + j] = value / root;
    }
  }
  return true;
}

/** Solves L y = b with the L of `factorDense`; `y` may be `b`. O(n²). */
export function solveLowerDense(L: Float64Array, b: Float64Array, y: Float64Array): void {
  const n = b.length;
  for (let i = 0; i < n; i++) {
    let value = b[i];
    for (let k = 0; k < i; k++) value -= L[i * n + k] * y[k];
    y[i] = value / L[i * n + i];
  }
}

/** Solves A x = b with the L of `factorDense`; `x` may be `b`. O(n²). */
export function solveDense(L: Float64Array, b: Float64Array, x: Float64Array): void {
  const n = b.length;
  solveLowerDense(L, b, x);
  for (let i = n - 1; i >= 0; i--) {
    let value = x[i];
    for (let k = i + 1; k < n; k++) value -= L[k * n + i] * x[k];
    x[i] = value / L[i * n + i];
  }
}

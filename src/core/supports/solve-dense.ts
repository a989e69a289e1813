/**
 * Solves (A + shift · I) x = b for a small symmetric A (n × n, row-major) by Cholesky's method; false when the shifted
 * matrix is not positive definite. `x` and `L` (n × n, room to work in) are overwritten, A and b are not. O(n³).
 */
export function solveDense(
  A: Float64Array,
  b: Float64Array,
  shift: number,
  x: Float64Array,
  L: Float64Array,
): boolean {
  const n = b.length;
  L.set(A);
  for (let j = 0; j < n; j++) {
    let pivot = L[j * n + j] + shift;
    for (let k = 0; k < j; k++) pivot -= L[j * n + k] * L[j * n + k];
    if (!(pivot > 1e-14)) return false;
    const root = Math.sqrt(pivot);
    L[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let value = L[i * n + j];
      for (let k = 0; k < j; k++) value -= L[i * n + k] * L[j * n + k];
      L[i * n + j] = value / root;
    }
  }
  for (let i = 0; i < n; i++) {
    let value = b[i];
    for (let k = 0; k < i; k++) value -= L[i * n + k] * x[k];
    x[i] = value / L[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    let value = x[i];
    for (let k = i + 1; k < n; k++) value -= L[k * n + i] * x[k];
    x[i] = value / L[i * n + i];
  }
  return true;
}

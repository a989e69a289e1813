import { describe, expect, it } from 'vitest';
import { factorDense, solveDense, solveLowerDense } from '../../src/core/math/index.ts';

// By hand: L = [2 0 0; 1 3 0; −1 2 1], A = L Lᵀ in whole numbers.
const A = Float64Array.of(4, 2, -2, 2, 10, 5, -2, 5, 6);

describe('the dense solve', () => {
  it('finds the factor known beforehand', () => {
    const L = A.slice();
    expect(factorDense(L, 3)).toBe(true);
    expect([0, 3, 4, 6, 7, 8].map((i) => L[i])).toEqual([2, 1, 3, -1, 2, 1]);
  });

  it('reads only the lower half', () => {
    const L = A.map((value, i) => ([1, 2, 5].includes(i) ? Number.NaN : value));
    expect(factorDense(L, 3)).toBe(true);
    expect(L[8]).toBe(1);
  });

  it('solves forwards, and in place', () => {
    const L = A.slice();
    factorDense(L, 3);
    const y = Float64Array.of(4, 11, 5);
    solveLowerDense(L, y, y);
    expect([...y]).toEqual([2, 3, 1]);
  });

  it('solves for the vector the right side was made from', () => {
    const L = A.slice();
    factorDense(L, 3);
    // A (1, −2, 3) by hand: 4 − 4 − 6, 2 − 20 + 15, −2 − 10 + 18.
    const b = Float64Array.of(-6, -3, 6);
    const x = new Float64Array(3);
    solveDense(L, b, x);
    [1, -2, 3].forEach((value, i) => {
      expect(x[i]).toBeCloseTo(value, 13);
    });
    expect([...b]).toEqual([-6, -3, 6]);
  });

  // The inverse of the Hilbert matrix 1/(i + j − 1) is whole; of size 4 its rows add up to −4, 60, −180 and 140 (Choi,
  // Tricks or treats with the Hilbert matrix, Amer. Math. Monthly 90, 1983; from memory).
  it('holds its digits on a badly conditioned matrix', () => {
    const n = 4;
    const H = Float64Array.from({ length: n * n }, (_, k) => 1 / (Math.floor(k / n) + (k % n) + 1));
    const x = Float64Array.of(1, 1, 1, 1);
    expect(factorDense(H, n)).toBe(true);
    solveDense(H, x, x);
    [-4, 60, -180, 140].forEach((value, i) => {
      expect(x[i]).toBeCloseTo(value, 8);
    });
  });

  it('refuses what is not positive definite', () => {
    // Eigenvalues 3 and −1.
    expect(factorDense(Float64Array.of(1, 2, 2, 1), 2)).toBe(false);
    expect(factorDense(Float64Array.of(1e-15), 1, 1e-14)).toBe(false);
    expect(factorDense(Float64Array.of(1e-15), 1)).toBe(true);
    expect(factorDense(Float64Array.of(Number.NaN), 1)).toBe(false);
  });
});

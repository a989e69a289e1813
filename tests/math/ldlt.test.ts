import { describe, expect, it } from 'vitest';
import {
  analyseLdlt,
  findSlot,
  Ldlt,
  patternFromPairs,
  type SparsePattern,
} from '../../src/core/math/index.ts';

/** Deterministic numbers in [−1, 1). */
function makeNoise(seed: number): () => number {
  let x = seed >>> 0;
  return () => {
    x = (Math.imul(1664525, x) + 1013904223) >>> 0;
    return x / 2147483648 - 1;
  };
}

/** Dense rows of a sparse symmetric matrix. */
function toDense(pattern: SparsePattern, values: Float64Array, b: 1 | 2 | 3): number[][] {
  const n = pattern.size * b;
  const dense = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (let c = 0; c < pattern.size; c++) {
    for (let k = pattern.columnStart[c]; k < pattern.columnStart[c + 1]; k++) {
      const r = pattern.rowIndex[k];
      for (let i = 0; i < b; i++) {
        for (let j = 0; j < b; j++) {
          dense[r * b + i][c * b + j] = values[k * b * b + i * b + j];
          dense[c * b + j][r * b + i] = values[k * b * b + i * b + j];
        }
      }
    }
  }
  return dense;
}

/** Gaussian elimination with partial pivoting, as in any numerical analysis textbook. */
function solveDense(matrix: number[][], right: ArrayLike<number>): number[] {
  const n = right.length;
  const a = matrix.map((row, i) => [...row, right[i]]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k; i < n; i++) if (Math.abs(a[i][k]) > Math.abs(a[pivot][k])) pivot = i;
    [a[k], a[pivot]] = [a[pivot], a[k]];
    for (let i = k + 1; i < n; i++) {
      const f = a[i][k] / a[k][k];
      for (let j = k; j <= n; j++) a[i][j] -= f * a[k][j];
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = a[i][n];
    for (let j = i + 1; j < n; j++) sum -= a[i][j] * x[j];
    x[i] = sum / a[i][i];
  }
  return x;
}

/** Random sparse pattern, connected by a path, and values made positive definite by a dominant diagonal. */
function randomSystem(n: number, extra: number, b: 1 | 2 | 3, seed: number) {
  const noise = makeNoise(seed);
  const pick = () => Math.floor(((noise() + 1) / 2) * n);
  const pairs: number[] = [];
  for (let i = 0; i + 1 < n; i++) pairs.push(i, i + 1);
  for (let k = 0; k < extra; k++) pairs.push(pick(), pick());
  const pattern = patternFromPairs(n, pairs);
  const values = Float64Array.from({ length: pattern.rowIndex.length * b * b }, noise);
  const rowSum = new Float64Array(n * b);
  for (let c = 0; c < n; c++) {
    for (let k = pattern.columnStart[c]; k < pattern.columnStart[c + 1]; k++) {
      const r = pattern.rowIndex[k];
      if (r === c) {
        for (let i = 0; i < b; i++) {
          for (let j = 0; j < i; j++) values[b * b * k + j * b + i] = values[b * b * k + i * b + j];
        }
      }
      for (let i = 0; i < b; i++) {
        for (let j = 0; j < b; j++) {
          const size = Math.abs(values[k * b * b + i * b + j]);
          rowSum[r * b + i] += size;
          if (r !== c) rowSum[c * b + j] += size;
        }
      }
    }
  }
  for (let c = 0; c < n; c++) {
    for (let i = 0; i < b; i++) values[pattern.columnStart[c] * b * b + i * b + i] = rowSum[c * b + i] + 0.1;
  }
  return { pattern, values };
}

/** Five-point Laplacian of an m × m grid with zero border. */
function poisson(m: number): { pattern: SparsePattern; values: Float64Array } {
  const pairs: number[] = [];
  for (let j = 0; j < m; j++) {
    for (let i = 0; i < m; i++) {
      if (i + 1 < m) pairs.push(i + j * m, i + 1 + j * m);
      if (j + 1 < m) pairs.push(i + j * m, i + (j + 1) * m);
    }
  }
  const pattern = patternFromPairs(m * m, pairs);
  const values = new Float64Array(pattern.rowIndex.length).fill(-1);
  for (let c = 0; c < m * m; c++) values[pattern.columnStart[c]] = 4;
  return { pattern, values };
}

describe('patternFromPairs', () => {
  it('sorts, drops repeats and adds the diagonal', () => {
    const pattern = patternFromPairs(4, [3, 1, 1, 3, 0, 2, 2, 2, 0, 1]);
    expect([...pattern.columnStart]).toEqual([0, 3, 5, 6, 7]);
    expect([...pattern.rowIndex]).toEqual([0, 1, 2, 1, 3, 2, 3]);
    expect(findSlot(pattern, 1, 3)).toBe(4);
    expect(findSlot(pattern, 3, 1)).toBe(4);
    expect(findSlot(pattern, 2, 3)).toBe(-1);
  });
});

describe('Ldlt against dense elimination', () => {
  for (const b of [1, 2, 3] as const) {
    for (const [n, extra] of [
      [1, 0],
      [2, 1],
      [7, 5],
      [40, 60],
      [90, 400],
    ]) {
      it(`random positive definite, ${n} unknowns of ${b}, ${extra} couplings`, () => {
        const { pattern, values } = randomSystem(n, extra, b, 17 * n + b);
        const right = Float64Array.from({ length: n * b }, makeNoise(5));
        const solver = new Ldlt(analyseLdlt(pattern, b));
        const report = solver.factor(values);
        expect(report.isPositive).toBe(true);
        const expected = solveDense(toDense(pattern, values, b), right);
        const found = solver.solve(right);
        for (let i = 0; i < n * b; i++) expect(found[i]).toBeCloseTo(expected[i], 11);
        // Half solves give quadratic forms: bᵀ M⁻¹ b.
        const lower = solver.solveLower(right, new Float64Array(n * b));
        const form = expected.reduce((sum, x, i) => sum + x * right[i], 0);
        expect(solver.innerProduct(lower, lower)).toBeCloseTo(form, 11);
      });
    }
  }

  it('gives the same answer in whatever order the unknowns are eliminated', () => {
    const { pattern, values } = randomSystem(60, 120, 2, 3);
    const right = Float64Array.from({ length: 120 }, makeNoise(9));
    const reference = new Ldlt(analyseLdlt(pattern, 2));
    reference.factor(values);
    const expected = reference.solve(right);
    const natural = Int32Array.from({ length: 60 }, (_, i) => i);
    for (const order of [natural, natural.slice().reverse(), natural.map((i) => (i * 37) % 60)]) {
      const solver = new Ldlt(analyseLdlt(pattern, 2, order));
      solver.factor(values);
      const found = solver.solve(right);
      for (let i = 0; i < 120; i++) expect(found[i]).toBeCloseTo(expected[i], 11);
    }
  });

  it('reuses its memory: a second factor forgets the first', () => {
    const { pattern, values } = randomSystem(50, 80, 1, 21);
    const right = new Float64Array(50).fill(1);
    const solver = new Ldlt(analyseLdlt(pattern, 1));
    solver.factor(values);
    const first = solver.solve(right);
    solver.factor(values.map((x) => 2 * x));
    const half = solver.solve(right);
    for (let i = 0; i < 50; i++) expect(half[i]).toBeCloseTo(first[i] / 2, 12);
  });
});

describe('Ldlt against known spectra', () => {
  // Eigenpairs of the five-point Laplacian: v = sin(iπp/(m+1)) sin(jπq/(m+1)), λ = 4 − 2cos(πp/(m+1)) − 2cos(πq/(m+1)).
  // Strang, Computational Science and Engineering (2007), 3.5.
  const m = 40;
  const eigenvalue = (p: number, q: number) =>
    4 - 2 * Math.cos((Math.PI * p) / (m + 1)) - 2 * Math.cos((Math.PI * q) / (m + 1));
  it('Poisson: an eigenvector comes back divided by its eigenvalue', () => {
    const { pattern, values } = poisson(m);
    const solver = new Ldlt(analyseLdlt(pattern, 1));
    expect(solver.factor(values).isPositive).toBe(true);
    for (const [p, q] of [
      [1, 1],
      [3, 7],
      [40, 39],
    ]) {
      const v = Float64Array.from(
        { length: m * m },
        (_, k) =>
          Math.sin(((1 + (k % m)) * Math.PI * p) / (m + 1)) *
          Math.sin(((1 + Math.floor(k / m)) * Math.PI * q) / (m + 1)),
      );
      const x = solver.solve(v);
      for (let k = 0; k < v.length; k += 13) expect(x[k]).toBeCloseTo(v[k] / eigenvalue(p, q), 9);
    }
  });

  // Sylvester's law of inertia: negative pivots of A − σ = eigenvalues below σ (Golub and Van Loan, 8.1.5).
  it('counts negative eigenvalues', () => {
    const { pattern, values } = poisson(m);
    const solver = new Ldlt(analyseLdlt(pattern, 1));
    for (const sigma of [0.001, 0.0123, 0.5, 1.2345, 3.9]) {
      let below = 0;
      for (let p = 1; p <= m; p++) for (let q = 1; q <= m; q++) if (eigenvalue(p, q) < sigma) below++;
      const report = solver.factor(values, { shift: -sigma });
      expect(report.negativePivots).toBe(below);
      expect(report.isPositive).toBe(below === 0);
    }
  });

  it('stops at the first negative pivot on request, and then refuses to solve', () => {
    const { pattern, values } = poisson(m);
    const solver = new Ldlt(analyseLdlt(pattern, 1));
    const report = solver.factor(values, { shift: -1, stopAtNegative: true });
    expect(report).toMatchObject({ isPositive: false, isUsable: false, negativePivots: 1, shift: -1 });
    expect(() => solver.solve(new Float64Array(m * m))).toThrow(/usable factor/);
  });

  it('tells a singular matrix from a usable one', () => {
    // Laplacian of a path without border: constants are in the kernel. Integers, so the last pivot is exactly 0.
    const pattern = patternFromPairs(3, [0, 1, 1, 2]);
    const solver = new Ldlt(analyseLdlt(pattern, 1, Int32Array.of(0, 1, 2)));
    const report = solver.factor(Float64Array.of(1, -1, 2, -1, 1));
    expect(report.isUsable).toBe(false);
    expect(solver.factor(Float64Array.of(1, -1, 2, -1, 1), { shift: 0.5 }).isPositive).toBe(true);
    expect(solver.factor(Float64Array.of(Number.NaN, -1, 2, -1, 1)).isUsable).toBe(false);
  });

  // Hilbert matrix: the inverse has integer entries, (−1)^(i+j) (i+j−1) C(n+i−1, n−j) C(n+j−1, n−i) C(i+j−2, i−1)²
  // (Choi, Tricks or treats with the Hilbert matrix, Am. Math. Monthly 90, 1983). Condition 1.5e7 at n = 6.
  it('inverts a Hilbert matrix', () => {
    const n = 6;
    const choose = (a: number, k: number): number => (k === 0 ? 1 : (choose(a - 1, k - 1) * a) / k);
    const pairs: number[] = [];
    for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) pairs.push(i, j);
    const pattern = patternFromPairs(n, pairs);
    const values = new Float64Array(pattern.rowIndex.length);
    for (let i = 1; i <= n; i++) {
      for (let j = 1; j <= i; j++) values[findSlot(pattern, i - 1, j - 1)] = 1 / (i + j - 1);
    }
    const solver = new Ldlt(analyseLdlt(pattern, 1));
    expect(solver.factor(values).isPositive).toBe(true);
    for (let j = 1; j <= n; j++) {
      const column = solver.solve(Float64Array.from({ length: n }, (_, i) => (i === j - 1 ? 1 : 0)));
      for (let i = 1; i <= n; i++) {
        const exact =
          (-1) ** (i + j) *
          (i + j - 1) *
          choose(n + i - 1, n - j) *
          choose(n + j - 1, n - i) *
          choose(i + j - 2, i - 1) ** 2;
        expect(Math.abs(column[i - 1] - exact)).toBeLessThan(1e-8 * Math.abs(exact));
      }
    }
  });
});

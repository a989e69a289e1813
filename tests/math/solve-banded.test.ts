import { describe, expect, it } from 'vitest';
import {
  factorBanded,
  makeBandMatrix,
  multiplyBanded,
  solveLowerBanded,
  solveUpperBanded,
} from '../../src/core/math/index.ts';

/** Second differences of a line held at both ends: 2 on the diagonal, −1 beside it. */
function lineOf(size: number) {
  const band = makeBandMatrix(size, 1);
  for (let i = 0; i < size; i++) {
    if (i > 0) band.values[2 * i] = -1;
    band.values[2 * i + 1] = 2;
  }
  return band;
}

describe('banded Cholesky', () => {
  it('solves the held line: a unit load bends it to i (n + 1 − i) / 2', () => {
    const n = 40;
    const band = lineOf(n);
    expect(factorBanded(band)).toBe(true);
    const x = new Float64Array(n).fill(1);
    solveLowerBanded(band, x);
    solveUpperBanded(band, x);
    for (let i = 0; i < n; i++) expect(x[i]).toBeCloseTo(((i + 1) * (n - i)) / 2, 9);
  });

  it('multiplies: a straight line has no second differences inside', () => {
    const out = new Float64Array(6);
    multiplyBanded(lineOf(6), Float64Array.of(1, 2, 3, 4, 5, 6), out);
    expect(Array.from(out)).toEqual([0, 0, 0, 0, 0, 7]);
  });

  it('refuses a matrix that is not positive definite', () => {
    const band = lineOf(5);
    band.values[5] = -2;
    expect(factorBanded(band)).toBe(false);
  });
});

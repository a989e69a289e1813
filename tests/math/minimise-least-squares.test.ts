import { describe, expect, it } from 'vitest';
import { minimiseLeastSquares } from '../../src/core/math/index.ts';

// NIST StRD nonlinear regression, Misra1a (data and certified values from memory; a wrong digit in either would show).
const MISRA_Y = [
  10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
];
const MISRA_X = [
  77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0,
];

describe('Levenberg–Marquardt', () => {
  it('reaches the certified values of NIST StRD Misra1a from the far start', () => {
    const solution = minimiseLeastSquares({
      start: Float64Array.of(500, 0.0001),
      steps: Float64Array.of(1e-4, 1e-10),
      residualCount: 14,
      residuals: ([b1, b2], out) => {
        MISRA_X.forEach((x, i) => {
          out[i] = b1 * (1 - Math.exp(-b2 * x)) - MISRA_Y[i];
        });
      },
    });
    expect(solution.converged).toBe(true);
    expect(solution.point[0]).toBeCloseTo(238.94212918, 3);
    expect(solution.point[1]).toBeCloseTo(5.5015643181e-4, 9);
    expect(solution.sumOfSquares).toBeCloseTo(0.12455138894, 8);
  });

  it('walks the bent valley of Rosenbrock (1960) to (1, 1)', () => {
    const solution = minimiseLeastSquares({
      start: Float64Array.of(-1.2, 1),
      residualCount: 2,
      residuals: ([x, y], out) => {
        out[0] = 10 * (y - x * x);
        out[1] = 1 - x;
      },
      jacobian: ([x], _, out) => out.set([-20 * x, 10, -1, 0]),
    });
    expect(solution.point[0]).toBeCloseTo(1, 8);
    expect(solution.point[1]).toBeCloseTo(1, 8);
  });

  it('weighs a prior against a reading as the product of two Gaussians does', () => {
    // Reading 10 ± 1, prior 4 ± 2: mean (10/1 + 4/4) / (1/1 + 1/4) = 8.8 (textbook Bayes rule for normals).
    const solution = minimiseLeastSquares({
      start: Float64Array.of(0),
      steps: Float64Array.of(1e-6),
      residualCount: 2,
      residuals: ([p], out) => {
        out[0] = p - 10;
        out[1] = (p - 4) / 2;
      },
    });
    expect(solution.point[0]).toBeCloseTo(8.8, 7);
  });

  it('says when it was stopped before it settled', () => {
    const solution = minimiseLeastSquares(
      {
        start: Float64Array.of(-1.2, 1),
        steps: Float64Array.of(1e-7, 1e-7),
        residualCount: 2,
        residuals: ([x, y], out) => {
          out[0] = 10 * (y - x * x);
          out[1] = 1 - x;
        },
      },
      { maxIterations: 2 },
    );
    expect(solution.converged).toBe(false);
    expect(solution.iterations).toBe(2);
  });
});

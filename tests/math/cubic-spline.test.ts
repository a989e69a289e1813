import { describe, expect, it } from 'vitest';
import { cubicSplineMoments, evaluateCubicSpline } from '../../src/core/math/index.ts';

describe('natural cubic spline', () => {
  it('has the moments of the three-point example worked by hand', () => {
    // 4 M₁ = 6 (y₂ − 2 y₁ + y₀) with unit spacing and M₀ = M₂ = 0 (de Boor 1978, ch. IV, natural ends).
    expect(Array.from(cubicSplineMoments([0, 1, 2], [0, 1, 0]))).toEqual([0, -3, 0]);
  });

  it('keeps straight lines, and passes through its points', () => {
    const x = [-3, -1, 0.5, 4];
    const line = x.map((t) => 2 * t - 1);
    const moments = cubicSplineMoments(x, line);
    expect(evaluateCubicSpline(x, line, moments, 1.7)).toBeCloseTo(2.4, 12);
    const y = [1, -2, 0.3, 5];
    x.forEach((t, i) => {
      expect(evaluateCubicSpline(x, y, cubicSplineMoments(x, y), t)).toBeCloseTo(y[i], 12);
    });
  });

  it('closes on a sine as h⁴: halving the spacing divides the error by about 16', () => {
    // sin has zero second derivative at 0 and π, so natural ends are its own (error bound: Hall and Meyer 1976).
    const errorAt = (n: number): number => {
      const x = Float64Array.from({ length: n + 1 }, (_, i) => (Math.PI * i) / n);
      const y = x.map(Math.sin);
      const moments = cubicSplineMoments(x, y);
      let worst = 0;
      for (let t = 0.001; t < Math.PI; t += 0.001) {
        worst = Math.max(worst, Math.abs(evaluateCubicSpline(x, y, moments, t) - Math.sin(t)));
      }
      return worst;
    };
    const ratio = errorAt(10) / errorAt(20);
    expect(ratio).toBeGreaterThan(14);
    expect(ratio).toBeLessThan(18);
  });

  it('has no jump in slope or bend at a knot', () => {
    const x = [0, 1, 3, 4, 7];
    const y = [0, 2, -1, 0, 4];
    const moments = cubicSplineMoments(x, y);
    const f = (t: number): number => evaluateCubicSpline(x, y, moments, t);
    const h = 1e-3;
    for (const knot of [1, 3, 4]) {
      const left = (f(knot) - 2 * f(knot - h) + f(knot - 2 * h)) / (h * h);
      const right = (f(knot) - 2 * f(knot + h) + f(knot + 2 * h)) / (h * h);
      expect(Math.abs(left - right)).toBeLessThan(0.05);
    }
  });
});

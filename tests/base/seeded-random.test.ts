import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';

describe('seededRandom', () => {
  it('repeats itself for one seed and differs between seeds', () => {
    const take = (seed: number) => Array.from({ length: 20 }, seededRandom(seed));
    expect(take(7)).toEqual(take(7));
    expect(take(7)).not.toEqual(take(8));
  });

  it('is flat: chi-squared over 100 cells stays below the 99.9 % point', () => {
    const next = seededRandom(20240229);
    const cells = new Array<number>(100).fill(0);
    const draws = 100_000;
    for (let i = 0; i < draws; i++) cells[Math.floor(next() * 100)]++;
    const expected = draws / 100;
    const chi2 = cells.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
    // Chi-squared, 99 degrees of freedom, upper 0.1 % point: 148.23 (standard statistical tables).
    expect(chi2).toBeLessThan(148.23);
  });

  it('has neighbours that do not depend on each other', () => {
    const next = seededRandom(5);
    const n = 50_000;
    const x = Array.from({ length: n + 1 }, next);
    let sum = 0;
    for (let i = 0; i < n; i++) sum += (x[i] - 0.5) * (x[i + 1] - 0.5);
    // Lag-1 correlation of independent draws has standard deviation 1/√n; 4 of them is 6e-5 by chance.
    expect(Math.abs((sum / n) * 12)).toBeLessThan(4 / Math.sqrt(n));
  });
});

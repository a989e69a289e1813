import { describe, expect, it } from 'vitest';
import { cutGirth, growthOfGirth } from '../../src/core/inside/index.ts';

describe('growth by the test tube', () => {
  it('is what was measured, for a girth as wide as the tube of 200 mm', () => {
    expect(growthOfGirth(Math.PI * 200, { measuredGrowth: 0.015 })).toBeCloseTo(0.015, 12);
  });

  it('is more for a wider form: tension goes with the radius (Laplace, T = pR)', () => {
    // Tube: 0.015 = kR/(1 − kR) at R = 100 mm, so k = 0.015/1.015/100 = 1.477833e-4. Waist 765: R = 121.753533,
    // kR = 0.0179932; growth 0.0179932/(1 − 0.0179932) = 0.0183229.
    expect(growthOfGirth(765, { measuredGrowth: 0.015 })).toBeCloseTo(0.0183229, 6);
  });
});

describe('the girth to cut', () => {
  it('is the body’s while nothing was typed in', () => {
    expect(cutGirth(940, {})).toBe(940);
    expect(cutGirth(940, { clothThickness: 2, pressure: 9 })).toBe(940);
  });

  it('is 2π times the layers less: 5 mm of wadding and half of 0.6 mm cloth take 33.301 mm', () => {
    // 2π · 5.3 = 33.300882.
    expect(cutGirth(940, { coverThickness: 5, clothThickness: 0.6 })).toBeCloseTo(940 - 33.300882, 5);
  });

  it.each([340, 765, 1130])('grows back to %d mm when filled', (girth) => {
    const options = { measuredGrowth: 0.02, coverThickness: 3, clothThickness: 0.8 };
    const cut = cutGirth(girth, options);
    const layers = 2 * Math.PI * 3.4;
    expect(cut * (1 + growthOfGirth(cut, options)) + layers).toBeCloseTo(girth, 9);
    expect(cut).toBeLessThan(girth - layers);
  });
});

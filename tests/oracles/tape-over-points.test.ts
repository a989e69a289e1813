import { describe, expect, it } from 'vitest';
import { hullPerimeter, stretchedLength } from './tape-over-points.ts';

describe('the tape over points used to judge the program', () => {
  it('goes round a square and ignores what is inside', () => {
    const square = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
      [5, 5],
      [5, 0],
    ] as const;
    expect(hullPerimeter(square).perimeter).toBeCloseTo(40, 12);
  });

  it('counts no arc where it is taut over a hollow', () => {
    // A heart of two unit circles 2 apart, 40 points each: hull = 2π + 2·2; the straight parts are no arcs.
    const count = 40;
    const heart = Array.from({ length: 2 * count }, (_, i) => {
      const t = (2 * Math.PI * (i % count)) / count;
      return [Math.cos(t) + (i < count ? -1 : 1), Math.sin(t)] as const;
    });
    const { perimeter, shortfall } = hullPerimeter(heart);
    expect(Math.abs(perimeter + shortfall - (2 * Math.PI + 4))).toBeLessThan(0.1 * shortfall);
  });

  it('bridges the hollow of a waisted outline', () => {
    // Two unit circles 3 apart: hull = 2π + 2·3, closed form.
    const circles = Array.from({ length: 2000 }, (_, i) => {
      const t = (i * 2 * Math.PI) / 1000;
      return [Math.cos(t) + (i < 1000 ? 0 : 3), Math.sin(t)] as const;
    });
    expect(hullPerimeter(circles).perimeter).toBeCloseTo(2 * Math.PI + 6, 3);
  });

  it('knows how much a coarse outline falls short of the smooth one', () => {
    // Ellipse 3 × 2: perimeter 4·3·E(5/9) = 15.8654395893 (complete elliptic integral, handbook tables).
    for (const n of [40, 80]) {
      const ellipse = Array.from({ length: n }, (_, i) => {
        const t = (i * 2 * Math.PI) / n;
        return [3 * Math.cos(t), 2 * Math.sin(t)] as const;
      });
      const { perimeter, shortfall } = hullPerimeter(ellipse);
      expect(15.8654395893 - perimeter).toBeGreaterThan(0.001);
      expect(Math.abs((15.8654395893 - perimeter) / shortfall - 1)).toBeLessThan(0.02);
    }
  });

  it('follows a bulge and bridges a hollow on the way up', () => {
    // Straight over the hollow: 10. Over the bulge at x = 3: 2·√(9 + 25).
    expect(
      stretchedLength([
        [0, 0],
        [-2, 3],
        [-1, 8],
        [0, 10],
      ]),
    ).toBeCloseTo(10, 12);
    expect(
      stretchedLength([
        [0, 0],
        [1, 2],
        [3, 5],
        [1, 7],
        [0, 10],
      ]),
    ).toBeCloseTo(2 * Math.sqrt(34), 12);
  });
});

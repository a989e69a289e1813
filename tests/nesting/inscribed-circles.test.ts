import { describe, expect, test } from 'vitest';
import { inscribedCircles } from '../../src/core/nesting/inscribed-circles.ts';
import { turnVector } from '../../src/core/nesting/turn-vector.ts';

describe('inscribedCircles', () => {
  test('a right triangle of 3, 4, 5 has a circle of 1 inside', () => {
    // Closed form: (a + b − c) / 2.
    const [x, y, radius] = inscribedCircles(Float64Array.of(0, 0, 4, 0, 0, 3), 1, 0.1);
    expect(radius).toBeGreaterThan(0.97);
    expect(radius).toBeLessThanOrEqual(1 + 1e-9);
    expect(Math.hypot(x - 1, y - 1)).toBeLessThan(0.06);
  });

  test('a strip as thin as a fold has circles nearly as wide as it', () => {
    const circles = inscribedCircles(Float64Array.of(0, 0, 420, 0, 420, 2, 0, 2), 8, 0.1);
    expect(circles.length).toBe(24);
    for (let i = 2; i < circles.length; i += 3) {
      expect(circles[i]).toBeGreaterThan(1 - 0.042);
      expect(circles[i]).toBeLessThanOrEqual(1 + 1e-9);
    }
  });

  test('none leaves the outline or meets another', () => {
    const outline = Float64Array.of(0, 0, 200, 0, 200, 30, 40, 30, 40, 150, 0, 150);
    const circles = inscribedCircles(outline, 8, 0.1);
    expect(circles.length).toBe(24);
    for (let i = 0; i < circles.length; i += 3) {
      const [x, y, r] = circles.slice(i, i + 3);
      const inFoot = x - r >= -1e-9 && x + r <= 200 + 1e-9 && y - r >= -1e-9 && y + r <= 30 + 1e-9;
      const inLeg = x - r >= -1e-9 && x + r <= 40 + 1e-9 && y - r >= -1e-9 && y + r <= 150 + 1e-9;
      // In the corner both walls that are missing leave only the point (40, 30) to keep clear of.
      const inCorner = x <= 40 && y <= 30 && Math.hypot(x - 40, y - 30) >= r - 1e-9;
      expect(inFoot || inLeg || inCorner).toBe(true);
      for (let k = 0; k < i; k += 3)
        expect(Math.hypot(x - circles[k], y - circles[k + 1])).toBeGreaterThan(r + circles[k + 2] - 1e-6);
    }
  });
});

describe('turnVector', () => {
  test('is cosine and sine, exact for quarter turns', () => {
    for (let k = -40; k <= 40; k++) {
      const { cosine, sine } = turnVector(0.317 * k);
      expect(Math.abs(cosine - Math.cos(0.317 * k))).toBeLessThan(2e-15);
      expect(Math.abs(sine - Math.sin(0.317 * k))).toBeLessThan(2e-15);
    }
    expect(turnVector(Math.PI)).toEqual({ cosine: -1, sine: 0 });
    expect(turnVector(-Math.PI / 2)).toEqual({ cosine: 0, sine: -1 });
    expect(turnVector((3 * Math.PI) / 2)).toEqual({ cosine: 0, sine: -1 });
  });
});

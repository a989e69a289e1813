import { describe, expect, test } from 'vitest';
import { findTieChange } from '../../src/core/simulate/index.ts';

/**
 * Sleeve of perimeter P with one web d from front to back: two arcs over the chord d, sin φ/φ = 2d/P, r = P/(4φ). Past a
 * half circle (φ > π/2) the outline is 2r deep, else d; it is 2r(1 − cos φ) wide. Plane geometry of arcs, by hand.
 */
function sizeByHand(P: number, d: number): { width: number; depth: number } {
  let [low, high] = [1e-9, Math.PI];
  for (let i = 0; i < 200; i++) {
    const phi = (low + high) / 2;
    if (Math.sin(phi) / phi > (2 * d) / P) low = phi;
    else high = phi;
  }
  const r = P / (4 * low);
  return { width: 2 * r * (1 - Math.cos(low)), depth: low > Math.PI / 2 ? 2 * r : d };
}

const sleeve = (P: number, d: number) => ({
  problem: {
    spans: Float64Array.of(P / 2, P / 2),
    start: Float64Array.of(0, -d / 2, 0, d / 2),
    ties: [{ from: 0, to: 1, length: d }],
  },
  shares: [1],
});

describe('change of ties', () => {
  test('the hand formula itself: P = 740, d = 196 is 253.804523 wide', () => {
    // Value worked out apart by Newton's method in 50 digits, rounded.
    expect(sizeByHand(740, 196).width).toBeCloseTo(253.804523, 4);
  });

  test.each([-12, -6, -3, 4, 8])('one web: %s mm deeper as by hand', (depthChange) => {
    const [P, d] = [740, 196];
    const before = sizeByHand(P, d);
    const found = findTieChange(sleeve(P, d), depthChange);
    expect(found).not.toBeNull();
    const after = sizeByHand(P, d + (found?.change ?? 0));
    // Sampled outline: 40 points an arc leave up to 0.1 mm at the extremes.
    expect(after.depth - before.depth).toBeCloseTo(depthChange, 0);
    expect(Math.abs(after.depth - before.depth - depthChange)).toBeLessThan(0.15);
    expect(Math.abs(after.width - before.width - (found?.width ?? 0))).toBeLessThan(0.2);
  });

  test('two ties in line to a fixed pole share the change', () => {
    const [P, d] = [740, 196];
    const held = {
      problem: {
        spans: Float64Array.of(P / 2, P / 2),
        start: Float64Array.of(0, -d / 2, 0, d / 2),
        ties: [
          { from: 0, to: [0, 0] as const, length: d / 2 },
          { from: 1, to: [0, 0] as const, length: d / 2 },
        ],
      },
      shares: [0.5, 0.5],
    };
    const web = findTieChange(sleeve(P, d), -6)?.change ?? Number.NaN;
    expect(findTieChange(held, -6)?.change).toBeCloseTo(web, 1);
  });

  test('what no tie can do is told', () => {
    // A slack tie cannot push: a circle of 740 is 235.5 deep and gets no deeper.
    expect(findTieChange(sleeve(740, 300), 5)).toBeNull();
    expect(findTieChange({ ...sleeve(740, 196), shares: [0] }, -5)).toBeNull();
    expect(findTieChange(sleeve(740, 196), -120)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { isStarShaped } from '../../src/core/body/find-crossed-sections.ts';

function curve(x: (t: number) => number, y: (t: number) => number): Float64Array {
  return Float64Array.from({ length: 3 * 200 }, (_, i) => {
    const t = (2 * Math.PI * Math.floor(i / 3)) / 200;
    return i % 3 === 0 ? x(t) : i % 3 === 1 ? y(t) : 0;
  });
}

describe('isStarShaped', () => {
  it('passes an ellipse and a bean, and refuses a figure of eight and a limaçon with an inner loop', () => {
    expect(isStarShaped(curve(Math.cos, (t) => 0.6 * Math.sin(t)))).toBe(true);
    // r = 1 + 0.4 cos 2t never reaches 0: one turn, no crossing.
    const bean = (t: number): number => 1 + 0.4 * Math.cos(2 * t);
    expect(
      isStarShaped(
        curve(
          (t) => bean(t) * Math.cos(t),
          (t) => bean(t) * Math.sin(t),
        ),
      ),
    ).toBe(true);
    // Lemniscate of Gerono; limaçon r = 1 + 2 cos t (textbook curves with a double point).
    expect(isStarShaped(curve(Math.cos, (t) => Math.sin(t) * Math.cos(t)))).toBe(false);
    const limacon = (t: number): number => 1 + 2 * Math.cos(t);
    expect(
      isStarShaped(
        curve(
          (t) => limacon(t) * Math.cos(t),
          (t) => limacon(t) * Math.sin(t),
        ),
      ),
    ).toBe(false);
  });
});

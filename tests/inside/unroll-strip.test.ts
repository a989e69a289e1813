import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { unrollStrip } from '../../src/core/inside/index.ts';

const at = (points: Float64Array, k: number) => [points[2 * k], points[2 * k + 1]];
const between = (a: number[], b: number[]) => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('unrollStrip', () => {
  it('lays a plane ladder as it was (Pythagoras)', () => {
    const strip = unrollStrip(
      [100, 100, 100],
      [30, 30],
      [30, 30],
      [Math.hypot(100, 30), Math.hypot(100, 30)],
    );
    const [x, y] = at(strip.left, 0);
    expect(at(strip.right, 0)[0] - x).toBeCloseTo(100, 9);
    expect(at(strip.right, 2)[1] - y).toBeCloseTo(60, 9);
    expect(at(strip.left, 2)[0] - x).toBeCloseTo(0, 9);
  });

  it('keeps every rail and rung it was given (seed 11)', () => {
    const random = seededRandom(11);
    const n = 30;
    const rungs = Float64Array.from({ length: n }, () => 150 + 8 * random());
    const left = Float64Array.from({ length: n - 1 }, () => 12 + random());
    const right = Float64Array.from({ length: n - 1 }, () => 12 + random());
    const diagonal = Float64Array.from(
      { length: n - 1 },
      (_, k) => Math.hypot(rungs[k], 12) + 0.3 * random(),
    );
    const strip = unrollStrip(rungs, left, right, diagonal);
    for (let k = 0; k < n; k++) {
      expect(between(at(strip.left, k), at(strip.right, k))).toBeCloseTo(rungs[k], 8);
      if (k + 1 === n) continue;
      expect(between(at(strip.left, k), at(strip.left, k + 1))).toBeCloseTo(left[k], 8);
      expect(between(at(strip.right, k), at(strip.right, k + 1))).toBeCloseTo(right[k], 8);
    }
  });
});

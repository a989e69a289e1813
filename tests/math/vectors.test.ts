import { describe, expect, it } from 'vitest';
import {
  add,
  cross,
  distance,
  distanceInPlane,
  distanceInSpace,
  dot,
  normalise,
  scale,
  subtract,
} from '../../src/core/math/index.ts';

describe('vectors', () => {
  // Hamilton's ij = k and round again: the axes are a right-handed frame.
  it('have a right-handed vector product', () => {
    expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
    expect(cross([0, 1, 0], [0, 0, 1])).toEqual([1, 0, 0]);
    expect(cross([0, 0, 1], [1, 0, 0])).toEqual([0, 1, 0]);
  });

  // Lagrange: |a × b|² + (a · b)² = |a|² |b|². Whole numbers, so exact: a × b = (−3, 6, −3), 54 + 32² = 14 · 77.
  it('share out two lengths between the two products', () => {
    const [a, b] = [
      [1, 2, 3],
      [4, 5, 6],
    ];
    expect(cross(a, b)).toEqual([-3, 6, -3]);
    expect(dot(a, b)).toBe(32);
    expect(dot(cross(a, b), cross(a, b)) + dot(a, b) ** 2).toBe(dot(a, a) * dot(b, b));
  });

  it('are added, taken off and scaled coordinate by coordinate', () => {
    expect(add([1, 2, 3], [10, 20, 30])).toEqual([11, 22, 33]);
    expect(subtract([1, 2, 3], [10, 20, 30])).toEqual([-9, -18, -27]);
    expect(scale([1, -2, 3], 4)).toEqual([4, -8, 12]);
  });

  // 1² + 2² + 2² = 3².
  it('become one long', () => {
    expect(normalise([1, 2, -2])).toEqual([1 / 3, 2 / 3, -2 / 3]);
    expect(normalise(Float64Array.of(0, 0, 0))).toEqual([Number.NaN, Number.NaN, Number.NaN]);
  });
});

describe('distances', () => {
  // 2² + 3² + 6² = 7².
  it('are straight in space', () => {
    expect(distance([1, 1, 1], Float64Array.of(3, 4, 7))).toBe(7);
    expect(distanceInSpace(Float64Array.of(9, 9, 9, 1, 1, 1, 3, 4, 7), 1, 2)).toBe(7);
  });

  // 5² + 12² = 13².
  it('are straight in the plane', () => {
    expect(distanceInPlane(Float64Array.of(1, 1, 9, 9, 6, 13), 0, 2)).toBe(13);
  });
});

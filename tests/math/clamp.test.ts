import { expect, it } from 'vitest';
import { clamp } from '../../src/core/math/index.ts';

// By the definition: the middle one of three numbers.
it('clamp keeps what lies between and takes the bound that is passed', () => {
  expect([-2, -1, 0, 3, 4].map((value) => clamp(value, -1, 3))).toEqual([-1, -1, 0, 3, 3]);
  expect(clamp(Number.NaN, 0, 1)).toBeNaN();
});

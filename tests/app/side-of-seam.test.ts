import { expect, it } from 'vitest';
import { sideOfSeam } from '../../src/app/store/index.ts';

// x to the wearer's right (DEVELOPERS.md); by hand.
const line = (...xs: number[]) => ({
  points: xs.map((_, i) => i),
  positions: Float64Array.from(xs.flatMap((x) => [x, 100, 1000])),
});

it.each([
  ['a side seam of the right half', [150, 160, 155], 'right'],
  ['its partner', [-150, -160, -155], 'left'],
  ['the centre front, sewn a little off', [0.4, -0.3, 0.2], null],
  ['a waist seam from side to side', [150, 0, -150], null],
  ['one that begins at the centre', [0, 40, 120], 'right'],
] as const)('%s', (_, xs, side) => {
  const { points, positions } = line(...xs);
  expect(sideOfSeam(points, positions)).toBe(side);
});

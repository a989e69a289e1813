import { expect, it } from 'vitest';
import { placeBadges } from '../../src/app/views/panels/place-badges.ts';

/** A strip 20 wide and 200 long, run counter-clockwise: its long sides are nearer to each other than two letters may be. */
const strip = [
  [0, 0, 20, 0],
  [20, 0, 20, 200],
  [20, 200, 0, 200],
  [0, 200, 0, 0],
].map((side) => Float64Array.from(side));

it('stands inside, at the middle of a line that has room', () => {
  const [[x, y]] = placeBadges([Float64Array.of(0, 0, 100, 0)], 12, 17);
  expect([x, y]).toEqual([50, 12]);
});

it('keeps letters apart by sliding them along their lines', () => {
  const badges = placeBadges(strip, 5, 17);
  for (const [i, [x, y]] of badges.entries()) {
    expect(x).toBeGreaterThan(0);
    expect(x).toBeLessThan(20);
    expect(y).toBeGreaterThan(0);
    expect(y).toBeLessThan(200);
    for (const [px, py] of badges.slice(0, i)) expect(Math.hypot(px - x, py - y)).toBeGreaterThanOrEqual(17);
  }
  // The middles alone would have been too close.
  expect(20 - 2 * 5).toBeLessThan(17);
});

it('takes the farthest place where none is far enough', () => {
  const [first, second] = placeBadges([Float64Array.of(0, 0, 10, 0), Float64Array.of(10, 0, 0, 0)], 0, 100);
  expect(Math.abs(first[0] - second[0])).toBeCloseTo(3.6, 9);
});

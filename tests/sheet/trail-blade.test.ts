import { describe, expect, it } from 'vitest';
import { makePath, makeText } from '../../src/core/drawing/index.ts';
import { trailBlade } from '../../src/core/sheet/trail-blade.ts';

/**
 * Where the tip of a dragged knife goes when its axis is drawn along a line: the tip is pulled along the direction from tip
 * to axis and stays `offset` behind (the tractrix; Cundy and Rollett, Mathematical Models §2.9.4), in steps of 0.002 mm.
 */
function drag(axis: Float64Array, offset: number, angle: number): [number, number][] {
  let [tx, ty] = [axis[0] - offset * Math.cos(angle), axis[1] - offset * Math.sin(angle)];
  const tips: [number, number][] = [[tx, ty]];
  for (let i = 2; i < axis.length; i += 2) {
    const [ax, ay, bx, by] = [axis[i - 2], axis[i - 1], axis[i], axis[i + 1]];
    const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / 0.002));
    for (let k = 1; k <= steps; k++) {
      const [px, py] = [ax + ((bx - ax) * k) / steps, ay + ((by - ay) * k) / steps];
      const length = Math.hypot(px - tx, py - ty);
      [tx, ty] = [px - (offset * (px - tx)) / length, py - (offset * (py - ty)) / length];
      if (k === steps || k % 25 === 0) tips.push([tx, ty]);
    }
  }
  return tips;
}

const SQUARE = Float64Array.of(0, 0, 20, 0, 20, 20, 0, 20);

describe('a dragged knife whose axis follows the line made for it', () => {
  for (const offset of [0.25, 0.5, 0.9]) {
    it(`cuts a square with its corners, offset ${offset} mm`, () => {
      const item = trailBlade(makePath(SQUARE, { closed: true, id: 'a' }), offset, 1);
      if (item.kind !== 'path') throw new Error('no path');
      expect(item.closed).toBe(false);
      expect(item.id).toBe('a');
      const tips = drag(item.points, offset, 0);
      const off = tips.map(([x, y]) => {
        const outside = Math.max(-x, -y, x - 20, y - 20);
        const inside = Math.min(x, y, 20 - x, 20 - y);
        return outside > 0 ? outside : inside;
      });
      expect(Math.max(...off)).toBeLessThan(0.02);
      for (const [cx, cy] of [
        [20, 0],
        [20, 20],
        [0, 20],
        [0, 0],
      ])
        expect(Math.min(...tips.map(([x, y]) => Math.hypot(x - cx, y - cy)))).toBeLessThan(0.02);
      // One millimetre past the start.
      const [x, y] = tips[tips.length - 1];
      expect(Math.hypot(x - 1, y)).toBeLessThan(0.02);
    });
  }

  it('would round every corner without it: the test can fail', () => {
    const tips = drag(Float64Array.of(0, 0, 20, 0, 20, 20), 0.5, 0);
    expect(Math.min(...tips.map(([x, y]) => Math.hypot(x - 20, y)))).toBeGreaterThan(0.1);
  });

  it('cuts a circle', () => {
    const circle = Float64Array.from({ length: 400 }, (_, i) => {
      const angle = (Math.PI * 2 * Math.floor(i / 2)) / 200;
      return 15 * (i % 2 === 0 ? Math.cos(angle) : Math.sin(angle));
    });
    const item = trailBlade(makePath(circle, { closed: true }), 0.5, 0);
    if (item.kind !== 'path') throw new Error('no path');
    for (const [x, y] of drag(item.points, 0.5, Math.PI / 2))
      expect(Math.abs(Math.hypot(x, y) - 15)).toBeLessThan(0.02);
  });
});

it('leaves lines alone where there is no offset, and texts always', () => {
  const path = makePath(SQUARE, { closed: true });
  expect(trailBlade(path, 0, 0)).toBe(path);
  const text = makeText(0, 0, 'a', 5);
  expect(trailBlade(text, 0.5, 1)).toBe(text);
});

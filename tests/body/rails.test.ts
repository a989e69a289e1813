import { describe, expect, it } from 'vitest';
import { type Body, surfaceOfBody } from '../../src/core/body/index.ts';
import { RAIL_COUNT } from '../../src/core/body/rails.ts';
import { cauchyGirth, denseRow, extent } from './measure-surface.ts';
import { fitOrThrow, readDemo } from './read-demo.ts';

/** Exact perimeter of an ellipse by the arithmetic–geometric mean (Gauss; Abramowitz and Stegun 17.6). */
function ellipsePerimeter(a: number, b: number): number {
  let x = a;
  let y = b;
  let power = 0.5;
  let sum = x * x - power * (x * x - y * y);
  while (Math.abs(x - y) > 1e-14 * x) {
    const [mean, root] = [(x + y) / 2, Math.sqrt(x * y)];
    const gap = (x - y) / 2;
    power *= 2;
    sum -= power * gap * gap;
    x = mean;
    y = root;
  }
  return (2 * Math.PI * sum) / x;
}

/** Ramanujan's second approximation (1914), good to 1e-9 at these shapes. */
function ramanujanPerimeter(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

/** A body whose every section is the same superposed ellipse: rails set by hand. */
function tube(a: number, d: number, squareness: number): Pick<Body, 'shape'> {
  const knots = Float64Array.from([-270, -218, -100, 0, 55, 118, 165, 230, 285, 355, 425, 465]);
  const n = knots.length;
  const rails = new Float64Array(RAIL_COUNT * n);
  const fill = (rail: number, value: (k: number) => number): void => {
    for (let k = 0; k < n; k++) rails[rail * n + k] = value(k);
  };
  fill(0, () => a);
  fill(2, () => d);
  fill(3, () => -d);
  for (const rail of [4, 5]) fill(rail, () => squareness);
  for (const rail of [6, 8, 9]) fill(rail, (k) => knots[k]);
  const armhole = { yaw: 0, front: 0.5, back: 0.5, turn: 0 };
  return {
    shape: {
      isMirrorSymmetric: true,
      vRange: [-270, 465],
      knots,
      rises: knots,
      rails,
      bumps: new Float64Array(0),
      armhole,
    },
  };
}

describe('sections', () => {
  it.each([
    [150, 105],
    [180, 116],
  ])('of squareness 0 are ellipses %d × %d', (a, d) => {
    const exact = ellipsePerimeter(a, d);
    expect(ramanujanPerimeter(a, d) / exact).toBeCloseTo(1, 7);
    const row = denseRow(surfaceOfBody(tube(a, d, 0)), -150);
    expect(Math.abs(cauchyGirth(row) - exact)).toBeLessThan(0.01);
  });

  it('keep their box whatever the squareness, grow fuller with it, and stay convex', () => {
    let before = 0;
    for (const k of [0, 0.03, 0.06]) {
      const row = denseRow(surfaceOfBody(tube(150, 100, k)), -150);
      expect(extent(row, 0)).toBeCloseTo(300, 4);
      expect(extent(row, 1)).toBeCloseTo(200, 4);
      const girth = cauchyGirth(row);
      expect(girth).toBeGreaterThan(before);
      before = girth;
      let length = 0;
      for (let i = 0; i < row.length; i += 3) {
        const j = (i + 3) % row.length;
        length += Math.hypot(row[j] - row[i], row[j + 1] - row[i + 1]);
      }
      // A convex curve is as long as its hull.
      expect(length / girth).toBeCloseTo(1, 5);
    }
  });

  it('bend without a jump at the side, where front and back depths differ', () => {
    const surface = surfaceOfBody(fitOrThrow(readDemo('average')));
    const h = 2e-3;
    const curvature = (u: number): number => {
      const p = [u - h, u, u + h].map((x) => surface.evaluate(Float64Array.of(x, -50)));
      const [x1, y1] = [(p[2][0] - p[0][0]) / (2 * h), (p[2][1] - p[0][1]) / (2 * h)];
      const [x2, y2] = [
        (p[2][0] - 2 * p[1][0] + p[0][0]) / (h * h),
        (p[2][1] - 2 * p[1][1] + p[0][1]) / (h * h),
      ];
      return (x1 * y2 - y1 * x2) / Math.hypot(x1, y1) ** 3;
    };
    // Within 3 mrad the curvature of a C² curve moves by a few per cent at most; a jump would be tens.
    expect(curvature(3e-3) / curvature(-3e-3)).toBeCloseTo(1, 1);
    expect(curvature(0) * 1000).toBeGreaterThan(1);
    expect(curvature(Math.PI / 2) * 1000).toBeGreaterThan(0.5);
  });
});

import { describe, expect, it } from 'vitest';
import { type FittedPath, fitCurves } from '../../src/core/drawing/index.ts';

const TOLERANCE = 0.015;

/** Dense points of a fitted path by de Casteljau's construction (Farin, Curves and Surfaces for CAGD). */
function evaluate({ startX, startY, pieces, isCurve }: FittedPath, steps = 40): [number, number][] {
  const dense: [number, number][] = [[startX, startY]];
  let from: [number, number] = [startX, startY];
  isCurve.forEach((curved, i) => {
    const [x1, y1, x2, y2, x, y] = pieces.subarray(6 * i, 6 * i + 6);
    const corners: [number, number][] = curved ? [from, [x1, y1], [x2, y2], [x, y]] : [from, [x, y]];
    for (let k = 1; k <= steps; k++) {
      let row = corners;
      while (row.length > 1)
        row = row.slice(1).map(([bx, by], j): [number, number] => {
          const [ax, ay] = row[j];
          return [ax + ((bx - ax) * k) / steps, ay + ((by - ay) * k) / steps];
        });
      dense.push(row[0]);
    }
    from = [x, y];
  });
  return dense;
}

function distance(x: number, y: number, line: readonly (readonly [number, number])[]): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 1; i < line.length; i++) {
    const [[ax, ay], [bx, by]] = [line[i - 1], line[i]];
    const squared = (bx - ax) ** 2 + (by - ay) ** 2;
    const t =
      squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / squared));
    best = Math.min(best, Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y));
  }
  return best;
}

/** Largest distance either way (Hausdorff), both lines sampled densely. */
function deviation(
  points: Float64Array,
  closed: boolean,
): { worst: number; pieces: number; path: FittedPath } {
  const path = fitCurves(points, closed, TOLERANCE);
  const curve = evaluate(path);
  const given = Array.from({ length: points.length / 2 }, (_, i): [number, number] => [
    points[2 * i],
    points[2 * i + 1],
  ]);
  if (closed) given.push(given[0]);
  const between = given
    .slice(1)
    .flatMap(([x, y], i): [number, number][] =>
      [0.25, 0.5, 0.75, 1].map((t) => [
        given[i][0] + t * (x - given[i][0]),
        given[i][1] + t * (y - given[i][1]),
      ]),
    );
  const worst = Math.max(
    ...curve.map(([x, y]) => distance(x, y, given)),
    ...between.map(([x, y]) => distance(x, y, curve)),
  );
  return { worst, pieces: path.isCurve.length, path };
}

const sample = (count: number, f: (t: number) => [number, number]): Float64Array =>
  Float64Array.from({ length: 2 * count }, (_, i) => f(Math.floor(i / 2) / (count - 1))[i % 2]);

describe('fitted curves keep within 0.02 mm of the polyline', () => {
  const cases: Record<string, [Float64Array, boolean]> = {
    'a quarter circle of 120 mm': [
      sample(120, (t) => [120 * Math.cos(1.5708 * t), 120 * Math.sin(1.5708 * t)]),
      false,
    ],
    'a round hole of 12 mm': [
      sample(65, (t) => [12 * Math.cos(6.28318530718 * t), 12 * Math.sin(6.28318530718 * t)]).slice(0, 128),
      true,
    ],
    'a wave of 400 mm': [sample(300, (t) => [400 * t, 30 * Math.sin(9 * t)]), false],
    'a spiral': [
      sample(400, (t) => [(10 + 80 * t) * Math.cos(7 * t), (10 + 80 * t) * Math.sin(7 * t)]),
      false,
    ],
    'points as far apart as on a shell': [sample(70, (t) => [40 * Math.sin(3 * t), 480 * t]), false],
  };
  for (const [name, [points, closed]] of Object.entries(cases)) {
    it(name, () => {
      const { worst, pieces } = deviation(points, closed);
      expect(worst).toBeLessThan(0.02);
      // Never more numbers than the points had; fewer by far where they lie close.
      expect(6 * pieces).toBeLessThan(3 * points.length);
    });
  }

  it('takes a tenth of the numbers on a finely sampled curve', () => {
    const points = sample(600, (t) => [100 * Math.cos(3 * t), 100 * Math.sin(3 * t)]);
    expect(6 * deviation(points, false).pieces).toBeLessThan(points.length / 10);
  });
});

it('keeps corners, ends and straight lines exactly', () => {
  const arc = sample(60, (t) => [50 * Math.cos(3 * t), 50 * Math.sin(3 * t)]);
  const points = Float64Array.of(...arc, -49.5, 40, 10, 40);
  const { startX, startY, pieces, isCurve } = fitCurves(points, false, TOLERANCE);
  expect([startX, startY]).toEqual([50, 0]);
  const ends = Array.from(isCurve, (_, i) => `${pieces[6 * i + 4]} ${pieces[6 * i + 5]}`);
  expect(ends).toContain(`${arc[118]} ${arc[119]}`);
  expect(ends.slice(-2)).toEqual(['-49.5 40', '10 40']);
  expect([...isCurve.slice(-2)]).toEqual([0, 0]);
});

it('leaves a square a square, and a single point a point', () => {
  const { pieces, isCurve } = fitCurves(Float64Array.of(0, 0, 100, 0, 100, 100, 0, 100), true, TOLERANCE);
  expect([...isCurve]).toEqual([0, 0, 0, 0]);
  expect([...pieces.subarray(22)]).toEqual([0, 0]);
  expect(fitCurves(Float64Array.of(5, 6), false, TOLERANCE).isCurve.length).toBe(0);
});

it('fits the same curve the same way twice, and leaves its input alone', () => {
  const points = sample(100, (t) => [100 * t, 20 * t * t]);
  const before = points.slice();
  expect(fitCurves(points, false, TOLERANCE)).toEqual(fitCurves(points, false, TOLERANCE));
  expect(points).toEqual(before);
});

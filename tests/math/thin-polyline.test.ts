import fc from 'fast-check';
import { expect, it } from 'vitest';
import { thinPolyline } from '../../src/core/math/index.ts';

/** Distance of a point to a segment, by the area of their triangle (school geometry). */
function distanceToSegment([x, y]: number[], [ax, ay]: number[], [bx, by]: number[]): number {
  const [ab, ap, bp] = [Math.hypot(bx - ax, by - ay), Math.hypot(x - ax, y - ay), Math.hypot(x - bx, y - by)];
  if (ab === 0 || ap * ap > bp * bp + ab * ab || bp * bp > ap * ap + ab * ab) return Math.min(ap, bp);
  return Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / ab;
}

it('keeps an arc with the chords whose sagitta is the tolerance: r (1 − cos θ/2), school geometry', () => {
  const [radius, tolerance, count] = [100, 0.015, 4000];
  const arc = Float64Array.from({ length: 2 * count }, (_, i) => {
    const angle = (Math.PI * Math.floor(i / 2)) / (count - 1);
    return i % 2 === 0 ? radius * Math.cos(angle) : radius * Math.sin(angle);
  });
  const kept = thinPolyline(arc, false, tolerance);
  const fewest = Math.ceil(Math.PI / (2 * Math.acos(1 - tolerance / radius)));
  expect(kept.length).toBeGreaterThan(fewest);
  // Halving leaves chords between half the longest possible and that one.
  expect(kept.length).toBeLessThanOrEqual(2 * fewest + 1);
});

it('leaves the corners of a square and what is fixed', () => {
  const square = Float64Array.of(0, 0, 5, 0, 10, 0, 10, 10, 5, 10, 0, 10, 0, 5);
  expect(thinPolyline(square, true, 0.01)).toEqual([0, 2, 3, 5]);
  expect(thinPolyline(square, true, 0.01, new Set([4]))).toEqual([0, 2, 3, 4, 5]);
});

it('stays within the tolerance of every point it leaves out', () => {
  const steps = fc.array(fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 })), {
    minLength: 1,
    maxLength: 60,
  });
  fc.assert(
    fc.property(steps, fc.boolean(), (moves, closed) => {
      const line: number[][] = [[0, 0]];
      for (const [dx, dy] of moves) line.push([line.at(-1)![0] + dx / 7, line.at(-1)![1] + dy / 7]);
      const kept = thinPolyline(Float64Array.from(line.flat()), closed, 0.5);
      const chords = closed && kept.length > 1 ? [...kept, kept[0] + line.length] : kept;
      for (let k = 0; k + 1 < chords.length; k++)
        for (let i = chords[k]; i <= chords[k + 1]; i++) {
          const [p, a, b] = [i, chords[k], chords[k + 1]].map((n) => line[n % line.length]);
          expect(distanceToSegment(p, a, b)).toBeLessThanOrEqual(0.5 + 1e-9);
        }
    }),
    { numRuns: 200, seed: 11 },
  );
});

import { describe, expect, it } from 'vitest';
import { measureBend } from '../../src/core/seams/index.ts';

type Line = (t: number) => readonly [place: readonly number[], normal: readonly number[]];

/** Bend at the middle of 41 points on a line, t from 0 to 1, with the surface's exact normals. */
function bendOf(line: Line): number {
  const samples = Array.from({ length: 41 }, (_, i) => line(i / 40));
  const positions = Float64Array.from(samples.flatMap(([place]) => [...place]));
  const normals = Float64Array.from(samples.flatMap(([, normal]) => [...normal]));
  const bend = measureBend(positions, normals, Uint32Array.from(samples.keys()));
  expect([bend[0], bend[40]]).toEqual([0, 0]);
  return bend[20];
}

// Closed forms: do Carmo, Differential Geometry of Curves and Surfaces (1976), section 4-4.
describe('how sharply a line turns within a surface', () => {
  it('is none on a helix of a cylinder, which unrolls straight', () => {
    const helix: Line = (t) => [
      [100 * Math.cos(t), 100 * Math.sin(t), 80 * t],
      [Math.cos(t), Math.sin(t), 0],
    ];
    expect(Math.abs(bendOf(helix))).toBeLessThan(1e-12);
  });

  it('is one over the slant on a ring of a cone, which unrolls to an arc of that radius', () => {
    // Half angle 30°, ring at slant 200 mm: radius 100 mm; apex below, so the arc turns right seen from outside.
    const [s, c] = [0.5, Math.sqrt(0.75)];
    const ring: Line = (t) => [
      [100 * Math.cos(t), 100 * Math.sin(t), 200 * c],
      [c * Math.cos(t), c * Math.sin(t), -s],
    ];
    expect(bendOf(ring)).toBeCloseTo(-1 / 200, 6);
    expect(bendOf((t) => ring(1 - t))).toBeCloseTo(1 / 200, 6);
  });

  it('is tan(latitude) / R on a parallel of a sphere', () => {
    const latitude = 0.5;
    const parallel: Line = (t) => {
      const normal = [Math.cos(latitude) * Math.cos(t), Math.cos(latitude) * Math.sin(t), Math.sin(latitude)];
      return [normal.map((x) => 150 * x), normal];
    };
    expect(bendOf(parallel)).toBeCloseTo(Math.tan(latitude) / 150, 5);
  });
});

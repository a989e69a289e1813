import { describe, expect, it } from 'vitest';
import { measureStrain } from '../../src/core/flatten/index.ts';
import { makeGrid } from './cases/disk-meshes.ts';

/** Body: a 100 × 100 mm square standing in the x–z plane, seen from the front (−y). */
const body = makeGrid(4, 4, (u, v) => [100 * u, 0, 100 * v]);

function flatFrom(map: (x: number, z: number) => readonly [number, number]): Float64Array {
  const flat = new Float64Array((2 * body.positions.length) / 3);
  for (let v = 0; v < flat.length / 2; v++)
    flat.set(map(body.positions[3 * v], body.positions[3 * v + 2]), 2 * v);
  return flat;
}

describe('measureStrain', () => {
  // By hand: flat 100/1.05 wide must stretch 5 % to reach the body; flat 100/0.98 high must shrink 2 %.
  it('is positive where the cloth must stretch from flat to body, negative where it must shrink', () => {
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [x / 1.05, z / 0.98]),
    );
    for (let f = 0; f < strain.major.length; f++) {
      expect(strain.major[f]).toBeCloseTo(0.05, 12);
      expect(strain.minor[f]).toBeCloseTo(-0.02, 12);
      expect(Math.abs(Math.sin(strain.direction[f]))).toBeLessThan(1e-9);
    }
    expect(strain.summary).toMatchObject({ flipped: 0 });
    expect(strain.summary.min).toBeCloseTo(-0.02, 12);
    expect(strain.summary.max).toBeCloseTo(0.05, 12);
    expect(strain.summary.rms).toBeCloseTo(Math.sqrt((0.05 ** 2 + 0.02 ** 2) / 2), 12);
    expect(strain.summary.p95).toBeCloseTo(0.05, 12);
    expect(strain.summary.area3d).toBeCloseTo(10000, 9);
    expect(strain.summary.areaFlat).toBeCloseTo(10000 / (1.05 * 0.98), 9);
  });

  it('gives the direction in the flat, from +x', () => {
    const angle = 0.4;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [(c * x) / 1.1 - s * z, (s * x) / 1.1 + c * z]),
    );
    for (let f = 0; f < strain.major.length; f++) {
      expect(strain.major[f]).toBeCloseTo(0.1, 12);
      expect(strain.minor[f]).toBeCloseTo(0, 12);
      expect(Math.abs(Math.sin(strain.direction[f] - angle))).toBeLessThan(1e-9);
    }
  });

  // Simple shear by γ: stretches √(1 + γ²/4) ± γ/2 (any text on continuum mechanics).
  it('knows simple shear', () => {
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [x + 0.2 * z, z]),
    );
    expect(strain.major[0]).toBeCloseTo(Math.sqrt(1.01) + 0.1 - 1, 12);
    expect(strain.minor[0]).toBeCloseTo(Math.sqrt(1.01) - 0.1 - 1, 12);
  });

  it('weighs percentiles by area', () => {
    // Left quarter of the columns strained by 8 %, the rest not at all: 1 in 8 of the principal strains by area.
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [x <= 25 ? x / 1.08 : x - 25 + 25 / 1.08, z]),
    );
    expect(strain.summary.p95).toBeCloseTo(0.08, 12);
    expect(strain.summary.rms).toBeCloseTo(Math.sqrt(0.08 ** 2 / 8), 12);
    const half = measureStrain(
      body,
      flatFrom((x, z) => [x, z]),
    );
    expect(half.summary.p99).toBeLessThan(1e-12);
  });

  it('counts flipped triangles and keeps them out of the rest', () => {
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [x < 90 ? x : 60, z]),
    );
    expect(strain.summary.flipped).toBe(8);
    expect(strain.summary.max).toBeLessThan(1e-12);
    expect(strain.major.filter(Number.isNaN).length).toBe(8);
  });
});

import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import {
  CLOTHS,
  type Cloth,
  findGrain,
  findOverLimit,
  flattenTogether,
  measureClothStrain,
  measureGrain,
  measureStrain,
  turnFlat,
} from '../../src/core/flatten/index.ts';
import { inEnglish } from '../in-english.ts';
import { makeGrid } from './cases/disk-meshes.ts';

/** Body: a 100 × 100 mm square standing in the x–z plane, seen from the front (−y). */
const body = makeGrid(10, 10, (u, v) => [100 * u, 0, 100 * v]);
const UP = Math.PI / 2;

function flatFrom(map: (x: number, z: number) => readonly [number, number]): Float64Array {
  const flat = new Float64Array((2 * body.positions.length) / 3);
  for (let v = 0; v < flat.length / 2; v++)
    flat.set(map(body.positions[3 * v], body.positions[3 * v + 2]), 2 * v);
  return flat;
}

const even: Cloth = {
  id: 'plainCotton',
  name: verbatim('even'),
  warp: { stretch: 0.02, shrink: 0.01 },
  weft: { stretch: 0.02, shrink: 0.01 },
  bias: { stretch: 0.2, shrink: 0.2 },
};

describe('strain in the axes of the cloth', () => {
  // By hand: across must stretch 5 %, upwards shrink 2 %; a diagonal becomes √((1.05² + 0.98²) / 2) of its length.
  it('tells warp from weft, with sign', () => {
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [x / 1.05, z / 0.98]),
    );
    const upright = measureClothStrain(strain, UP, CLOTHS[0]);
    const lying = measureClothStrain(strain, 0, CLOTHS[0]);
    for (let f = 0; f < upright.warp.length; f++) {
      expect(upright.warp[f]).toBeCloseTo(-0.02, 12);
      expect(upright.weft[f]).toBeCloseTo(0.05, 12);
      expect(lying.warp[f]).toBeCloseTo(0.05, 12);
      expect(lying.weft[f]).toBeCloseTo(-0.02, 12);
      expect(upright.bias[f]).toBeCloseTo(Math.sqrt((1.05 ** 2 + 0.98 ** 2) / 2) - 1, 12);
      // 0.05 of 0.03 against 0.02 of 0.015.
      expect(upright.usage[f]).toBeCloseTo(5 / 3, 10);
      expect(upright.axis[f]).toBe(1);
    }
  });

  // Simple shear by γ leaves one thread, lengthens the other to √(1 + γ²) and the diagonals to √(1 ± γ + γ²/2).
  it('sees shear on the bias', () => {
    const shear = 0.2;
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [x - shear * z, z]),
    );
    const cloth = measureClothStrain(strain, UP, { ...CLOTHS[0], bias: { stretch: 0.01, shrink: 1 } });
    expect(cloth.weft[0]).toBeCloseTo(0, 12);
    expect(cloth.warp[0]).toBeCloseTo(Math.sqrt(1 + shear ** 2) - 1, 12);
    expect(cloth.bias[0]).toBeCloseTo(Math.sqrt(1 + shear + shear ** 2 / 2) - 1, 12);
  });

  it('finds the grain that lays the strain on the bias', () => {
    const angle = 0.3;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    // Stretch along `angle`, as much shrink across it: threads at 45° to both keep their length (nearly).
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [(c * x) / 1.01 - (s * z) / 0.99, (s * x) / 1.01 + (c * z) / 0.99]),
    );
    const same = { stretch: 0.02, shrink: 0.02 };
    // A bias that takes anything: else every grain near the best is as good.
    const cloth = { ...even, warp: same, weft: same, bias: { stretch: 100, shrink: 100 } };
    const best = findGrain(body, strain, cloth);
    const fromBias = (2 * (best.angle - angle - Math.PI / 4)) / Math.PI;
    expect(Math.abs(fromBias - Math.round(fromBias))).toBeLessThan(2e-3);
    expect(best.usage).toBeLessThan(0.1);
    expect(measureGrain(body, strain, cloth, angle).usage).toBeCloseTo(0.5, 2);
    expect(best.angle).toBeGreaterThanOrEqual(0);
    expect(best.angle).toBeLessThan(Math.PI);
  });

  it('outlines places that ask for more than the cloth takes', () => {
    // The right half has to stretch 3 % across, the left half 1 %.
    const strain = measureStrain(
      body,
      flatFrom((x, z) => [x < 50 ? x / 1.01 : 50 / 1.01 + (x - 50) / 1.03, z]),
    );
    const zones = findOverLimit(body, measureClothStrain(strain, UP, even));
    expect(zones).toHaveLength(1);
    expect(zones[0]).toMatchObject({ axis: 'weft' });
    expect(zones[0].worst).toBeCloseTo(0.03, 10);
    expect(zones[0].usage).toBeCloseTo(1.5, 10);
    const isRight = (f: number): boolean =>
      [0, 1, 2].every((k) => body.positions[3 * body.triangles[3 * f + k]] >= 50 - 1e-9);
    expect(Array.from(zones[0].triangles).every(isRight)).toBe(true);
    expect(zones[0].area).toBeCloseTo(100 * 50, 6);
    let outline = 0;
    for (let i = 0; i < zones[0].outline.length; i += 2) {
      const [a, b] = [zones[0].outline[i], zones[0].outline[i + 1]];
      outline += Math.hypot(...[0, 1, 2].map((d) => body.positions[3 * a + d] - body.positions[3 * b + d]));
    }
    expect(outline).toBeCloseTo(2 * (100 + 50), 6);
  });
});

describe('rather stretch than wrinkle', () => {
  it('lays a plane 1 % smaller at aversion 1, but keeps a held length', () => {
    const problem = { disks: [body], mirrorOf: Int32Array.of(-1), joins: [], keptPaths: [] };
    const free = flattenTogether(problem, { wrinkleAversion: 1 });
    if (!free.ok) throw new Error(inEnglish(free.issues[0].message));
    const { min, max } = free.value[0].strain.summary;
    expect(min).toBeCloseTo(0.01, 6);
    expect(max).toBeCloseTo(0.01, 6);
    const n = Math.round(Math.sqrt(body.positions.length / 3));
    const row = Uint32Array.from({ length: n }, (_, i) => i);
    const held = flattenTogether(
      { ...problem, keptPaths: [{ disk: 0, vertices: row }] },
      { wrinkleAversion: 1 },
    );
    if (!held.ok) throw new Error(inEnglish(held.issues[0].message));
    const p = held.value[0].positions;
    expect(Math.hypot(p[2 * row[n - 1]] - p[0], p[2 * row[n - 1] + 1] - p[1])).toBeGreaterThan(99.7);
    // The rest of the plane still leans to stretch.
    expect(held.value[0].strain.summary.areaFlat).toBeLessThan(9950);
  });
});

it('turns a piece so that one grain becomes another: strain along it stays', () => {
  // By hand: across must stretch 5 %, upwards shrink 2 %; a quarter turn swaps the threads, an eighth the diagonals.
  const positions = flatFrom((x, z) => [x / 1.05, z / 0.98]);
  const flat = { positions, strain: measureStrain(body, positions) };
  const turned = turnFlat(flat, 0.3);
  const measuredAnew = measureStrain(body, turned.positions);
  const quarter = measureClothStrain(turnFlat(flat, UP).strain, UP, CLOTHS[0]);
  for (let f = 0; f < quarter.warp.length; f++) {
    // A principal direction and its opposite are the same.
    expect(Math.sin(turned.strain.direction[f] - measuredAnew.direction[f])).toBeCloseTo(0, 10);
    expect(quarter.warp[f]).toBeCloseTo(0.05, 12);
    expect(quarter.weft[f]).toBeCloseTo(-0.02, 12);
  }
});

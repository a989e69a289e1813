import { describe, expect, test } from 'vitest';
import { type Mesh, measureVolume, measureVolumeWithin } from '../../src/core/mesh/index.ts';
import { buildSphere } from './sample-meshes.ts';

/** Box from the origin corner to (a, b, c), moved. */
function buildBox([a, b, c]: number[], [x, y, z]: number[]): Mesh {
  const positions = Float64Array.from(
    [0, 1, 2, 3, 4, 5, 6, 7].flatMap((i) => [x + (i & 1 ? a : 0), y + (i & 2 ? b : 0), z + (i & 4 ? c : 0)]),
  );
  const quads = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ];
  return { positions, triangles: Uint32Array.from(quads.flatMap(([p, q, r, s]) => [p, q, r, p, r, s])) };
}

describe('volume between planes', () => {
  test('box: length × width × height of what is left', () => {
    const box = buildBox([3, 5, 7], [100, -40, 20]);
    expect(measureVolumeWithin(box, {})).toBeCloseTo(105, 9);
    expect(measureVolumeWithin(box, { zMin: 22, zMax: 24.5 })).toBeCloseTo(3 * 5 * 2.5, 9);
    expect(measureVolumeWithin(box, { zMin: 22, yMax: -39 })).toBeCloseTo(3 * 1 * 5, 9);
    expect(measureVolumeWithin(box, { zMin: 30 })).toBe(0);
  });

  test('sphere: cap πh²(3R − h)/3 (Archimedes)', () => {
    const R = 100;
    const sphere = buildSphere(R, 5);
    const shrink = measureVolume(sphere) / ((4 / 3) * Math.PI * R ** 3);
    for (const h of [20, 60, 140]) {
      const cap = (Math.PI * h * h * (3 * R - h)) / 3;
      expect(measureVolumeWithin(sphere, { zMin: R - h }) / (cap * shrink)).toBeCloseTo(1, 2);
    }
    // Halves in front and behind.
    expect(measureVolumeWithin(sphere, { yMin: 0 })).toBeCloseTo(measureVolume(sphere) / 2, 0);
  });

  test('slabs add up to the whole', () => {
    const sphere = buildSphere(80, 3);
    const cuts = [-200, -31, 4.5, 27, 200];
    const sum = cuts
      .slice(1)
      .reduce((total, zMax, i) => total + measureVolumeWithin(sphere, { zMin: cuts[i], zMax }), 0);
    expect(sum / measureVolume(sphere)).toBeCloseTo(1, 10);
  });
});

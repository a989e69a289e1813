import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { writeObj, writeStl } from '../../src/core/export/index.ts';
import { capBoundaryLoops, findBoundaryLoops, type Mesh } from '../../src/core/mesh/index.ts';
import { tube } from './synthetic-meshes.ts';

/** A closed elliptic cylinder. */
function can(): Mesh {
  const open = tube(150, 100, 700, 96, 10);
  return capBoundaryLoops(open, findBoundaryLoops(open));
}

/** Corners of all facets, read from the file's layout: 84 bytes, then 50 each. */
function readStl(bytes: Uint8Array): Float64Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint32(80, true);
  expect(bytes.length).toBe(84 + 50 * count);
  return Float64Array.from({ length: 9 * count }, (_, i) =>
    view.getFloat32(84 + 50 * Math.floor(i / 9) + 12 + 4 * (i % 9), true),
  );
}

/** Volume by the divergence theorem: a sixth of the triple products of all facets. */
function volumeOf(c: Float64Array): number {
  let six = 0;
  for (let i = 0; i < c.length; i += 9) {
    six +=
      c[i] * (c[i + 4] * c[i + 8] - c[i + 5] * c[i + 7]) -
      c[i + 1] * (c[i + 3] * c[i + 8] - c[i + 5] * c[i + 6]) +
      c[i + 2] * (c[i + 3] * c[i + 7] - c[i + 4] * c[i + 6]);
  }
  return six / 6;
}

describe('STL of a closed elliptic cylinder, 300 × 200 × 700 mm', () => {
  const corners = readStl(writeStl(can()));

  it('holds the volume of the inscribed prism (96-gon: ½·96·sin(2π/96)·a·b·h)', () => {
    const exact = 0.5 * 96 * Math.sin((2 * Math.PI) / 96) * 150 * 100 * 700;
    expect(volumeOf(corners) / exact).toBeCloseTo(1, 5);
  });

  it('is watertight: every edge is run through once each way', () => {
    const edges = new Map<string, number>();
    const key = (i: number): string => `${corners[i]},${corners[i + 1]},${corners[i + 2]}`;
    for (let i = 0; i < corners.length; i += 9) {
      for (let k = 0; k < 3; k++) {
        const [a, b] = [key(i + 3 * k), key(i + 3 * ((k + 1) % 3))];
        const name = a < b ? `${a}|${b}` : `${b}|${a}`;
        edges.set(name, (edges.get(name) ?? 0) + (a < b ? 1 : -1001));
      }
    }
    expect([...edges.values()].every((sum) => sum === -1000)).toBe(true);
  });

  it('stands on zero at a fifth of the size', () => {
    const moved = can();
    for (let i = 2; i < moved.positions.length; i += 3) moved.positions[i] += 333;
    const model = readStl(writeStl(moved, { scale: 0.2, standsOnZero: true }));
    const heights = model.filter((_, i) => i % 3 === 2);
    expect(Math.min(...heights)).toBe(0);
    expect(Math.max(...heights)).toBeCloseTo(140, 4);
    expect(volumeOf(model) / volumeOf(corners)).toBeCloseTo(0.008, 6);
  });

  it('is no text form, and the same bytes twice', () => {
    expect(new TextDecoder().decode(writeStl(can()).subarray(0, 5))).not.toBe('solid');
    expect(writeStl(can())).toEqual(writeStl(can()));
  });

  it('refuses numbers that are none', () => {
    const broken: Mesh = {
      positions: Float64Array.of(0, 0, 0, 1, 0, 0, 0, Number.NaN, 0),
      triangles: Uint32Array.of(0, 1, 2),
    };
    expect(() => writeStl(broken)).toThrow(InvariantError);
    expect(() => writeObj([{ name: 'a', mesh: broken }])).toThrow(InvariantError);
  });
});

it('OBJ: several objects share one numbering from 1; flat places in metres', () => {
  const mesh = tube(10, 10, 10, 8, 1);
  const flat = Float64Array.from({ length: 32 }, (_, i) => i);
  const text = writeObj([
    { name: 'front right', mesh },
    { name: 'back', mesh, flat },
  ]);
  const rows = text
    .trim()
    .split('\n')
    .map((line) => line.split(' '));
  const of = (kind: string): string[][] => rows.filter(([first]) => first === kind);
  expect(of('o').map(([, name]) => name)).toEqual(['front_right', 'back']);
  expect(of('v')).toHaveLength(32);
  expect(of('vt')).toHaveLength(16);
  expect(of('vt')[1]).toEqual(['vt', '0.002', '0.003']);
  const corners = of('f').flatMap(([, ...parts]) => parts);
  expect(corners).toHaveLength(96);
  const vertices = corners.map((corner) => Number(corner.split('/')[0]));
  expect(Math.min(...vertices)).toBe(1);
  expect(Math.max(...vertices)).toBe(32);
  // The second object's vertices repeat the first's, its first facet too.
  expect(vertices[48] - vertices[0]).toBe(16);
  expect(corners[48].split('/')[1]).toBe(`${vertices[0]}`);
});

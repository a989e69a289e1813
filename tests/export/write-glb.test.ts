import validator from 'gltf-validator';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { writeGlb } from '../../src/core/export/index.ts';
import type { Mesh } from '../../src/core/mesh/index.ts';
import { readGlb } from './read-glb.ts';
import { tube } from './synthetic-meshes.ts';

const GENERATOR = 'Loftseam test';

async function write(mesh: Mesh, colour?: string): Promise<Uint8Array> {
  const entry = colour ? { name: 'shell', mesh, colour } : { name: 'shell', mesh };
  return writeGlb({ meshes: [entry], generator: GENERATOR });
}

describe('a tube, 300 × 200 mm across and 700 mm high', () => {
  const mesh = tube(150, 100, 700, 48, 20);

  it('passes the Khronos validator without a remark', async () => {
    const report = await validator.validateBytes(await write(mesh));
    expect(report.issues.messages).toEqual([]);
    expect(report.issues).toMatchObject({ numErrors: 0, numWarnings: 0 });
    expect(report.info).toMatchObject({ version: '2.0', generator: GENERATOR, totalVertexCount: 48 * 21 });
    expect(report.info.totalTriangleCount).toBe(mesh.triangles.length / 3);
  });

  it('stands in metres, up along +Y', async () => {
    const { positions } = readGlb(await write(mesh));
    const span = [0, 1, 2].map((axis) => {
      const values = positions.filter((_, i) => i % 3 === axis);
      return [Math.min(...values), Math.max(...values)];
    });
    expect(span[0][0]).toBeCloseTo(-0.15, 6);
    expect(span[0][1]).toBeCloseTo(0.15, 6);
    expect(span[1][0]).toBeCloseTo(0, 6);
    expect(span[1][1]).toBeCloseTo(0.7, 6);
    expect(span[2][0]).toBeCloseTo(-0.1, 6);
    expect(span[2][1]).toBeCloseTo(0.1, 6);
  });

  it('has unit normals that point away from the axis', async () => {
    const { positions, normals } = readGlb(await write(mesh));
    for (let i = 0; i < normals.length; i += 3) {
      expect(Math.hypot(normals[i], normals[i + 1], normals[i + 2])).toBeCloseTo(1, 5);
      // Ellipse x²/a² + z²/b²: the outward normal is along (x/a², z/b²).
      const nx = positions[i] / 0.15 ** 2;
      const nz = positions[i + 2] / 0.1 ** 2;
      const cos = (nx * normals[i] + nz * normals[i + 2]) / Math.hypot(nx, nz);
      expect(cos).toBeGreaterThan(0.999);
    }
  });

  it('writes the same bytes twice', async () => {
    expect(await write(mesh)).toEqual(await write(mesh));
  });
});

it('turns the front to +Z and the wearer’s right to −X (glTF 2.0 §3.4), keeping the winding', async () => {
  // A corner: origin, 100 mm to the right, 200 mm to the front, 300 mm up; outside orientation.
  const mesh: Mesh = {
    positions: Float64Array.of(0, 0, 0, 100, 0, 0, 0, 200, 0, 0, 0, 300),
    triangles: Uint32Array.of(0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3),
  };
  const { positions, indices } = readGlb(await write(mesh));
  const expected = [0, 0, 0, -0.1, 0, 0, 0, 0, 0.2, 0, 0.3, 0];
  for (const [i, value] of expected.entries()) expect(positions[i]).toBeCloseTo(value, 6);
  // Volume by the divergence theorem stays positive: 0.1 · 0.2 · 0.3 / 6 m³.
  let volume = 0;
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) =>
      Array.from(positions.subarray(3 * indices[t + k], 3 * indices[t + k] + 3)),
    );
    volume +=
      (a[0] * (b[1] * c[2] - b[2] * c[1]) +
        a[1] * (b[2] * c[0] - b[0] * c[2]) +
        a[2] * (b[0] * c[1] - b[1] * c[0])) /
      6;
  }
  expect(volume).toBeCloseTo(0.001, 9);
});

it('writes several named meshes, each in its own colour', async () => {
  const meshes = ['front', 'back'].map((name, i) => ({
    name,
    mesh: tube(10, 10, 10, 8, 1),
    colour: i ? '#ff0000' : '#808080',
  }));
  const bytes = await writeGlb({ meshes, generator: GENERATOR });
  const report = await validator.validateBytes(bytes);
  expect(report.issues.numErrors).toBe(0);
  const { json } = readGlb(bytes);
  expect(json.nodes.map(({ name }) => name)).toEqual(['front', 'back']);
  const [grey, red] = json.materials.map(({ pbrMetallicRoughness }) => pbrMetallicRoughness.baseColorFactor!);
  // sRGB 128/255 is 0.21586 in linear light (IEC 61966-2-1).
  expect(grey[0]).toBeCloseTo(0.21586, 4);
  expect(red).toEqual([1, 0, 0, 1]);
});

it('survives vertices no triangle uses and triangles without area', async () => {
  const mesh: Mesh = {
    positions: Float64Array.of(0, 0, 0, 10, 0, 0, 0, 10, 0, 50, 50, 50, 10, 0, 0),
    triangles: Uint32Array.of(0, 1, 2, 1, 4, 1),
  };
  const report = await validator.validateBytes(await write(mesh));
  expect(report.issues.numErrors).toBe(0);
});

it.each([
  ['no triangles', { positions: Float64Array.of(0, 0, 0), triangles: new Uint32Array(0) }],
  [
    'a position that is not a number',
    { positions: Float64Array.of(0, 0, Number.NaN), triangles: Uint32Array.of(0, 0, 0) },
  ],
  ['an index too large', { positions: Float64Array.of(0, 0, 0), triangles: Uint32Array.of(0, 0, 1) }],
])('throws on %s', async (_, mesh) => {
  await expect(write(mesh)).rejects.toThrow(InvariantError);
});

it('throws on a colour it cannot read', async () => {
  await expect(write(tube(10, 10, 10, 8, 1), 'teal')).rejects.toThrow(/#rrggbb/);
});

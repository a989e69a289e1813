/** What must not depend on how the same panel is written down. */
import { describe, expect, it } from 'vitest';
import { type FlatDisk, flattenFree } from '../../src/core/flatten/index.ts';
import { findBoundaryLoops, type Mesh } from '../../src/core/mesh/index.ts';
import { inEnglish } from '../in-english.ts';
import { makePanels, scaleMesh } from './cases/disk-meshes.ts';

const panels = makePanels(600);

function flatten(mesh: Mesh): FlatDisk {
  const result = flattenFree(mesh);
  if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
  return result.value;
}

/** Largest difference of vertex distances to three far vertices; blind to rigid motion. */
function shapeDifference(a: Float64Array, b: Float64Array, vertexOfB = (v: number) => v): number {
  const n = a.length / 2;
  let worst = 0;
  for (const anchor of [0, Math.floor(n / 2), n - 1]) {
    for (let v = 0; v < n; v++) {
      const da = Math.hypot(a[2 * v] - a[2 * anchor], a[2 * v + 1] - a[2 * anchor + 1]);
      const [w, x] = [vertexOfB(v), vertexOfB(anchor)];
      worst = Math.max(worst, Math.abs(da - Math.hypot(b[2 * w] - b[2 * x], b[2 * w + 1] - b[2 * x + 1])));
    }
  }
  return worst;
}

describe.each(['cylinderJittered', 'gore30', 'saddle', 'torusInner', 'bumpHalf', 'bumpSlit'])(
  '%s',
  (name) => {
    const mesh = scaleMesh(panels[name], 10);
    const flat = flatten(mesh);

    it('moves with the body: turning about the vertical and shifting changes nothing', () => {
      const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
      const moved = mesh.positions.slice();
      for (let i = 0; i < moved.length; i += 3) {
        const [x, y, z] = mesh.positions.subarray(i, i + 3);
        moved.set([c * x - s * y + 300, s * x + c * y - 50, z + 1000], i);
      }
      const again = flatten({ ...mesh, positions: moved }).positions;
      expect(shapeDifference(flat.positions, again)).toBeLessThan(1e-6);
      if (name !== 'saddle') {
        // Up is still up, so even the place on the sheet is the same. (The saddle is symmetric: it has no up.)
        for (let i = 0; i < again.length; i++)
          expect(Math.abs(again[i] - flat.positions[i])).toBeLessThan(1e-6);
      }
    });

    it('does not see the order of vertices and triangles', () => {
      const n = mesh.positions.length / 3;
      const step = [7919, 104729].find((p) => n % p !== 0) as number;
      const to = (v: number) => (v * step + 13) % n;
      const positions = new Float64Array(mesh.positions.length);
      for (let v = 0; v < n; v++) positions.set(mesh.positions.subarray(3 * v, 3 * v + 3), 3 * to(v));
      const triangles = mesh.triangles.map((_, e) => {
        const f = mesh.triangles.length / 3 - 1 - Math.floor(e / 3);
        return to(mesh.triangles[3 * f + ((e + 1) % 3)]);
      });
      const again = flatten({ positions, triangles });
      expect(shapeDifference(flat.positions, again.positions, to)).toBeLessThan(1e-4);
      expect(again.strain.summary.rms).toBeCloseTo(flat.strain.summary.rms, 9);
    });

    it('scales with the body', () => {
      const again = flatten(scaleMesh(mesh, 3));
      for (let i = 0; i < flat.positions.length; i++) {
        expect(Math.abs(again.positions[i] / 3 - flat.positions[i])).toBeLessThan(1e-6);
      }
    });

    it('mirrors with the body', () => {
      const image: Mesh = {
        positions: mesh.positions.map((x, i) => (i % 3 === 0 ? -x : x)),
        triangles: mesh.triangles.map(
          (_, e) => mesh.triangles[e % 3 === 0 ? e : e % 3 === 1 ? e + 1 : e - 1],
        ),
      };
      expect(shapeDifference(flat.positions, flatten(image).positions)).toBeLessThan(1e-6);
    });

    it('same input, same bytes', () => {
      expect(flatten(mesh).positions).toEqual(flat.positions);
    });

    it('leaves its input untouched', () => {
      const copy = { positions: mesh.positions.slice(), triangles: mesh.triangles.slice() };
      flatten(mesh);
      expect(mesh).toEqual(copy);
    });
  },
);

describe('place on the sheet', () => {
  // Mean gradient of height over the flat area A is (1/A) ∮ z n ds (Gauss), n the outward normal.
  it.each(['cone', 'torusOuter', 'gore45', 'bumpSlit'])(
    '%s, tilted: up on the body is +y, area on the left',
    (name) => {
      const [c, s] = [Math.cos(0.5), Math.sin(0.5)];
      const upright = scaleMesh(panels[name], 10);
      const tilted = upright.positions.slice();
      for (let i = 0; i < tilted.length; i += 3) {
        const [x, y, z] = upright.positions.subarray(i, i + 3);
        tilted.set([x, c * y - s * z, s * y + c * z], i);
      }
      const mesh = { ...upright, positions: tilted };
      const flat = flatten(mesh).positions;
      const loop = findBoundaryLoops(mesh)[0];
      let [gx, gy, area] = [0, 0, 0];
      for (let k = 0; k < loop.length; k++) {
        const [a, b] = [loop[k], loop[(k + 1) % loop.length]];
        const height = (tilted[3 * a + 2] + tilted[3 * b + 2]) / 2;
        gx += height * (flat[2 * b + 1] - flat[2 * a + 1]);
        gy -= height * (flat[2 * b] - flat[2 * a]);
        area += (flat[2 * a] * flat[2 * b + 1] - flat[2 * b] * flat[2 * a + 1]) / 2;
      }
      expect(area).toBeGreaterThan(0);
      expect(gy).toBeGreaterThan(0.3 * area);
      expect(Math.abs(gx)).toBeLessThan(1e-6 * gy);
    },
  );
});

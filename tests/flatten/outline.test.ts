/** Outlines must stay fair where their length is held, and may not cross themselves. */
import { describe, expect, it } from 'vitest';
import { findSelfCrossings, flattenFree, flattenTogether } from '../../src/core/flatten/index.ts';
import { findBoundaryLoops, type Mesh } from '../../src/core/mesh/index.ts';
import { makeGrid, makePanels, scaleMesh } from './cases/disk-meshes.ts';

function mirrorMesh(mesh: Mesh): Mesh {
  return {
    positions: mesh.positions.map((x, i) => (i % 3 === 0 ? -x : x)),
    triangles: mesh.triangles.map((_, e) => mesh.triangles[e % 3 === 0 ? e : e % 3 === 1 ? e + 1 : e - 1]),
  };
}

/** Turning angle at each boundary vertex, degrees. */
function turns(flat: Float64Array, loop: Uint32Array): number[] {
  const n = loop.length;
  return Array.from(loop, (v, k) => {
    const [p, q] = [loop[(k + n - 1) % n], loop[(k + 1) % n]];
    const [ax, ay] = [flat[2 * v] - flat[2 * p], flat[2 * v + 1] - flat[2 * p + 1]];
    const [bx, by] = [flat[2 * q] - flat[2 * v], flat[2 * q + 1] - flat[2 * v + 1]];
    return (Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * 180) / Math.PI;
  });
}

describe('outlines with held lengths', () => {
  const panels = makePanels(2000);
  // Held to the body's lengths all round. Negative curvature is the hard case: the boundary is longer than the flat
  // wants, and without stiffness it folds into zig-zags of 80–110° at mesh scale.
  it.each(['saddle', 'torusInner', 'torusOuter', 'gore45'])(
    '%s: neighbouring turns differ by little',
    (name) => {
      const mesh = scaleMesh(panels[name], 10);
      const loop = findBoundaryLoops(mesh)[0];
      const ring = Uint32Array.from([...loop, loop[0]]);
      const sewn = flattenTogether({
        disks: [mesh, mirrorMesh(mesh)],
        mirrorOf: Int32Array.of(-1, 0),
        joins: [
          { id: 'all', a: { disk: 0, vertices: ring }, b: { disk: 1, vertices: ring }, keepsLength: true },
        ],
        keptPaths: [],
      });
      const free = flattenFree(mesh);
      if (!sewn.ok || !free.ok) throw new Error('unfit');
      const held = turns(sewn.value[0].positions, loop);
      const relaxed = turns(free.value.positions, loop);
      let [jump, away] = [0, 0];
      for (let k = 0; k < loop.length; k++) {
        const next = (k + 1) % loop.length;
        if (Math.abs(relaxed[k]) > 20 || Math.abs(relaxed[next]) > 20) continue; // corners
        jump = Math.max(jump, Math.abs(held[k] - held[next]));
        away = Math.max(away, Math.abs(held[k] - relaxed[k]));
      }
      expect(jump).toBeLessThan(4);
      expect(away).toBeLessThan(3);
    },
  );
});

describe('findSelfCrossings', () => {
  const loop = (n: number) => Int32Array.from({ length: n }, (_, i) => i);
  it('finds none in a simple polygon, the two lobes of a bow tie, and a touching corner', () => {
    expect(findSelfCrossings(Float64Array.of(0, 0, 4, 0, 4, 3, 0, 3), loop(4))).toEqual([]);
    expect(findSelfCrossings(Float64Array.of(0, 0, 4, 0, 0, 3, 4, 3), loop(4))).toEqual([1, 3]);
    // Vertex 3 lies on the edge 0–1.
    expect(findSelfCrossings(Float64Array.of(0, 0, 4, 0, 4, 3, 2, 0, 0, 3), loop(5)).length).toBeGreaterThan(
      0,
    );
  });

  it('is what stops a panel that overlaps itself when flat', () => {
    // A ribbon round a cone's apex by more than its flat sector: developable, unrolled it winds past 360°.
    const ribbon = makeGrid(120, 3, (u, v) => {
      const r = 60 + 20 * v;
      const t = 2 * Math.PI * 1.4 * u;
      return [r * Math.cos(t), r * Math.sin(t), 0.001 * t];
    });
    const result = flattenTogether({
      disks: [ribbon],
      mirrorOf: Int32Array.of(-1),
      joins: [],
      keptPaths: [],
    });
    expect(result.ok).toBe(false);
    expect(result.issues.map((issue) => issue.code)).toEqual(['flatten-outline-crosses']);
    expect(result.issues[0].path).toBe('disks.0');
  });
});

/** Meshes that are no disk are refused by name, before any solving. */
import { describe, expect, it } from 'vitest';
import { measureDirichlet } from '../../src/core/flatten/dirichlet-energy.ts';
import { flattenFree, flattenTogether } from '../../src/core/flatten/index.ts';
import { prepareDisk } from '../../src/core/flatten/prepare-disk.ts';
import { layTutte, startLayout } from '../../src/core/flatten/start-layout.ts';
import type { Mesh } from '../../src/core/mesh/index.ts';
import { inEnglish } from '../in-english.ts';
import { makeGrid, makePanels } from './cases/disk-meshes.ts';

const square = makeGrid(4, 4, (u, v) => [10 * u, 0, 10 * v]);

function without(mesh: Mesh, isDropped: (f: number) => boolean): Mesh {
  return { ...mesh, triangles: mesh.triangles.filter((_, e) => !isDropped(Math.floor(e / 3))) };
}

function join(a: Mesh, b: Mesh): Mesh {
  const shift = a.positions.length / 3;
  return {
    positions: Float64Array.from([...a.positions, ...b.positions]),
    triangles: Uint32Array.from([...a.triangles, ...b.triangles.map((v) => v + shift)]),
  };
}

/** A tetrahedron: closed. */
const closed: Mesh = {
  positions: Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1),
  triangles: Uint32Array.of(0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 3, 2),
};

function codesOf(mesh: Mesh): string[] {
  const result = flattenFree(mesh);
  if (result.ok) throw new Error('should have been refused');
  for (const issue of result.issues) expect(inEnglish(issue.message).length).toBeGreaterThan(10);
  return result.issues.map((issue) => issue.code);
}

describe('unfit meshes', () => {
  it('takes a plain square', () => {
    expect(flattenFree(square).ok).toBe(true);
  });
  it('nothing at all', () => {
    expect(codesOf({ positions: new Float64Array(0), triangles: new Uint32Array(0) })).toEqual([
      'flatten-not-a-disk',
    ]);
  });
  it('a hole', () => {
    const holed = without(square, (f) => f === 10 || f === 11);
    expect(codesOf(holed)).toEqual(['flatten-not-a-disk']);
    const result = flattenFree(holed);
    expect(inEnglish(result.issues[0].message)).toMatch(/more than one boundary loop/);
  });
  it('two parts, the second closed or open', () => {
    expect(codesOf(join(square, closed))).toContain('flatten-not-a-disk');
    expect(codesOf(join(square, square))).toContain('flatten-not-a-disk');
  });
  it('a closed surface', () => {
    expect(codesOf(closed)).toContain('flatten-not-a-disk');
  });
  it('a triangle facing the other way', () => {
    const turned = square.triangles.slice();
    [turned[0], turned[1]] = [turned[1], turned[0]];
    expect(codesOf({ ...square, triangles: turned })).toContain('mesh-orientation');
  });
  it('an edge with three triangles', () => {
    const fin = {
      positions: Float64Array.from([...square.positions, 5, 5, 5]),
      triangles: Uint32Array.from([...square.triangles, 6, 7, 25]),
    };
    expect(codesOf(fin)).toContain('flatten-not-a-disk');
  });
  it('two disks touching in one vertex', () => {
    const pinched = without(square, (f) => !(f < 2 || (f >= 10 && f < 12)));
    const used = [...new Set(pinched.triangles)];
    const compact: Mesh = {
      positions: Float64Array.from(used.flatMap((v) => [...square.positions.subarray(3 * v, 3 * v + 3)])),
      triangles: pinched.triangles.map((v) => used.indexOf(v)),
    };
    expect(codesOf(compact)).toContain('flatten-not-a-disk');
  });
  it('a loose vertex', () => {
    expect(codesOf({ ...square, positions: Float64Array.from([...square.positions, 1, 2, 3]) })).toContain(
      'flatten-not-a-disk',
    );
  });
  it('a triangle without area', () => {
    const flat = square.positions.slice();
    flat.set(flat.subarray(3, 6), 0);
    const result = flattenFree({ ...square, positions: flat });
    expect(result.ok).toBe(false);
    expect(result.issues[0]).toMatchObject({
      code: 'flatten-degenerate-triangle',
      severity: 'error',
      measured: 0,
    });
  });
  it('a position that is no number, an index out of range', () => {
    const bad = square.positions.slice();
    bad[7] = Number.NaN;
    expect(codesOf({ ...square, positions: bad })).toContain('mesh-not-a-number');
    expect(codesOf({ ...square, triangles: square.triangles.map((v, e) => (e === 5 ? 99 : v)) })).toContain(
      'mesh-index-range',
    );
  });
  it('names every unfit disk of a problem', () => {
    const result = flattenTogether({
      disks: [closed, square, without(square, (f) => f === 10)],
      mirrorOf: Int32Array.of(-1, -1, -1),
      joins: [],
      keptPaths: [],
    });
    expect(result.ok).toBe(false);
    expect(result.issues.map((issue) => issue.path)).toEqual(['disks.0', 'disks.2']);
  });
});

describe('start', () => {
  // Tutte 1963: barycentric with a convex boundary never flips.
  it('Tutte is free of flips on every panel', () => {
    for (const [name, mesh] of Object.entries(makePanels(400))) {
      const prepared = prepareDisk(mesh);
      if (!prepared.ok) throw new Error(name);
      expect(measureDirichlet(prepared.value, layTutte(prepared.value)), name).toBeLessThan(Infinity);
    }
  });
  it('a panel whose conformal map flips still starts, and settles', () => {
    // A spike: the conformal map shrinks its sides to slivers and folds some.
    const spike = makeGrid(12, 12, (u, v) => {
      const [x, y] = [2 * u - 1, 2 * v - 1];
      return [100 * x, 100 * y, 900 * Math.exp(-12 * (x * x + y * y))];
    });
    const prepared = prepareDisk(spike);
    if (!prepared.ok) throw new Error('unfit');
    expect(measureDirichlet(prepared.value, startLayout(prepared.value))).toBeLessThan(Infinity);
    const result = flattenFree(spike);
    expect(result.ok && result.value.strain.summary.flipped).toBe(0);
  });
});

describe('not converged', () => {
  it('is an issue with the residual', () => {
    const result = flattenFree(makePanels(500).bump, { maxIterations: 2 });
    expect(result.ok).toBe(false);
    expect(result.issues[0]).toMatchObject({
      code: 'flatten-not-converged',
      severity: 'error',
      limit: 1e-10,
    });
    expect(result.issues[0].measured).toBeGreaterThan(1e-10);
  });
});

import { describe, expect, it } from 'vitest';
import {
  type FlattenProblem,
  flattenTogether,
  type Join,
  measureFreeStrain,
} from '../../src/core/flatten/index.ts';
import { inEnglish } from '../in-english.ts';
import { makeGrid, makePair, scaleMesh } from './cases/disk-meshes.ts';

/** Two plane rectangles 60 × 100 mm joined along a long side. */
const columns = 6;
const rows = 10;
const rectangle = makeGrid(columns, rows, (u, v) => [60 * u, 0, 100 * v]);
const sideOf = (column: number): Uint32Array =>
  Uint32Array.from({ length: rows + 1 }, (_, j) => column + j * (columns + 1));

function planeProblem(ease?: Join['ease']): FlattenProblem {
  return {
    disks: [rectangle, rectangle],
    mirrorOf: Int32Array.of(-1, -1),
    joins: [
      {
        id: 'seam',
        a: { disk: 0, vertices: sideOf(columns) },
        b: { disk: 1, vertices: sideOf(0) },
        keepsLength: false,
        ...(ease ? { ease } : {}),
      },
    ],
    keptPaths: [{ disk: 0, vertices: sideOf(columns) }],
  };
}

function lengths(flat: Float64Array, path: Uint32Array): number[] {
  return Array.from({ length: path.length - 1 }, (_, k) =>
    Math.hypot(flat[2 * path[k + 1]] - flat[2 * path[k]], flat[2 * path[k + 1] + 1] - flat[2 * path[k] + 1]),
  );
}

describe('sewn-in ease', () => {
  // By definition: the eased side is 1.5 % longer edge for edge; the other keeps the 100 mm it has on the body.
  it('cuts one side longer by the fraction, edge for edge, and keeps the sewn length', () => {
    for (const side of ['a', 'b'] as const) {
      const result = flattenTogether(planeProblem({ side, fraction: 0.015 }));
      if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
      const a = lengths(result.value[0].positions, sideOf(columns));
      const b = lengths(result.value[1].positions, sideOf(0));
      a.forEach((length, k) => {
        expect((side === 'a' ? length / b[k] : b[k] / length) - 1).toBeCloseTo(0.015, 5);
      });
      const sum = (list: number[]): number => list.reduce((total, x) => total + x, 0);
      expect(sum(side === 'a' ? b : a)).toBeCloseTo(100, 3);
      expect(sum(side === 'a' ? a : b)).toBeCloseTo(101.5, 3);
    }
  });

  it('refuses ease between a piece and its own mirror image, which is as long as itself', () => {
    const problem = planeProblem({ side: 'b', fraction: 0.01 });
    const mirrored = {
      positions: rectangle.positions.map((x, i) => (i % 3 === 0 ? -x : x)),
      triangles: rectangle.triangles.map(
        (_, e) => rectangle.triangles[e % 3 === 0 ? e : e % 3 === 1 ? e + 1 : e - 1],
      ),
    };
    const result = flattenTogether({
      ...problem,
      disks: [rectangle, mirrored],
      mirrorOf: Int32Array.of(-1, 0),
      joins: [{ ...problem.joins[0], b: { disk: 1, vertices: sideOf(columns) } }],
    });
    expect(result.ok).toBe(false);
    expect(result.issues).toMatchObject([{ code: 'flatten-ease-conflict', path: 'joins.0' }]);
  });
});

describe('the cost of the seams', () => {
  it('is never negative: no length held is the optimum', () => {
    const pair = makePair('bump', 20, 34);
    const problem: FlattenProblem = {
      disks: [scaleMesh(pair.a, 10), scaleMesh(pair.b, 10)],
      mirrorOf: Int32Array.of(-1, -1),
      joins: [
        {
          id: 'middle',
          a: { disk: 0, vertices: pair.seamA },
          b: { disk: 1, vertices: pair.seamB },
          keepsLength: true,
        },
      ],
      keptPaths: [],
    };
    const sewn = flattenTogether(problem);
    if (!sewn.ok) throw new Error(inEnglish(sewn.issues[0].message));
    const free = measureFreeStrain(problem, sewn.value);
    if (!free.ok) throw new Error(inEnglish(free.issues[0].message));
    free.value.forEach(({ rms }, d) => {
      expect(rms).toBeLessThan(sewn.value[d].strain.summary.rms);
      expect(rms).toBeGreaterThan(0.2 * sewn.value[d].strain.summary.rms);
    });
  });
});

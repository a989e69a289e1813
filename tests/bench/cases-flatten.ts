import { flattenFree, flattenTogether } from '../../src/core/flatten/index.ts';
import { analyseLdlt, Ldlt, patternFromPairs } from '../../src/core/math/index.ts';
import type { Mesh } from '../../src/core/mesh/index.ts';
import { makePair, makePanels, scaleMesh } from '../flatten/cases/disk-meshes.ts';
import type { BenchCase } from './types.ts';

/** Sparse factor of a triangulated m × m grid, b unknowns per vertex, diagonally dominant. */
function factorCase(m: number, b: 1 | 2 | 3): BenchCase {
  const pairs: number[] = [];
  for (let v = 0; v < m * m; v++) {
    const isLast = v % m === m - 1;
    if (!isLast) pairs.push(v, v + 1);
    if (v + m < m * m) pairs.push(v, v + m);
    if (!isLast && v + m < m * m) pairs.push(v, v + m + 1);
  }
  const pattern = patternFromPairs(m * m, pairs);
  const values = new Float64Array(pattern.rowIndex.length * b * b).fill(-0.4);
  for (let c = 0; c < pattern.size; c++) {
    for (let i = 0; i < b; i++) values[pattern.columnStart[c] * b * b + i * (b + 1)] = 7;
  }
  const right = new Float64Array(m * m * b).fill(1);
  const solver = new Ldlt(analyseLdlt(pattern, b));
  return {
    name: `math/ldlt-${m * m}x${b}`,
    run: () => {
      solver.factor(values);
      return solver.solve(right)[0];
    },
  };
}

function freeCase(name: string, triangles: number): BenchCase {
  return {
    name: `flatten/free-${name}-${triangles}`,
    // Made only when wanted: the largest would slow down all that comes after it.
    prepare: () => scaleMesh(makePanels(triangles)[name], 10),
    run: (mesh: Mesh) => {
      const result = flattenFree(mesh);
      return result.ok ? result.value.strain.summary.rms : Number.NaN;
    },
  };
}

/** Two sewn panels of 5000 triangles with three kept rows each. */
function pairCase(kind: 'sphere' | 'bump'): BenchCase {
  const pair = makePair(kind);
  const rowOf = (j: number) => Uint32Array.from({ length: 39 }, (_, i) => i + 39 * j);
  const problem = {
    disks: [scaleMesh(pair.a, 10), scaleMesh(pair.b, 10)],
    mirrorOf: Int32Array.of(-1, -1),
    joins: [
      {
        id: 'middle',
        a: { disk: 0, vertices: pair.seamA },
        b: { disk: 1, vertices: pair.seamB },
        keepsLength: false,
      },
    ],
    keptPaths: [22, 33, 44].flatMap((j) => [0, 1].map((disk) => ({ disk, vertices: rowOf(j) }))),
  };
  return {
    name: `flatten/together-${kind}-2x5000`,
    run: () => {
      const result = flattenTogether(problem);
      return result.ok ? result.value[0].strain.summary.rms : Number.NaN;
    },
  };
}

const cases: readonly BenchCase[] = [
  factorCase(71, 1),
  factorCase(71, 2),
  factorCase(71, 3),
  freeCase('cylinder', 5000),
  freeCase('cap40', 5000),
  freeCase('saddle', 5000),
  freeCase('bump', 5000),
  freeCase('bumpHalf', 5000),
  freeCase('bumpSlit', 5000),
  // Scaling: the goal is n^1.3 from 5000 to 500 000.
  freeCase('gore45', 5000),
  freeCase('gore45', 50000),
  { ...freeCase('gore45', 500_000), runs: 1 },
  pairCase('sphere'),
  pairCase('bump'),
];

export default cases;

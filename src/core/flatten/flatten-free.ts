import { failure, type Issue, type Result, success } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';
import { measureStrain } from './measure-strain.ts';
import { orientFlat } from './orient-flat.ts';
import { phrase } from './phrases.ts';
import { prepareDisk } from './prepare-disk.ts';
import { type LayoutOptions, type LayoutSolution, solveLayout } from './solve-layout.ts';
import { startLayout } from './start-layout.ts';
import type { FlatDisk } from './types.ts';

/**
 * Unrolls one disk with the least strain (symmetric Dirichlet), no length held.
 * Issues: not a disk, degenerate triangles, not converged. Cost: about 10 ms per 1000 triangles.
 */
export function flattenFree(
  mesh: Mesh,
  options: Pick<LayoutOptions, 'tolerance' | 'maxIterations' | 'trace'> = {},
): Result<FlatDisk> {
  const prepared = prepareDisk(mesh);
  if (!prepared.ok) return prepared;
  const disk = prepared.value;
  const positions = startLayout(disk);
  const solution = solveLayout(disk, positions, options);
  if (!solution.isConverged) return failure([describeFailure(solution, 'mesh', options.tolerance ?? 1e-10)]);
  orientFlat(disk, positions);
  return success({ positions, strain: measureStrain(mesh, positions) });
}

/** Non-convergence in words and numbers. */
export function describeFailure(solution: LayoutSolution, path: string, limit: number): Issue {
  const { iterations, decrement, largestError } = solution;
  return {
    code: 'flatten-not-converged',
    path,
    message: phrase('flatten.not-settled', { steps: iterations, decrement, largestError }),
    severity: 'error',
    measured: decrement,
    limit,
  };
}

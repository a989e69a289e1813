import { failure, type Issue, type Result, success } from '../base/index.ts';
import { describeFailure } from './flatten-free.ts';
import { measureStrain } from './measure-strain.ts';
import { prepareDisk } from './prepare-disk.ts';
import { sourceOf } from './sewn-edges.ts';
import { solveLayout } from './solve-layout.ts';
import { turnToPins } from './turn-to-pins.ts';
import type { FlatDisk, FlattenProblem, StrainSummary } from './types.ts';

const tolerance = 1e-8;

/**
 * Strain of every disk unrolled with no length held, started from its sewn layout: what the seams and girths cost is the
 * difference to the sewn one. Cost: a few Newton steps per disk, about a third of unrolling them together.
 */
export function measureFreeStrain(
  problem: FlattenProblem,
  flat: readonly FlatDisk[],
): Result<StrainSummary[]> {
  const issues: Issue[] = [];
  const solved = new Map<number, StrainSummary>();
  for (const [d, mesh] of problem.disks.entries()) {
    if (sourceOf(problem, d) !== d) continue;
    const prepared = prepareDisk(mesh, `disks.${d}`);
    if (!prepared.ok) return prepared;
    const positions = turnToPins(flat[d].positions, prepared.value.pinA, prepared.value.pinB);
    const solution = solveLayout(prepared.value, positions, { tolerance });
    if (!solution.isConverged) issues.push(describeFailure(solution, `disks.${d}`, tolerance));
    solved.set(d, measureStrain(mesh, positions).summary);
  }
  if (issues.length > 0) return failure(issues);
  return success(problem.disks.map((_, d) => solved.get(sourceOf(problem, d)) as StrainSummary));
}

import { failure, type Issue, type Phrase, type Result, success } from '../base/index.ts';
import { checkSewing } from './check-sewing.ts';
import { type AloneJob, type FlattenJob, runFlattenJob, type TogetherJob } from './flatten-jobs.ts';
import { createFlattenMemory, type JobResult } from './flatten-memory.ts';
import { collectKeptLengths, type KeptLength } from './kept-lengths.ts';
import { measureStrain } from './measure-strain.ts';
import { checkMirror, mirrorFlat } from './mirror-disks.ts';
import { phrase } from './phrases.ts';
import { traceOutline } from './prepare-disk.ts';
import { chooseSeamTargets } from './seam-targets.ts';
import { findStiffPlaces, rulesAlone, rulesTogether } from './sewing-rules.ts';
import { groupSewnEdges, type SewnEdges, sourceOf } from './sewn-edges.ts';
import { shareSums } from './share-sums.ts';
import type { FlatDisk, FlattenOptions, FlattenProblem } from './types.ts';

/** Share of the time spent before the seams are matched. */
const aloneShare = 0.5;

/** Everything known of a problem before and between its jobs; plain data and lookups, stays with the one who shares out. */
export interface FlattenPlan {
  readonly problem: FlattenProblem;
  readonly sewn: SewnEdges;
  readonly kept: readonly KeptLength[];
  readonly options: Pick<FlattenOptions, 'seamLengthBlend' | 'wrinkleAversion'>;
  /** To be run first, in any order, anywhere. Mirror images have none. */
  readonly jobs: readonly AloneJob[];
}

/** Splits a problem into jobs that do not depend on each other. Throws when a mirror image is none. O(edges). */
export function planFlatten(
  problem: FlattenProblem,
  options: FlattenPlan['options'] = {},
): Result<FlattenPlan> {
  const sewn = groupSewnEdges(problem);
  if (sewn.conflicts.length > 0) return failure(sewn.conflicts.map((id) => tellEaseConflict(problem, id)));
  const kept = collectKeptLengths(problem, sewn);
  const jobs: AloneJob[] = [];
  for (const [disk, mesh] of problem.disks.entries()) {
    if (sourceOf(problem, disk) !== disk) {
      checkMirror(problem, disk);
      continue;
    }
    jobs.push({
      kind: 'alone',
      disk,
      mesh,
      rules: rulesAlone(disk, kept),
      wrinkleAversion: options.wrinkleAversion ?? 0,
    });
  }
  return success({ problem, sewn, kept, options, jobs });
}

/**
 * The second jobs: one length per sewn edge, shared by its sides, from the layouts of the first (parallel to `plan.jobs`).
 * Issues: lengths that contradict each other.
 */
export function matchSeams(plan: FlattenPlan, alone: readonly JobResult[]): Result<TogetherJob[]> {
  const { problem, sewn, options, jobs } = plan;
  const kept = shareSums(problem, sewn, plan.kept, new Map(jobs.map((job, k) => [job.disk, alone[k]])));
  const layouts = new Map(jobs.map((job, k) => [job.disk, alone[k].flat]));
  const blend = options.seamLengthBlend ?? 0;
  const { targets, issues } = chooseSeamTargets(problem, sewn, kept, layouts, blend);
  if (issues.length > 0) return failure(issues);
  return success(
    jobs.map((job, k) => ({
      ...job,
      kind: 'together',
      rules: rulesTogether(job.disk, sewn, targets, kept),
      alone: alone[k].flat,
      isStiff: findStiffPlaces(problem, traceOutline(job.mesh), job.disk, sewn),
    })),
  );
}

/**
 * Mirror images, checks and strain, from the layouts of the second jobs (parallel to `plan.jobs`). Issues: any length
 * missed in the result, with numbers.
 */
export function finishFlatten(plan: FlattenPlan, together: readonly JobResult[]): Result<FlatDisk[]> {
  const { problem, sewn, jobs } = plan;
  const layouts = new Map(jobs.map((job, k) => [job.disk, together[k].flat]));
  const all = problem.disks.map((_, d) => {
    const flat = layouts.get(sourceOf(problem, d)) as Float64Array;
    return sourceOf(problem, d) === d ? flat : mirrorFlat(flat);
  });
  const issues = checkSewing(problem, all, sewn);
  if (issues.length > 0) return failure(issues);
  return success(
    all.map((positions, d) => ({ positions, strain: measureStrain(problem.disks[d], positions) })),
  );
}

/**
 * Unrolls all disks so that they can be sewn together: least strain under the joins' and kept paths' lengths.
 * 1. Every disk alone with its kept paths as only rules; 2. one length per sewn edge, shared by its sides;
 * 3. every disk again with all lengths held and the outline stiff. Mirror images are copied.
 * Issues: unfit disks, lengths that contradict each other, no convergence, outlines crossing themselves, and any
 * length missed in the result, all with numbers; paths are `disks.N`, `joins.N`, `keptPaths.N`.
 * Cost: about 25 ms per 1000 triangles that are not mirror images (warm, one core; 300 ms for eight panels of 20 000
 * triangles, half of them mirror images). With `memory`, disks that did not change since the last call cost next to
 * nothing. To share the work out among workers use `planFlatten`, `runFlattenJob`, `matchSeams` and `finishFlatten`.
 */
export function flattenTogether(problem: FlattenProblem, options: FlattenOptions = {}): Result<FlatDisk[]> {
  const plan = planFlatten(problem, options);
  if (!plan.ok) return plan;
  const memory = options.memory ?? createFlattenMemory();
  const run = (jobs: readonly FlattenJob[], from: number, to: number, what: Phrase): Result<JobResult[]> => {
    const layouts: JobResult[] = [];
    const issues: Issue[] = [];
    for (const [k, job] of jobs.entries()) {
      if (options.isCancelled?.()) return failure([cancelled]);
      options.onProgress?.(from + ((to - from) * k) / jobs.length, what);
      const solved = runFlattenJob(job, memory, options.trace);
      issues.push(...solved.issues);
      if (solved.ok) layouts.push(solved.value);
    }
    return issues.length > 0 ? failure(issues) : success(layouts);
  };
  const alone = run(plan.value.jobs, 0, aloneShare, phrase('flatten.unrolling-each'));
  if (!alone.ok) return alone;
  const matched = matchSeams(plan.value, alone.value);
  if (!matched.ok) return matched;
  const together = run(matched.value, aloneShare, 1, phrase('flatten.matching'));
  if (!together.ok) return together;
  options.onProgress?.(1, phrase('flatten.matching'));
  return finishFlatten(plan.value, together.value);
}

const cancelled: Issue = {
  code: 'cancelled',
  path: '',
  message: phrase('flatten.stopped'),
  severity: 'error',
};

function tellEaseConflict(problem: FlattenProblem, id: string): Issue {
  return {
    code: 'flatten-ease-conflict',
    path: `joins.${problem.joins.findIndex((join) => join.id === id)}`,
    message: phrase('flatten.ease-conflict', { seam: id }),
    severity: 'error',
  };
}

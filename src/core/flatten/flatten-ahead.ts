import type { Result } from '../base/index.ts';
import { type FlattenJob, keepJob, recallJob, runFlattenJob } from './flatten-jobs.ts';
import { createFlattenMemory, type JobResult } from './flatten-memory.ts';
import { matchSeams, planFlatten } from './flatten-together.ts';
import { phrase } from './phrases.ts';
import type { FlattenOptions, FlattenProblem } from './types.ts';

/** Solves jobs at some other place, in the order given; may be refused. */
export type RunJobsElsewhere = (jobs: readonly FlattenJob[]) => Promise<readonly Result<JobResult>[]>;

/**
 * Fills `options.memory` with every panel of a problem, half of the work done elsewhere at the same time, so that
 * `flattenTogether` finds all of it solved. Jobs do not depend on who solves them, so the result has the same bytes. Never fails:
 * what could not be solved, here or elsewhere, is missing from the memory, and `flattenTogether` tells why. Disks that
 * did not change since the last call are not sent.
 */
export async function flattenAhead(
  problem: FlattenProblem,
  options: FlattenOptions,
  elsewhere: RunJobsElsewhere,
): Promise<void> {
  const memory = options.memory ?? createFlattenMemory();
  const plan = planFlatten(problem, options);
  if (!plan.ok) return;
  const isTheirs = shareDisks(plan.value.jobs);
  const run = async (jobs: readonly FlattenJob[], done: number): Promise<JobResult[]> => {
    const open = jobs.filter((job) => recallJob(job, memory) === undefined);
    const theirs = open.filter((job) => isTheirs.has(job.disk));
    const answer = theirs.length > 0 ? elsewhere(theirs).catch(() => []) : Promise.resolve([]);
    const ours = open.filter((job) => !isTheirs.has(job.disk));
    for (const [k, job] of ours.entries()) {
      if (options.isCancelled?.()) break;
      options.onProgress?.(done + (0.5 * k) / ours.length, phrase('flatten.unrolling'));
      runFlattenJob(job, memory);
    }
    for (const [k, result] of (await answer).entries())
      if (result.ok) keepJob(theirs[k], result.value, memory);
    return jobs.flatMap((job) => recallJob(job, memory) ?? []);
  };
  const alone = await run(plan.value.jobs, 0);
  if (options.isCancelled?.() || alone.length < plan.value.jobs.length) return;
  const matched = matchSeams(plan.value, alone);
  if (matched.ok) await run(matched.value, 0.5);
}

/** The disks for the other place: largest first, each to whoever has less so far. The same disks in both rounds. */
function shareDisks(jobs: readonly FlattenJob[]): Set<number> {
  const theirs = new Set<number>();
  let [ours, other] = [0, 0];
  const size = (job: FlattenJob): number => job.mesh.triangles.length;
  for (const job of jobs.toSorted((a, b) => size(b) - size(a) || a.disk - b.disk)) {
    if (other < ours) {
      theirs.add(job.disk);
      other += size(job);
    } else ours += size(job);
  }
  return theirs;
}

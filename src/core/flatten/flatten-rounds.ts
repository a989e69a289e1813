import { type FlattenJob, recallJob } from './flatten-jobs.ts';
import { createFlattenMemory, type JobResult } from './flatten-memory.ts';
import { matchSeams, planFlatten } from './flatten-together.ts';
import type { FlattenOptions, FlattenProblem } from './types.ts';

/**
 * The jobs of a problem in two rounds, those of one round in any order, anywhere. Once their results lie in
 * `options.memory`, `flattenTogether` finds all of it solved. Ends where a result is missing or contradicts another;
 * `flattenTogether` tells why. Disks are the same in both rounds.
 */
export function* flattenRounds(
  problem: FlattenProblem,
  options: FlattenOptions,
): Generator<readonly FlattenJob[], void, void> {
  const memory = options.memory ?? createFlattenMemory();
  const plan = planFlatten(problem, options);
  if (!plan.ok) return;
  const { jobs } = plan.value;
  yield jobs;
  const alone: readonly JobResult[] = jobs.flatMap((job) => recallJob(job, memory) ?? []);
  if (alone.length < jobs.length) return;
  const matched = matchSeams(plan.value, alone);
  if (matched.ok) yield matched.value;
}

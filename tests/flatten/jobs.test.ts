import { describe, expect, it } from 'vitest';
import type { Result } from '../../src/core/base/index.ts';
import {
  createFlattenMemory,
  type FlattenProblem,
  finishFlatten,
  flattenTogether,
  matchSeams,
  planFlatten,
  runFlattenJob,
} from '../../src/core/flatten/index.ts';
import { makePair, scaleMesh } from './cases/disk-meshes.ts';

const pair = makePair('bump', 20, 34);
const problem: FlattenProblem = {
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
  keptPaths: [{ disk: 0, vertices: Uint32Array.from({ length: 21 }, (_, i) => i + 21 * 12) }],
};

function solvedOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.issues[0].message);
  return result.value;
}

describe('unrolling shared out in jobs', () => {
  it('gives the same bytes when every job goes through a message, in any order', () => {
    const plan = solvedOf(planFlatten(problem));
    const alone = plan.jobs
      .toReversed()
      .map((job) => structuredClone(solvedOf(runFlattenJob(structuredClone(job)))))
      .reverse();
    const jobs = solvedOf(matchSeams(plan, alone));
    const together = jobs.map((job) => solvedOf(runFlattenJob(structuredClone(job))));
    expect(solvedOf(finishFlatten(plan, together))).toEqual(solvedOf(flattenTogether(problem)));
  });

  it('solves nothing again that did not change, and everything that depends on what did', () => {
    const memory = createFlattenMemory();
    const count = (p: FlattenProblem): number => {
      let steps = 0;
      solvedOf(flattenTogether(p, { memory, trace: () => steps++ }));
      return steps;
    };
    const first = count(problem);
    expect(first).toBeGreaterThan(4);
    expect(count(problem)).toBe(0);
    // A held length leaves: only the disk it lay on is unrolled alone again, and both are matched again.
    const freed = { ...problem, keptPaths: [] };
    const again = count(freed);
    expect(again).toBeGreaterThan(0);
    expect(again).toBeLessThan(first);
    expect(solvedOf(flattenTogether(freed, { memory }))).toEqual(solvedOf(flattenTogether(freed)));
  });
});

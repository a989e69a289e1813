import { describe, expect, it } from 'vitest';
import {
  createFlattenMemory,
  type FlattenProblem,
  finishFlatten,
  flattenTogether,
  matchSeams,
  planFlatten,
  runFlattenJob,
} from '../../src/core/flatten/index.ts';
import { problem, solvedOf } from './cases/two-panels.ts';

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

describe('paths of which only the sum is kept', () => {
  // Rows of the bump's two halves, far from and across the bump; every vertex row i of disk d.
  const rows = [6, 12].flatMap((row) =>
    [0, 1].map((disk) => ({ disk, vertices: Uint32Array.from({ length: 21 }, (_, i) => i + 21 * row) })),
  );
  const lengthsOf = ({ disk, vertices }: (typeof rows)[number], flat: Float64Array): [number, number] => {
    const p = problem.disks[disk].positions;
    let [onBody, onCloth] = [0, 0];
    for (let k = 1; k < vertices.length; k++) {
      const [a, b] = [vertices[k - 1], vertices[k]];
      onBody += Math.hypot(p[3 * b] - p[3 * a], p[3 * b + 1] - p[3 * a + 1], p[3 * b + 2] - p[3 * a + 2]);
      onCloth += Math.hypot(flat[2 * b] - flat[2 * a], flat[2 * b + 1] - flat[2 * a + 1]);
    }
    return [onBody, onCloth];
  };
  // Area-weighted mean square strain of both disks together.
  const energyOf = (disks: readonly { strain: { summary: { rms: number; area3d: number } } }[]): number =>
    disks.reduce((sum, { strain: { summary } }) => sum + summary.area3d * summary.rms ** 2, 0);

  it('keep it to 0.01 mm, move parts, and strain less than parts held one by one', () => {
    const each = solvedOf(flattenTogether({ ...problem, keptPaths: rows }));
    const shared = solvedOf(
      flattenTogether({ ...problem, keptPaths: rows.map((row) => ({ ...row, sum: 'rows' })) }),
    );
    const changes = rows.map((row) => {
      const [onBody, onCloth] = lengthsOf(row, shared[row.disk].positions);
      return onCloth - onBody;
    });
    expect(changes.reduce((sum, change) => sum + change)).toBeCloseTo(0, 2);
    expect(Math.max(...changes.map(Math.abs))).toBeGreaterThan(0.05);
    expect(energyOf(shared)).toBeLessThan(energyOf(each));
  });
});

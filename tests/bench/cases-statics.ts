import { findEquilibrium, prepareShell, respondToChanges } from '../../src/core/statics/index.ts';
import { makeTrunk } from '../statics/sample-shells.ts';
import type { BenchCase, BenchParts } from './types.ts';

/** A waisted trunk with ties, planned before: 2 · around · along triangles. The processor's own time beside that of the clock. */
function balanceCase(around: number, along: number): BenchCase {
  return {
    name: `statics/trunk-${2 * around * along}`,
    prepare: () => {
      const problem = makeTrunk(around, along);
      return { problem, shell: prepareShell(problem) };
    },
    run: ({ problem, shell }: Trunk): BenchParts => {
      const start = process.cpuUsage();
      const result = findEquilibrium(problem, {}, shell);
      const cpu = process.cpuUsage(start).user / 1000;
      return { checksum: result.ok ? result.value.volume : Number.NaN, partsMs: { cpu } };
    },
  };
}

function planCase(around: number, along: number): BenchCase {
  return {
    name: `statics/plan-${2 * around * along}`,
    prepare: () => makeTrunk(around, along),
    run: (problem: Trunk['problem']) => prepareShell(problem).factor.symbolic.panelStart.at(-1) ?? 0,
  };
}

interface Trunk {
  readonly problem: ReturnType<typeof makeTrunk>;
  readonly shell: ReturnType<typeof prepareShell>;
}

/** Its cut made larger by three thousandths, from the balance before: what a small change costs. */
function warmCase(around: number, along: number): BenchCase {
  return {
    name: `statics/warm-${2 * around * along}`,
    prepare: () => {
      const problem = makeTrunk(around, along);
      const result = findEquilibrium(problem);
      const start = result.ok ? result.value.positions : problem.start;
      const restEdges = problem.membrane.restEdges.map((x) => 1.003 * x);
      const recut = { ...problem, start, membrane: { ...problem.membrane, restEdges } };
      return { problem: recut, shell: prepareShell(recut) };
    },
    run: ({ problem, shell }: Trunk) => {
      const result = findEquilibrium(problem, {}, shell);
      return result.ok ? result.value.volume : Number.NaN;
    },
  };
}

/** How it answers to so many changes of its cut, each along one row. */
function respondCase(around: number, along: number, count: number): BenchCase {
  return {
    name: `statics/respond-${2 * around * along}x${count}`,
    prepare: () => {
      const problem = makeTrunk(around, along);
      const result = findEquilibrium(problem);
      const start = result.ok ? result.value.positions : problem.start;
      return { problem: { ...problem, start }, shell: prepareShell(problem) };
    },
    run: ({ problem, shell }: Trunk) => {
      const { restEdges } = problem.membrane;
      const row = 8 * around;
      const changes = Array.from({ length: count }, (_, n) => {
        const at = row * (n % along);
        return { restEdges: restEdges.map((x, k) => (k >= at && k < at + row ? 0.01 * x : 0)) };
      });
      const result = respondToChanges(problem, changes, {}, shell);
      return result.ok ? result.value.reduce((sum, moves) => sum + moves[300], 0) : Number.NaN;
    },
  };
}

const cases: readonly BenchCase[] = [
  planCase(50, 60),
  planCase(92, 108),
  balanceCase(35, 43),
  balanceCase(50, 60),
  balanceCase(92, 108),
  { ...balanceCase(205, 244), runs: 2 },
  warmCase(50, 60),
  respondCase(35, 43, 170),
];

export default cases;

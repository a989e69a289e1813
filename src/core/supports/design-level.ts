import { minimiseLeastSquares } from '../math/index.ts';
import { balanceLevel, type LevelCase } from './balance-level.ts';
import type { SectionBalance, SectionTie } from './solve-section.ts';

/** A tie or web across one row, by the places where the cloth is held. Those of one group are equally long. */
export interface Brace {
  readonly from: number;
  /** The other held place, or a fixed point on the pole sleeve. */
  readonly to: number | readonly [x: number, y: number];
  readonly group: number;
}

export interface LevelDesign {
  /** Per group, mm. */
  readonly lengths: Float64Array;
  /** Per group: how much longer than the straight distance on the body (mostly negative), mm. */
  readonly extra: Float64Array;
  readonly balance: SectionBalance;
  readonly ring: Float64Array;
  /** Parallel to the ring's points. */
  readonly deviations: Float64Array;
  readonly worst: { readonly index: number; readonly deviation: number };
}

/** Deviation that counts as one in the sum, mm. */
const SCALE = 4;
/** A brace is not sought further from the straight distance than about this, mm. */
const LENGTH_SPREAD = 25;
const STEP = 0.02;

/**
 * Lengths of the braces of one row that keep the largest deviation small: least squares of the cubes of the deviations
 * (a sixth-power mean, near the largest). `start`: extra lengths to begin with, for example of the row below.
 * Cost: 10 to 40 balances.
 */
export function designLevel(
  level: LevelCase,
  braces: readonly Brace[],
  start?: ArrayLike<number>,
): LevelDesign {
  const groupCount = braces.reduce((most, { group }) => Math.max(most, group + 1), 0);
  const straight = straightLengths(level, braces, groupCount);
  const count = level.target.outline.length / 2;
  const deviations = new Float64Array(count);
  let last: SectionBalance | undefined;
  const tiesOf = (extra: ArrayLike<number>): SectionTie[] =>
    braces.map(({ from, to, group }) => ({ from, to, length: Math.max(5, straight[group] + extra[group]) }));
  const residuals = (extra: Float64Array, out: Float64Array): void => {
    const { balance } = balanceLevel(level, tiesOf(extra), deviations, last);
    if (balance.converged) last = balance;
    else last = undefined;
    for (let i = 0; i < count; i++) out[i] = (deviations[i] / SCALE) ** 3;
    for (let g = 0; g < groupCount; g++) out[count + g] = (0.2 * extra[g]) / LENGTH_SPREAD;
  };
  const solution = minimiseLeastSquares(
    {
      start: Float64Array.from({ length: groupCount }, (_, g) => start?.[g] ?? -2.5),
      residualCount: count + groupCount,
      residuals,
      steps: new Float64Array(groupCount).fill(STEP),
    },
    { maxIterations: 12, tolerance: 1e-3 },
  );
  const { balance, ring } = balanceLevel(level, tiesOf(solution.point), deviations);
  let index = 0;
  for (let i = 1; i < count; i++) if (Math.abs(deviations[i]) > Math.abs(deviations[index])) index = i;
  return {
    lengths: straight.map((length, g) => length + solution.point[g]),
    extra: solution.point,
    balance,
    ring,
    deviations,
    worst: { index, deviation: deviations[index] },
  };
}

/** Mean straight distance between the ends of each group's braces on the body. */
function straightLengths({ held }: LevelCase, braces: readonly Brace[], groupCount: number): Float64Array {
  const sums = new Float64Array(groupCount);
  const counts = new Float64Array(groupCount);
  for (const { from, to, group } of braces) {
    const [x, y] = typeof to === 'number' ? [held[2 * to], held[2 * to + 1]] : to;
    sums[group] += Math.hypot(x - held[2 * from], y - held[2 * from + 1]);
    counts[group]++;
  }
  return sums.map((sum, g) => sum / counts[g]);
}

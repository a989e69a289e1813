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
  /** Per brace: how much longer than the straight distance on the body (mostly negative), mm. */
  readonly extraOfBrace: Float64Array;
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
/** Braces work when they are about so much shorter than the body is deep there, mm. */
const START = -2.5;
/** Where the first start leads no nearer than this, mm, another is tried too. */
const RETRY_ABOVE = 4;
const OTHER_START = 4;
const STEP = 0.02;

/**
 * Lengths of the braces of one row that keep the largest deviation small: least squares of the cubes of the deviations
 * (a sixth-power mean, near the largest). Starts with every brace a little short.
 * Cost: 10 to 40 balances.
 */
export function designLevel(level: LevelCase, braces: readonly Brace[]): LevelDesign {
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
  const minimiseFrom = (extra: number) => {
    last = undefined;
    const start = new Float64Array(groupCount).fill(extra);
    const steps = new Float64Array(groupCount).fill(STEP);
    return minimiseLeastSquares(
      { start, residualCount: count + groupCount, residuals, steps },
      { maxIterations: 12, tolerance: 1e-3 },
    );
  };
  const worst = () => {
    let index = 0;
    for (let i = 1; i < count; i++) if (Math.abs(deviations[i]) > Math.abs(deviations[index])) index = i;
    return { index, deviation: deviations[index] };
  };
  let solution = minimiseFrom(START);
  if (Math.abs(worst().deviation) > RETRY_ABOVE) {
    const other = minimiseFrom(OTHER_START);
    if (other.sumOfSquares < solution.sumOfSquares) solution = other;
  }
  const { balance, ring } = balanceLevel(level, tiesOf(solution.point), deviations);
  return {
    extraOfBrace: Float64Array.from(braces, ({ group }) => solution.point[group]),
    balance,
    ring,
    deviations,
    worst: worst(),
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

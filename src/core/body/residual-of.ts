import type { TapeContext, TapeReach } from './tape-rule.ts';

/** One residual that reads the surface. */
export interface Reading {
  readonly reach: TapeReach;
  readonly read: (context: TapeContext) => number;
  /** What is read where the place is sought anew for every body: the same place on bodies near this one. Its slope is the same. */
  readonly hold?: (context: TapeContext) => (near: TapeContext) => number;
  readonly wanted: number;
  readonly spread: number;
  /** Beyond so many spreads it pulls no harder; absent where every reading is trusted. */
  readonly doubtedBeyond?: number;
}

/** In spreads; squared it is Huber's loss where a reading is doubted (Huber, Ann. Math. Statist. 35 (1964)). */
export function residualOf({ wanted, spread, doubtedBeyond: k }: Reading, got: number): number {
  const off = (got - wanted) / spread;
  if (k === undefined || Math.abs(off) <= k) return off;
  return Math.sign(off) * Math.sqrt(2 * k * Math.abs(off) - k * k);
}

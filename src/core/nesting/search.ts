import type { Layout, Snapshot } from './layout.ts';
import type { Seeker } from './seek-place.ts';

/** What a search shares from the first to the last try. */
export interface Search {
  readonly layout: Layout;
  readonly seeker: Seeker;
  readonly random: () => number;
  /** Evaluations at which it ends. */
  readonly end: number;
  /** No layout can reach less far to the right. */
  readonly bound: number;
}

/** What the search has reached. */
export interface Reach {
  /** Valid, the shortest so far. */
  readonly best: Snapshot;
  readonly used: number;
}

/** The first valid layout, and the length to try next. */
export interface First {
  readonly reach: Reach;
  readonly next: number;
}

/** Told of every shorter layout. */
export type Report = (reach: Reach) => void;

/** A length this share above the bound counts as reached. */
const AT_BOUND = 2e-6;

export function isAtBound({ bound }: Search, { used }: Reach): boolean {
  return used <= bound * (1 + AT_BOUND);
}

import { disrupt } from './disrupt.ts';
import type { Snapshot } from './layout.ts';
import { type Search, separate } from './separate.ts';

/** What the search has reached. */
export interface Reach {
  /** Valid, the shortest so far. */
  readonly best: Snapshot;
  readonly used: number;
}

/** Told of every shorter layout; false ends the search. */
export type Report = (reach: Reach) => boolean;

const EXPLORES = 0.65;
const FIRST_SHRINK = 0.04;
const LEAST_SHRINK = 0.001;
const EXPLORE_PATIENCE = 70;
const EXPLORE_STRIKES = 1;
const COMPRESS_PATIENCE = 60;
const COMPRESS_STRIKES = 2;
const COMPRESS_FROM = 0.002;
const COMPRESS_TO = 0.0001;

/**
 * Shortens a valid layout again and again: first in long steps, with tries from disturbed layouts where one fails (exploring),
 * then in short ones from the best (compressing).
 */
export function* shorten(
  search: Search,
  start: Reach,
  report: Report,
  first?: number,
): Generator<void, Reach> {
  const spent = search.layout.evaluations;
  const until = spent + EXPLORES * (search.end - spent);
  const explored = yield* explore({ ...search, end: until }, start, report, first);
  return yield* compress(search, explored, report);
}

function* explore(search: Search, start: Reach, report: Report, first?: number): Generator<void, Reach> {
  const { layout } = search;
  let reach = start;
  let shrink = FIRST_SHRINK;
  let failures = 0;
  let pool: { loss: number; snapshot: Snapshot }[] = [];
  layout.restore(reach.best);
  let target = first ?? (1 - shrink) * reach.used;
  while (layout.evaluations < search.end) {
    layout.limit = target;
    layout.restore(layout.snapshot());
    const { isApart, loss } = yield* separate(search, EXPLORE_PATIENCE, EXPLORE_STRIKES);
    if (isApart) {
      reach = { best: layout.snapshot(), used: layout.used() };
      if (!report(reach)) return reach;
      failures = 0;
      pool = [];
      target = (1 - shrink) * reach.used;
      continue;
    }
    pool.push({ loss, snapshot: layout.snapshot() });
    pool.sort((a, b) => a.loss - b.loss);
    failures++;
    if (failures % 3 === 0) {
      shrink = Math.max(LEAST_SHRINK, shrink / 2);
      target = Math.max((1 - shrink) * reach.used, Math.min(target * 1.03, 0.999 * reach.used));
    }
    if (failures % 3 === 0 && shrink > LEAST_SHRINK && target > 0.97 * reach.used) {
      layout.restore(reach.best);
      pool = [];
    } else {
      layout.restore(pool[pickOf(pool.length, search.random)].snapshot);
      disrupt(search);
    }
  }
  return reach;
}

/** Mostly the first: |normal| with a spread of a quarter of the pool, as the sum of twelve even chances. */
function pickOf(count: number, random: () => number): number {
  let sum = -6;
  for (let k = 0; k < 12; k++) sum += random();
  return Math.min(count - 1, Math.floor(Math.abs(sum) * 0.25 * count));
}

function* compress(search: Search, start: Reach, report: Report): Generator<void, Reach> {
  const { layout } = search;
  const begin = layout.evaluations;
  let reach = start;
  let step = COMPRESS_FROM;
  while (layout.evaluations < search.end) {
    layout.restore(reach.best);
    const target = (1 - step) * reach.used;
    squeeze(search, reach.used, target);
    const { isApart } = yield* separate(search, COMPRESS_PATIENCE, COMPRESS_STRIKES);
    if (isApart) {
      reach = { best: layout.snapshot(), used: layout.used() };
      if (!report(reach)) return reach;
    } else {
      const share = (layout.evaluations - begin) / (search.end - begin);
      step = Math.max(COMPRESS_TO, step * 0.7, (COMPRESS_FROM * (1 - share)) / 8);
    }
  }
  return reach;
}

/** What lies right of a place taken by chance moves left by as much as the layout is to be shorter. */
function squeeze({ layout, random }: Search, used: number, target: number): void {
  const split = random() * used;
  const snapshot = layout.snapshot();
  for (let i = 0; i < layout.count; i++)
    if (layout.bodies[i].moves && snapshot.x[i] > split) snapshot.x[i] -= used - target;
  layout.limit = target;
  layout.restore(snapshot);
}

import { disrupt } from './disrupt.ts';
import { type First, isAtBound, type Reach, type Report, type Search } from './search.ts';
import { separate } from './separate.ts';

// All by trial on the instances of `shared/nesting`.
/** Share of the budget. */
const EXPLORES = 0.75;
/** Shares of the length taken off at once: at most, when a layout counts as stuck, from a disturbed one. */
const FIRST_STEP = 0.04;
const STUCK_STEP = 0.002;
const DISRUPTED_STEP = 0.01;
/** The next step after one that went. */
const QUICK = 1.3;
const PATIENCE = { exploring: 25, compressing: 30 };
/** Steps when compressing: the first, the last, the next after one that went or did not. */
const COMPRESS = { first: 0.002, last: 0.0001, longer: 1.2, shorter: 0.6 };
/** Evaluations that a try counts as at least, so that tries end where nothing has room to move. */
const COST = 50;

/**
 * Begins anew as often as this many evaluations an item go into the budget, at most so often, and within this share of it; the rest
 * goes on from the best. A search that goes on for longer stalls.
 */
const ANEW = { each: 300_000, most: 2, share: 0.6 };

/** Shortens a valid layout again and again; with a large budget several times from the beginning, then what came out shortest. */
export function* shorten(search: Search, first: First, report: Report): Generator<void, Reach> {
  const { layout, end } = search;
  const spent = layout.evaluations;
  const starts = Math.min(ANEW.most, Math.floor((end - spent) / (ANEW.each * layout.items)));
  let best = first.reach;
  const reportShorter = (reach: Reach): void => {
    if (reach.used >= best.used) return;
    best = reach;
    report(reach);
  };
  for (let k = 1; k <= starts && starts > 1 && !isAtBound(search, best); k++) {
    const until = spent + ((end - spent) * ANEW.share * k) / starts;
    yield* shortenOnce({ ...search, end: until }, first, reportShorter);
  }
  const next = best === first.reach ? first.next : Infinity;
  yield* shortenOnce(search, { reach: best, next }, reportShorter);
  return best;
}

/**
 * First in long steps, with tries from disturbed layouts where none goes on (exploring), then in short ones from the best
 * (compressing).
 */
function* shortenOnce(search: Search, { reach, next }: First, report: Report): Generator<void, Reach> {
  const spent = search.layout.evaluations;
  const until = spent + EXPLORES * (search.end - spent);
  if (isAtBound(search, reach)) return reach;
  const explored = yield* explore({ ...search, end: until }, reach, next, report);
  return isAtBound(search, explored) ? explored : yield* compress(search, explored, report);
}

/**
 * A layout that cannot be separated is given half of what was taken back, again and again, which often ends shorter than the best;
 * when that is next to nothing, the best is disturbed.
 */
function* explore(search: Search, start: Reach, next: number, report: Report): Generator<void, Reach> {
  const { layout } = search;
  let reach = start;
  let step = FIRST_STEP;
  layout.restore(reach.best);
  layout.limit = reach.used;
  resize(search, Math.min(next, (1 - step) * reach.used));
  while (layout.evaluations < search.end) {
    const { isApart } = yield* separate(search, PATIENCE.exploring);
    if (isApart && layout.used() < reach.used) {
      reach = { best: layout.snapshot(), used: layout.used() };
      report(reach);
      if (isAtBound(search, reach)) return reach;
      step = Math.min(FIRST_STEP, step * QUICK);
    } else {
      step /= 2;
      if (step < STUCK_STEP) {
        layout.limit = reach.used;
        layout.restore(reach.best);
        disrupt(search);
        step = DISRUPTED_STEP;
      }
    }
    resize(search, (1 - step) * reach.used);
  }
  return reach;
}

function* compress(search: Search, start: Reach, report: Report): Generator<void, Reach> {
  const { layout } = search;
  let reach = start;
  let step = COMPRESS.first;
  while (layout.evaluations < search.end) {
    layout.limit = reach.used;
    layout.restore(reach.best);
    resize(search, (1 - step) * reach.used);
    const { isApart } = yield* separate(search, PATIENCE.compressing);
    if (isApart && layout.used() < reach.used) {
      reach = { best: layout.snapshot(), used: layout.used() };
      report(reach);
      if (isAtBound(search, reach)) return reach;
      step *= COMPRESS.longer;
    } else step = Math.max(COMPRESS.last, step * COMPRESS.shorter);
  }
  return reach;
}

/** What lies right of a place taken by chance, on the last sheet in use, moves by as much as that is made longer or shorter. */
function resize({ layout, random, bound }: Search, length: number): void {
  const target = Math.max(length, bound * (1 + 1e-6));
  const used = Math.min(layout.limit, layout.used());
  const { left } = layout.zones[layout.zoneAt(used)];
  const split = left + random() * Math.max(0, target - left);
  const snapshot = layout.snapshot();
  for (let i = 0; i < layout.count; i++)
    if (layout.bodies[i].moves && snapshot.x[i] > split) snapshot.x[i] += target - used;
  layout.limit = target;
  layout.restore(snapshot);
  layout.evaluations += COST;
}

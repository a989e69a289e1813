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
 * From so many evaluations an item on, a search begins several times anew, within this share of the budget; at most so often, and
 * each of the first with at least so many times the square of the items, since passes grow longer with them and more are needed.
 * What one beginning comes to differs by more than a longer search gains.
 */
const RACE = { from: 400_000, share: 0.65, most: 16, each: 900 };

/** A layout on its way: the shortest it has been, the length to try next if it has not begun, else how much to take off. */
interface Racer {
  reach: Reach;
  next: number;
  step: number;
}

/**
 * Shortens a valid layout again and again. With a large budget several times from the beginning, since which is shortest at first
 * is often shortest in the end: the better half goes on, with as much for the half as before for all, until one is left.
 */
export function* shorten(search: Search, first: First, report: Report): Generator<void, Reach> {
  const { layout, end } = search;
  let best = first.reach;
  const reportShorter = (reach: Reach): void => {
    if (reach.used >= best.used) return;
    best = reach;
    report(reach);
  };
  if (isAtBound(search, best)) return best;
  const budget = end - layout.evaluations;
  const race = budget < RACE.from * layout.items ? 0 : RACE.share * budget;
  const rounds = roundsFor(race / (RACE.each * layout.items ** 2));
  let racers = Array.from({ length: 2 ** rounds }, (): Racer => ({ ...first, step: FIRST_STEP }));
  for (let round = 0; round < rounds; round++) {
    for (const racer of racers) {
      const until = layout.evaluations + race / rounds / racers.length;
      yield* shortenOnce({ ...search, end: until }, racer, reportShorter);
      if (isAtBound(search, best)) return best;
    }
    racers = racers.sort((a, b) => a.reach.used - b.reach.used).slice(0, racers.length / 2);
  }
  yield* shortenOnce(search, racers[0], reportShorter);
  return best;
}

/** The most rounds, of twice as many racers as the next, in which each of the first has one share or more. */
function roundsFor(shares: number): number {
  let rounds = 0;
  while (2 ** (rounds + 1) <= RACE.most && shares / (rounds + 1) >= 2 ** (rounds + 1)) rounds++;
  return rounds;
}

/** First in long steps, with tries from disturbed layouts where none goes on, then in short ones from the best. */
function* shortenOnce(search: Search, racer: Racer, report: Report): Generator<void> {
  const spent = search.layout.evaluations;
  const until = spent + EXPLORES * (search.end - spent);
  yield* explore({ ...search, end: until }, racer, report);
  if (!isAtBound(search, racer.reach)) yield* compress(search, racer, report);
}

/**
 * A layout that cannot be separated is given half of what was taken back, again and again, which often ends shorter than the best;
 * when that is next to nothing, the best is disturbed.
 */
function* explore(search: Search, racer: Racer, report: Report): Generator<void> {
  const { layout } = search;
  layout.limit = racer.reach.used;
  layout.restore(racer.reach.best);
  resize(search, Math.min(racer.next, (1 - racer.step) * racer.reach.used));
  racer.next = Infinity;
  while (layout.evaluations < search.end) {
    const { isApart } = yield* separate(search, PATIENCE.exploring);
    if (isApart && layout.used() < racer.reach.used) {
      racer.reach = { best: layout.snapshot(), used: layout.used() };
      report(racer.reach);
      if (isAtBound(search, racer.reach)) return;
      racer.step = Math.min(FIRST_STEP, racer.step * QUICK);
    } else {
      racer.step /= 2;
      if (racer.step < STUCK_STEP) {
        layout.limit = racer.reach.used;
        layout.restore(racer.reach.best);
        disrupt(search);
        racer.step = DISRUPTED_STEP;
      }
    }
    resize(search, (1 - racer.step) * racer.reach.used);
  }
}

function* compress(search: Search, racer: Racer, report: Report): Generator<void> {
  const { layout } = search;
  let step = COMPRESS.first;
  while (layout.evaluations < search.end) {
    layout.limit = racer.reach.used;
    layout.restore(racer.reach.best);
    resize(search, (1 - step) * racer.reach.used);
    const { isApart } = yield* separate(search, PATIENCE.compressing);
    if (isApart && layout.used() < racer.reach.used) {
      racer.reach = { best: layout.snapshot(), used: layout.used() };
      report(racer.reach);
      if (isAtBound(search, racer.reach)) return;
      step *= COMPRESS.longer;
    } else step = Math.max(COMPRESS.last, step * COMPRESS.shorter);
  }
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

import { layInColumns } from './lay-in-columns.ts';
import { layAt, type Prepared } from './prepare-search.ts';
import type { First, Reach, Search } from './search.ts';
import { separate } from './separate.ts';
import type { NestProblem } from './types.ts';

/** Share of the strip that the hulls of items cover when the search begins. */
const DENSITY = 0.82;
const PATIENCE = 40;
/** Places tried for a body on one sheet before the next. */
const TRIES = 60;
/** Share of the budget within which everything is to have found room. */
const TRY_SHARE = 0.4;

/** Lays everything for the first time: on a strip in columns, which is at once, or from where the items are to begin. */
export function* layFirst(problem: NestProblem, prepared: Prepared, search: Search): Generator<void, First> {
  const begun = layStarts(problem, prepared);
  if (problem.sheets) return yield* layOnSheets(problem, prepared, search);
  const { layout } = prepared;
  const start = begun ? layout.snapshot() : undefined;
  if (start) for (let k = 0; k < layout.items; k++) if (layout.bodies[k].moves) layout.lift(k);
  layInColumns(layout, problem.gap);
  const reach: Reach = { best: layout.snapshot(), used: layout.used() };
  if (!start) return { reach, next: Math.min(reach.used, lengthOfHulls(problem, prepared)) };
  yield;
  layout.restore({ ...start, isLaid: start.isLaid.map((is, k) => is || reach.best.isLaid[k]) });
  return { reach: (yield* separateAsIs(search)) ?? reach, next: Infinity };
}

/** The present layout with its collisions solved, no longer than it is; undefined when they cannot be. */
function* separateAsIs(search: Search): Generator<void, Reach | undefined> {
  const { layout } = search;
  layout.limit = layout.used();
  const { isApart } = yield* separate(search, PATIENCE);
  return isApart ? { best: layout.snapshot(), used: layout.used() } : undefined;
}

/** Lays the items that are to begin somewhere; false when there are none. */
function layStarts({ items }: NestProblem, { layout }: Prepared): boolean {
  let any = false;
  items.forEach(({ start, held }, k) => {
    if (!start || held) return;
    layAt(layout, k, start);
    any = true;
  });
  if (any) layout.restore(layout.snapshot());
  return any;
}

function lengthOfHulls({ width = 0 }: NestProblem, { layout }: Prepared): number {
  let hulls = 0;
  for (let k = 0; k < layout.items; k++)
    hulls += layout.shapes[layout.bodies[k].stances[0].shape].of.hullArea;
  return hulls / (width * DENSITY);
}

/**
 * The largest first, each where it meets nobody on the first sheet that has such a place, else where it meets least; then all are
 * separated. What cannot be is left out, the smallest that collides first.
 */
function* layOnSheets(problem: NestProblem, { layout }: Prepared, search: Search): Generator<void, First> {
  layout.limit = Math.max(...layout.zones.map(({ right }) => right));
  for (const body of openBySize(layout)) {
    layFreely(search, body);
    yield;
  }
  const end = layout.evaluations + TRY_SHARE * (problem.budget - layout.evaluations);
  for (;;) {
    const { isApart } = yield* separate({ ...search, end }, PATIENCE);
    if (isApart) break;
    // So that tries end where nothing has room to move.
    layout.evaluations += TRIES;
    // While there is budget, once more from here with other weights.
    if (layout.evaluations < end) continue;
    const colliding = openBySize(layout, true);
    if (colliding.length === 0) break;
    layout.lift(colliding[colliding.length - 1]);
  }
  return { reach: { best: layout.snapshot(), used: layout.used() }, next: Infinity };
}

/** Bodies not yet laid, or those that move and collide, the largest first. */
function openBySize(layout: Prepared['layout'], colliding = false): number[] {
  const sizeOf = (body: number): number => layout.shapes[layout.bodies[body].stances[0].shape].of.hullArea;
  const isMeant = (body: number): boolean =>
    colliding ? layout.bodies[body].moves && layout.weightedLossOf(body) > 0 : !layout.isLaid[body];
  return Array.from({ length: layout.items }, (_, k) => k)
    .filter(isMeant)
    .sort((a, b) => sizeOf(b) - sizeOf(a));
}

/** The leftmost free place of some by chance, sheet by sheet. */
function layFreely({ layout, random, seeker }: Search, body: number): void {
  const { stances } = layout.bodies[body];
  const place = { x: 0, y: 0 };
  layout.aim(body);
  for (let zone = 0; zone < layout.zones.length; zone++) {
    const { left, right, bottom, top } = layout.zones[zone];
    let best = { stance: -1, x: Infinity, y: 0 };
    for (let k = 0; k < TRIES; k++) {
      const stance = Math.floor(random() * stances.length);
      const x = left + random() * (right - left);
      const y = bottom + random() * (top - bottom);
      if (!layout.fit(body, stance, zone, x, y, place) || place.x >= best.x) continue;
      if (layout.judge(body, stance, place.x, place.y, 0) === 0) best = { stance, x: place.x, y: place.y };
    }
    if (best.stance < 0) continue;
    layout.lay(body, best.stance, best.x, best.y);
    return;
  }
  seeker.settle(body);
}

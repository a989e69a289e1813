import { failure, type Issue, type Result, seededRandom, success } from '../base/index.ts';
import { checkProblem } from './check-problem.ts';
import { layInColumns } from './lay-in-columns.ts';
import { boundOf, planOfLayout } from './plan-of-layout.ts';
import { type Prepared, prepareSearch } from './prepare-search.ts';
import { Seeker } from './seek-place.ts';
import type { Search } from './separate.ts';
import { type Reach, shorten } from './shorten.ts';
import type { NestPlan, NestProblem, NestProgress } from './types.ts';

const EFFORT = { wide: 60, near: 30, starts: 4 };
/** Share of the strip that the hulls of items cover when the search begins. */
const FIRST_DENSITY = 0.82;

/**
 * Lays items on a strip or on sheets, as short as the budget allows. Yields every few ms of work the best valid plan so far;
 * whoever has enough does not call on. The same problem gives the same plan on every machine.
 */
export function* nest(problem: NestProblem): Generator<NestProgress, Result<NestPlan>> {
  const wrong = checkProblem(problem);
  if (wrong.length > 0) return failure(wrong);
  const prepared = prepareSearch(problem);
  const { layout } = prepared;
  const random = seededRandom(problem.seed);
  const search: Search = {
    layout,
    seeker: new Seeker(layout, random, EFFORT),
    random,
    end: problem.budget,
  };
  const bound = boundOf(problem, prepared);
  layInColumns(layout, problem.gap);
  let reach: Reach = { best: layout.snapshot(), used: layout.used() };
  let plan = planOfLayout(problem, prepared, reach.best, bound);
  yield { plan, share: 0 };
  const report = (found: Reach): boolean => {
    reach = found;
    return found.used > bound * (1 + 1e-6);
  };
  const inner = shorten(search, reach, report, firstLength(prepared, problem.width ?? 0, bound));
  let told = reach;
  for (let step = inner.next(); !step.done; step = inner.next()) {
    if (told !== reach) plan = planOfLayout(problem, prepared, reach.best, bound);
    told = reach;
    yield { plan, share: Math.min(1, layout.evaluations / problem.budget) };
  }
  plan = planOfLayout(problem, prepared, reach.best, bound);
  return success(plan, [] as Issue[]);
}

function firstLength({ layout, items }: Prepared, width: number, bound: number): number {
  let hulls = 0;
  for (let k = 0; k < items; k++) hulls += layout.shapes[layout.bodies[k].stances[0].shape].of.hullArea;
  return Math.max(bound, hulls / (width * FIRST_DENSITY));
}

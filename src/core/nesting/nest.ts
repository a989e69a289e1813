import { failure, type Issue, type Result, seededRandom, success } from '../base/index.ts';
import { measurePolygonArea } from '../math/index.ts';
import { areApart } from './are-apart.ts';
import { checkProblem } from './check-problem.ts';
import { layFirst } from './lay-first.ts';
import { phrase } from './phrases.ts';
import { boundOf, planOfLayout } from './plan-of-layout.ts';
import { type Prepared, prepareSearch } from './prepare-search.ts';
import type { Reach, Search } from './search.ts';
import { Seeker } from './seek-place.ts';
import { shorten } from './shorten.ts';
import type { NestPlan, NestProblem, NestProgress } from './types.ts';

/**
 * Lays items on a strip or on sheets, as short as the budget allows. Yields every few ms of work the best valid plan so far;
 * whoever has enough does not call on. Ends early when no plan can be shorter. The same problem gives the same plan on every
 * machine. Fails on what `checkProblem` finds; items without room are named in `left` and by a warning.
 */
export function* nest(problem: NestProblem): Generator<NestProgress, Result<NestPlan>> {
  const wrong = checkProblem(problem);
  if (wrong.length > 0) return failure(wrong);
  const prepared = prepareSearch(problem);
  const { layout } = prepared;
  const random = seededRandom(problem.seed);
  const seeker = new Seeker(layout, random);
  const least = boundOf(problem, prepared);
  const search: Search = { layout, seeker, random, end: problem.budget, bound: least };
  const bound = problem.sheets ? 0 : least;
  const teller = tellerOf(problem, prepared, bound);
  const first = yield* telling(layFirst(problem, prepared, search), teller);
  teller.reach = first.reach;
  yield teller.progress();
  const report = (found: Reach): void => {
    teller.reach = found;
  };
  if (problem.items.some(({ held }) => !held)) yield* telling(shorten(search, first, report), teller);
  yield teller.progress();
  const plan = teller.progress().plan ?? planOfLayout(problem, prepared, first.reach.best, bound);
  return success(plan, withoutRoom(problem, plan));
}

/** Makes plans of what the search reaches, each only when it is asked for, and judges it once more. */
function tellerOf(problem: NestProblem, prepared: Prepared, bound: number) {
  const { layout } = prepared;
  let told: Reach | undefined;
  let plan: NestPlan | undefined;
  return {
    reach: undefined as Reach | undefined,
    progress(): NestProgress {
      if (this.reach !== told) {
        told = this.reach;
        if (told && areApart(layout, told.best)) plan = planOfLayout(problem, prepared, told.best, bound);
      }
      return { plan, share: Math.min(1, layout.evaluations / Math.max(1, problem.budget)) };
    },
  };
}

function* telling<Value>(
  work: Generator<void, Value>,
  teller: ReturnType<typeof tellerOf>,
): Generator<NestProgress, Value> {
  let step = work.next();
  for (; !step.done; step = work.next()) yield teller.progress();
  return step.value;
}

function withoutRoom({ items }: NestProblem, { left, placements }: NestPlan): Issue[] {
  if (left.length === 0) return [];
  const area = items.reduce(
    (sum, { outline }, k) => (placements[k] ? sum : sum + Math.abs(measurePolygonArea(outline))),
    0,
  );
  const message = phrase('nesting.no-room', { items: left, area });
  return [{ code: 'no-room', path: 'sheets', message, severity: 'warning', measured: area }];
}

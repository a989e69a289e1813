import { failure, type Result, success } from '../../core/base/index.ts';
import { type LayPlan, type LayTask, layPieces } from '../../core/laying/index.ts';
import type { OnLaid } from '../calls/index.ts';

/** So often the page is told of the search and asked about it, ms; until it answers, other calls have their turn. */
const EVERY_MS = 150;

/** Searches until the budget is spent or the page has enough: then the best plan so far, or a failure without issues. */
export async function layWhileWanted(task: LayTask, onLaid: OnLaid): Promise<Result<LayPlan>> {
  const search = layPieces(task);
  let toldAt = Number.NEGATIVE_INFINITY;
  for (let step = search.next(); ; step = search.next()) {
    if (step.done) return step.value;
    const { plan } = step.value;
    if (performance.now() - toldAt < EVERY_MS) continue;
    if (!(await onLaid(step.value))) return plan ? success(plan) : failure([]);
    toldAt = performance.now();
  }
}

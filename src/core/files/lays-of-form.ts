import type { Issue } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import type { MaterialLine } from '../inside/index.ts';
import { type LayPlan, layAll, layTasks, listToBuy } from '../laying/index.ts';

export interface LaysOfForm {
  readonly plans: readonly LayPlan[];
  /** What to buy by them. */
  readonly materials: readonly MaterialLine[];
  readonly issues: readonly Issue[];
}

/** How the pieces of a form lie on cloth and card. A form that was not laid is laid now, which takes some seconds. */
export function laysOfForm(form: Form): LaysOfForm {
  const listed = form.inside?.materials ?? [];
  // With the form laid, its list is by the plans already.
  if (form.laid) return { plans: form.laid, materials: listed, issues: [] };
  const pieces = [...form.pieces, ...(form.inside?.pieces ?? []), ...(form.trial ?? [])];
  const laying = form.project.laying ?? {};
  const laid = layTasks({ ...form, pieces }, laying).map(layAll);
  const plans = laid.flatMap((made) => (made.ok ? [made.value] : []));
  return {
    plans,
    materials: listToBuy(listed, plans, laying),
    issues: laid.flatMap((made) => made.issues.map((issue): Issue => ({ ...issue, severity: 'warning' }))),
  };
}

import { orderOfWork, planMaking, provenStep } from '../../src/core/making/index.ts';
import { checkOrder } from '../../src/core/sewing/index.ts';
import { formToMake, without } from '../making/form-to-make.ts';
import { SPOILT } from '../making/spoilt-orders.ts';

/** Orders of work that cannot be followed, each with why; a form that cannot be made in any; one that is closed from outside; and one of the fewest parts. */
export function tellOfOrders(): unknown {
  const form = formToMake('average');
  const { work, planned, names } = orderOfWork(form);
  const good = planned.map(provenStep);
  const spoilt = SPOILT.map(({ steps = (same) => same, given = (same) => same }) =>
    checkOrder(given(work.input), steps(good), names),
  );
  const bare = planMaking(without(form, (id) => /-plate-|^lid-|-cover$|^cushion/.test(id)));
  const thick = { ...form.project, inside: { ...form.project.inside, clothThickness: 2.5 } };
  // Bound plates and a laddered back, as with the fewest parts.
  const simple = { ...form.project, inside: { ...form.project.inside, recut: true } };
  const bound = planMaking({ ...without(form, (id) => /^(base|neck)-plate-cover$/.test(id)), project: simple });
  return [spoilt, bare.issues, planMaking({ ...form, project: thick }), bound];
}

import type { Phrase } from '../base/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import { partsOfInside } from '../inside/index.ts';
import { checkOrder, type OrderFault, type ProvenStep } from '../sewing/index.ts';
import { hoursOfStep } from './hours-of-step.ts';
import { namesOfWork } from './names-of-work.ts';
import { armSteps } from './order-of-work-arms.ts';
import type { ClosingWay } from './order-of-work-close.ts';
import { fillSteps } from './order-of-work-fill.ts';
import { finishSteps } from './order-of-work-finish.ts';
import { plateSteps } from './order-of-work-plates.ts';
import { prepareSteps } from './order-of-work-prepare.ts';
import { setSteps } from './order-of-work-set.ts';
import { sewSteps } from './order-of-work-sew.ts';
import { type Work, workOfForm } from './work-of-form.ts';
import type { PlannedStep } from './work-parts.ts';

/** An order of work, and what the proof found against it. */
export interface ProvenOrder {
  readonly work: Work;
  readonly planned: readonly PlannedStep[];
  /** How faults name what they are about. */
  readonly names: Readonly<Record<string, Phrase>>;
  readonly faults: readonly OrderFault[];
}

/**
 * Everything to do from the tape to the finished form, with the pieces, seams and numbers of this form, in an order that is proven
 * by sewing it in thought (`checkOrder`): sides and shoulders on an empty shell that is open behind, inner parts near its
 * free edges, the centre back last. With the fewest parts that is laddered from outside; with all it is packed where the cell beside it
 * takes everything else, and laddered where it does not; the first way without a fault is taken. A form without inner parts (a draft) has the steps of
 * the shell only. Cost: that of measuring every flat seam once, and of the proof.
 */
export function orderOfWork(form: Form): ProvenOrder {
  const work = workOfForm(form);
  const isSimple = partsOfInside(form.project.inside) === 'fewest';
  const [first, second] = isSimple ? (['ladder', 'packed'] as const) : (['packed', 'ladder'] as const);
  const usual = proveOrder(work, planSteps(work, first));
  if (usual.faults.length === 0) return usual;
  const other = proveOrder(work, planSteps(work, second));
  return other.faults.length < usual.faults.length ? other : usual;
}

/** All steps, the shell closed in the given way. */
function planSteps(work: Work, way: ClosingWay): PlannedStep[] {
  const { has } = work;
  const inside = has.inside
    ? [...plateSteps(work), ...armSteps(work), ...setSteps(work), ...fillSteps(work), ...finishSteps(work)]
    : [];
  return [...prepareSteps(work), ...sewSteps(work, way), ...inside];
}

/** Sews the steps in thought. */
function proveOrder(work: Work, planned: readonly PlannedStep[]): ProvenOrder {
  const names = namesOfWork(work);
  return { work, planned, names, faults: checkOrder(work.input, planned.map(provenStep), names) };
}

export function provenStep({ step, ops }: PlannedStep): ProvenStep {
  return {
    id: step.id,
    ops,
    cautions: step.cautions.map(({ id }) => id),
    listed: step.seams.map(({ id }) => id),
  };
}

/** The steps as they are told, with the hours they take. */
export function stepsOf({ work, planned }: ProvenOrder): WorkStep[] {
  return planned.map((one) => ({ ...one.step, hours: hoursOfStep(work, one) }));
}

import type { Form, WorkStep } from '../form/index.ts';
import { finishSteps } from './order-of-work-finish.ts';
import { prepareSteps } from './order-of-work-prepare.ts';
import { sewSteps } from './order-of-work-sew.ts';

/**
 * Everything to do from the tape to the finished form, in an order in which nothing needs what comes later, with the pieces,
 * seams and numbers of this form. Front and back are sewn flat, inner parts go in while the shell is open, the sides close
 * it (see `orderSeams`); plates and pole before filling. A form without inner parts (a draft) has the steps of the shell
 * only. Cost: about that of measuring every flat seam once.
 */
export function orderOfWork(form: Form): WorkStep[] {
  return [...prepareSteps(form), ...sewSteps(form), ...finishSteps(form)];
}

import {
  checkOpening,
  openingOfTrial,
  orderSeams,
  type TrialOpening,
  trialProjectOf,
} from '../assembly/index.ts';
import { type Result, success } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import type { Project } from '../project/index.ts';
import { makeForm } from './create-pipeline.ts';
import type { MakeOptions } from './make-options.ts';

export interface ShellToTryOn {
  /** A form of panels alone, of the person's own size; its pieces have the material `trial`. */
  readonly form: Form;
  readonly opening: TrialOpening;
}

/**
 * The shell to sew of cheap cloth and try on before the form is cut: unrolled without growth and layers, without the inside and its
 * lines, open where it is put on. Warns where a head does not go through.
 */
export function makeTrialShell(
  project: Project,
  options: Omit<MakeOptions, 'isDraft' | 'fills' | 'lays' | 'isTrialShell'>,
): Result<ShellToTryOn> {
  const made = makeForm(trialProjectOf(project), { ...options, isDraft: true, isTrialShell: true });
  if (!made.ok) return made;
  const { shell, body } = made.value;
  const opening = openingOfTrial(shell, orderSeams(shell, body.landmarks.neckFront.v));
  return success({ form: made.value, opening }, [...made.issues, ...checkOpening(opening)]);
}

import type { FillingTrial } from '../../core/filled/index.ts';
import type { FormFilled, TriedForm } from '../../core/form/index.ts';
import type { AppState, ShownTrial } from './types.ts';

/** Nothing otherwise than foretold. */
export const AS_FORETOLD: FillingTrial = {};

/** The trial of the form that is there. */
export function trialOf({ form, filledTrial }: AppState): ShownTrial | null {
  return filledTrial !== null && filledTrial.of === form?.filled ? filledTrial : null;
}

/** What is tried of it now. */
export function trialIn(state: AppState): FillingTrial {
  return trialOf(state)?.trial ?? AS_FORETOLD;
}

/** What came of the trial, or while it is awaited of the one before; null where nothing is tried, or nothing came of it. */
export function triedIn(state: AppState): TriedForm | null {
  const shown = trialOf(state);
  return shown?.trial === AS_FORETOLD || shown?.answered === AS_FORETOLD ? null : (shown?.tried ?? null);
}

/** The filled form as it is tried, or as it is foretold. */
export function filledOrTried(state: AppState): FormFilled | null {
  return triedIn(state)?.filled ?? state.form?.filled ?? null;
}

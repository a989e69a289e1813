import type { Result } from '../../core/base/index.ts';
import type { FillingTrial } from '../../core/filled/index.ts';
import type { FormFilled, TriedForm } from '../../core/form/index.ts';
import type { AppStore } from './create-app-store.ts';
import { AS_FORETOLD, trialIn, trialOf } from './filling-trial.ts';

const NONE = { tried: null, answered: null };

/** What is chosen otherwise; undefined takes a choice back. */
type TrialChange = { readonly [Key in keyof FillingTrial]?: FillingTrial[Key] | undefined };

export interface TrialActions {
  /** Of the filled form that is there. */
  changeTrial(change: TrialChange): void;
  dropTrial(): void;
  receiveTrial(of: FormFilled, trial: FillingTrial, found: Result<TriedForm | undefined>): void;
}

export function createTrialActions(store: AppStore): TrialActions {
  return {
    changeTrial(change) {
      const { form, filledView } = store.getState();
      const of = form?.filled;
      if (!of) return;
      const shown = trialOf(store.getState());
      const trial = withoutUsual({ ...shown?.trial, ...change });
      store.setState({
        filledTrial: { ...(shown ?? NONE), of, trial, failure: null },
        // Webs alone do not show what comes of it.
        filledView: filledView.look === 'webs' ? { ...filledView, look: 'distance' } : filledView,
      });
    },
    dropTrial() {
      const shown = trialOf(store.getState());
      store.setState({ filledTrial: shown && { ...shown, trial: AS_FORETOLD, failure: null } });
    },
    receiveTrial(of, trial, found) {
      const state = store.getState();
      if (state.form?.filled !== of || trialIn(state) !== trial) return;
      const tried = found.ok ? (found.value ?? null) : null;
      const failure = found.ok ? null : found.issues;
      store.setState({ filledTrial: { of, trial, tried, answered: trial, failure } });
    },
  };
}

/** Choices that change nothing are none. */
function withoutUsual({ zone, stiffness = 1, without }: TrialChange): FillingTrial {
  if (!zone && stiffness === 1 && without === undefined) return AS_FORETOLD;
  return {
    ...(zone && { zone }),
    ...(stiffness !== 1 && { stiffness }),
    ...(without !== undefined && { without }),
  };
}

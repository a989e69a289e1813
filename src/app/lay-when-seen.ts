import type { UseId } from '../core/laying/index.ts';
import type { PageCalls } from './calls/index.ts';
import { seekLay } from './services/index.ts';
import {
  type Actions,
  type AppStore,
  isFormBehind,
  isLaid,
  layInView,
  trialOfForm,
  usesOfForm,
} from './store/index.ts';

/**
 * While Laying is looked at, every use without a plan gets one: the one looked at first. A maker's own search, and a form on its
 * way, go before.
 */
export function layWhenSeen(
  store: AppStore,
  actions: Actions,
  worker: Pick<PageCalls, 'layPieces' | 'trialPieces'>,
): void {
  let isLooking = false;
  /** Of these pieces the trial's were asked for, once. */
  let askedOf: object | null = null;
  const askForTrial = async () => {
    const state = store.getState();
    const { form, project } = state;
    const isWanted = project && form?.inside && isLaid(project.laying, 'trial');
    if (!isWanted || trialOfForm(state) || askedOf === form.pieces) return;
    askedOf = form.pieces;
    const made = await worker.trialPieces(project);
    if (made.ok) actions.receiveTrialPieces({ of: form.pieces, pieces: made.value });
  };
  const look = () => {
    const state = store.getState();
    if (state.stage !== 'laying' || isFormBehind(state)) return;
    void askForTrial();
    if (isLooking || state.layWork.search) return;
    const use = nextUse(store);
    const seen = use && layInView(state, use);
    if (!use || !seen) return;
    isLooking = true;
    const start = seen.of.stock.placed ?? [];
    void seekLay(store, actions, worker, {
      use,
      seen,
      budget: seen.task.budget,
      isAsked: false,
      best: null,
      start,
    }).finally(() => {
      isLooking = false;
      look();
    });
  };
  store.subscribe((now, before) => {
    const isSame =
      now.stage === before.stage &&
      now.form === before.form &&
      now.project === before.project &&
      now.formQuality === before.formQuality &&
      now.layWork.use === before.layWork.use &&
      now.layWork.trial === before.layWork.trial &&
      (now.layWork.search === null) === (before.layWork.search === null);
    if (!isSame) look();
  });
}

function nextUse(store: AppStore): UseId | undefined {
  const state = store.getState();
  const laid = usesOfForm(state.form).filter((use) => isLaid(state.project?.laying, use));
  const first = [state.layWork.use, ...laid].filter((use) => laid.includes(use));
  return first.find((use) => {
    const seen = layInView(state, use);
    return seen !== null && seen.plan === null && !seen.isSearched;
  });
}

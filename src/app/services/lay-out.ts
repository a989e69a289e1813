import type { KeptPlace, LayPlan, Stock, UseId } from '../../core/laying/index.ts';
import { layTask } from '../../core/laying/index.ts';
import type { PageCalls } from '../calls/index.ts';
import {
  type Actions,
  type AppStore,
  isShorter,
  isUnderWay,
  type LaySearch,
  type LaySeen,
  layInView,
} from '../store/index.ts';

export interface LayingOut {
  /** Goes on from the plan that is there, with a budget four times as large as what was spent. */
  layFurther(use: UseId): void;
  /** Lays all pieces anew but those locked. */
  layRest(use: UseId): void;
  /** The best plan so far stays in view. */
  stopLaying(): void;
  /** The plan with another stock, by a short search; null when nothing can be laid so. Nothing is kept of it. */
  tryStock(use: UseId, change: Partial<Stock>): Promise<LayPlan | null>;
}

const FURTHER = 4;
/** Of the budget of a plan: enough to tell what a change would save. */
const SHORT = 0.5;

type Does = Pick<Actions, 'beginLay' | 'receiveLay' | 'endLay'>;

export function layOut(store: AppStore, actions: Does, worker: Pick<PageCalls, 'layPieces'>): LayingOut {
  return {
    layFurther(use) {
      const seen = layInView(store.getState(), use);
      if (!seen) return;
      const { task, plan } = seen;
      const budget = FURTHER * Math.max(task.budget, plan?.evaluations ?? 0);
      const best = plan && plan.left.length === 0 ? plan : null;
      void seekLay(store, actions, worker, {
        use,
        seen,
        budget,
        isAsked: true,
        best,
        start: plan?.placed ?? [],
      });
    },
    layRest(use) {
      const seen = layInView(store.getState(), use);
      if (!seen) return;
      const held = (seen.of.stock.placed ?? []).filter(({ isHeld }) => isHeld);
      const { budget } = seen.task;
      void seekLay(store, actions, worker, { use, seen, budget, isAsked: true, best: null, start: held });
    },
    stopLaying: actions.endLay,
    async tryStock(use, change) {
      const state = store.getState();
      const seen = layInView(state, use);
      if (!seen || !state.form) return null;
      const { placed: _kept, ...before } = seen.of.stock;
      const stock = { ...before, ...change };
      const budget = Math.round(seen.task.budget * SHORT);
      const task = layTask({ ...state.form, pieces: seen.task.pieces }, use, stock, budget);
      const isWanted = () => layInView(store.getState(), use)?.of === seen.of;
      const found = await worker.layPieces(task, isWanted);
      return found.ok && found.value.left.length === 0 ? found.value : null;
    },
  };
}

interface Seeking {
  readonly use: UseId;
  readonly seen: LaySeen;
  readonly budget: number;
  readonly isAsked: boolean;
  /** Shown until a better one is found. */
  readonly best: LayPlan | null;
  readonly start: readonly KeptPlace[];
}

/** One search, shown while it runs; it ends when another begins, when it is stopped, and when what it lays is no more. */
export async function seekLay(
  store: AppStore,
  actions: Does,
  worker: Pick<PageCalls, 'layPieces'>,
  { use, seen, budget, isAsked, best, start }: Seeking,
): Promise<void> {
  const search: LaySearch = { use, of: seen.of, share: 0, isAsked };
  const { placed: _kept, ...stock } = seen.of.stock;
  const task = { ...seen.task, budget, stock: start.length > 0 ? { ...stock, placed: start } : stock };
  const isWanted = () => {
    const state = store.getState();
    return isUnderWay(state.layWork, search) && layInView(state, use)?.of === seen.of;
  };
  let shown = best;
  // The same plan comes again and again as another object: what is drawn of it stays.
  const better = (plan: LayPlan) => {
    if (!shown || isShorter(plan, shown)) shown = plan;
    return shown;
  };
  actions.beginLay(search);
  const found = await worker.layPieces(task, ({ plan, share }) => {
    const isOn = isWanted();
    if (isOn && plan) actions.receiveLay(search, better(plan), [], share);
    return isOn;
  });
  // A search that was stopped has told its last plan already.
  if (!isUnderWay(store.getState().layWork, search)) return;
  if (isWanted()) {
    if (found.ok) actions.receiveLay(search, better(found.value), found.issues, 1);
    else actions.receiveLay(search, best, found.issues, 1);
  }
  actions.endLay();
}

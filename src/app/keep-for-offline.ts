import { isSite } from './services/index.ts';
import type { Actions, AppStore } from './store/index.ts';

/**
 * Once the first form is there, the whole program is put by, so that it opens without a network. When a newer version has
 * been put by in its place, that is told: this page goes on as it is until it is loaded again.
 */
export function keepForOffline(store: AppStore, actions: Pick<Actions, 'tell'>): void {
  if (!isSite || !('serviceWorker' in navigator)) return;
  tellOfUpdate(store, actions);
  const unsubscribe = store.subscribe(({ formQuality }) => {
    if (formQuality !== 'full') return;
    unsubscribe();
    // Refused in private windows of some browsers: then it works with a network only.
    navigator.serviceWorker.register('./offline-worker.js').catch(() => {});
  });
}

function tellOfUpdate(store: AppStore, actions: Pick<Actions, 'tell'>): void {
  // The first one to serve this page takes nobody's place.
  let hasServed = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    const { updated } = store.getState().words.messages;
    if (hasServed) actions.tell({ tone: 'plain', text: updated, isLasting: true, offersReload: true });
    hasServed = true;
  });
}

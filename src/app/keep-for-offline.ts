import type { AppStore } from './store/index.ts';

/** Once the first form is there, the whole program is put by, so that it opens without a network. */
export function keepForOffline(store: AppStore): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const unsubscribe = store.subscribe(({ formQuality }) => {
    if (formQuality !== 'full') return;
    unsubscribe();
    // Refused in private windows of some browsers: then it works with a network only.
    navigator.serviceWorker.register('./offline-worker.js').catch(() => {});
  });
}

import type { Services } from './services/index.ts';
import type { AppStore } from './store/index.ts';

/**
 * The rest of what the core says is fetched, in the language spoken then, with the whole form, the first that has more to tell than
 * of body and seams; or with the first stage after the first.
 */
export function speakInFull(store: AppStore, { speak }: Pick<Services, 'speak'>): void {
  const wantsAll = () => {
    const { formQuality, stage } = store.getState();
    return formQuality === 'full' || stage !== 'tape';
  };
  if (wantsAll()) {
    void speak();
    return;
  }
  const stop = store.subscribe(() => {
    if (!wantsAll()) return;
    stop();
    void speak();
  });
}

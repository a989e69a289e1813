import type { Services } from './services/index.ts';
import type { AppStore } from './store/index.ts';

/** As soon as there is a body to look at, the rest of what the core says is fetched, in the language spoken then. */
export function speakInFull(store: AppStore, { speak }: Pick<Services, 'speak'>): void {
  const stop = store.subscribe(({ form, language }) => {
    if (!form) return;
    stop();
    void speak(language);
  });
}

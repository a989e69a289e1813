import { createNumbers, LANGUAGE_NAMES, type Language, loadWords, localeOf } from '../language/index.ts';
import type { Actions, AppStore } from '../store/index.ts';

export interface Speaking {
  /** Changes the language; tells when it cannot be fetched. */
  speak(language: Language): Promise<void>;
}

export function speakLanguages(store: AppStore, actions: Pick<Actions, 'speak' | 'tell'>): Speaking {
  return {
    async speak(language) {
      try {
        const { words, numbers } = await loadSpeech(language);
        actions.speak(language, words, numbers);
      } catch {
        const text = store.getState().words.messages.noLanguage(LANGUAGE_NAMES[language]);
        actions.tell({ tone: 'warning', text });
      }
    },
  };
}

/** Words and numbers of a language, as the state holds them. */
export async function loadSpeech(language: Language) {
  const words = await loadWords(language);
  return { language, words, numbers: createNumbers(localeOf(language, navigator.languages)) };
}

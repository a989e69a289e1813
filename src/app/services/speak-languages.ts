import {
  createNumbers,
  createSpeakers,
  LANGUAGE_NAMES,
  type Language,
  loadCatalogue,
  loadFirstCatalogue,
  localeOf,
} from '../../language/index.ts';
import { loadWords } from '../../language/load-words.ts';
import type { Actions, AppStore } from '../store/index.ts';

export interface Speaking {
  /** Changes the language; tells when it cannot be fetched. Without one: all of the language spoken, or last asked for. */
  speak(language?: Language): Promise<void>;
}

export function speakLanguages(store: AppStore, actions: Pick<Actions, 'speak' | 'tell'>): Speaking {
  let wanted: Language | null = null;
  return {
    async speak(language = wanted ?? store.getState().language) {
      wanted = language;
      try {
        const speech = await loadSpeech(language);
        // Another may have been asked for meanwhile.
        if (wanted === language) actions.speak(speech);
      } catch {
        const text = store.getState().words.messages.noLanguage(LANGUAGE_NAMES[language]);
        actions.tell({ tone: 'warning', text });
      }
    },
  };
}

/** Stands for what is fetched with the rest. */
const NOT_YET = '…';

/** Words, speaker and numbers of a language, as the state holds them; `first`: no more of the core than the first screen says. */
export async function loadSpeech(language: Language, part: 'first' | 'all' = 'all') {
  const load = part === 'first' ? loadFirstCatalogue : loadCatalogue;
  const [words, catalogue] = await Promise.all([loadWords(language), load(language)]);
  const locale = localeOf(language, navigator.languages);
  const sayIn = createSpeakers(catalogue, locale, part === 'first' ? { unsaid: NOT_YET } : {});
  return { language, words, say: sayIn.both, sayIn, numbers: createNumbers(locale) };
}

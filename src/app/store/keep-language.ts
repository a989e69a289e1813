import { guessLanguage, LANGUAGES, type Language } from '../../language/index.ts';
import type { AppStore } from './create-app-store.ts';
import type { KeyValueStore } from './keep-project.ts';

const KEY = 'loftseam.language';

/** Keeps the language once one is chosen; one that was only guessed is guessed anew next time. */
export function keepLanguage(store: AppStore, storage: KeyValueStore): void {
  store.subscribe(({ language }, before) => {
    if (language === before.language) return;
    try {
      storage.write(KEY, language);
    } catch {
      // Full or refused: it is told where the project is kept, which matters more.
    }
  });
}

/** The language chosen last time, else the first of `wanted` that the program speaks. */
export function readKeptLanguage(storage: KeyValueStore, wanted: readonly string[]): Language {
  try {
    const kept = storage.read(KEY);
    const known = LANGUAGES.find((language) => language === kept);
    if (known) return known;
  } catch {
    // As if nothing were kept.
  }
  return guessLanguage(wanted);
}

export type { Catalogue, CorePhrases, Entries, Tongue } from './catalogue.ts';
export { createSpeaker, type ReaderUnits, type SpeakerOptions } from './create-speaker.ts';
export { english, type Words } from './english/app.ts';
export { englishCore } from './english/core.ts';
export {
  guessLanguage,
  LANGUAGE_NAMES,
  LANGUAGES,
  type Language,
  loadCatalogue,
  loadWords,
  localeOf,
} from './languages.ts';
export { createNumbers, type Numbers } from './numbers.ts';
export { speakerFor } from './speaker-for.ts';

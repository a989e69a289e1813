export { english, type Words } from './english.ts';
export { guessLanguage, LANGUAGE_NAMES, LANGUAGES, type Language, loadWords, localeOf } from './languages.ts';
export { createNumbers, type Numbers } from './numbers.ts';

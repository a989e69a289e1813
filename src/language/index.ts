export type { Catalogue, CorePhrases, Entries, Tongue } from './catalogue.ts';
export { createSpeaker, createSpeakers, type ReaderUnits, type SpeakerOptions } from './create-speaker.ts';
/** Of the app. @internal */
export type { Words } from './english/app.ts';
export { catalogue as englishCore } from './english/core.ts';
export { first as firstEnglish } from './english/first.ts';
export type { WardrobeWords } from './english/wardrobe.ts';
export { guessLanguage, LANGUAGE_NAMES, LANGUAGES, type Language, localeOf } from './languages.ts';
export { loadCatalogue, loadFirstCatalogue } from './load-catalogue.ts';
export { isInchFraction } from './near-inches.ts';
export { createNumbers, type Numbers } from './numbers.ts';
export { speakerFor } from './speaker-for.ts';
export { type OrderOfWorkOptions, tellOrderOfWork } from './tell-order-of-work.ts';

import { englishCore, speakerFor } from '../src/language/index.ts';

/** Letters pieces in English. */
export const ENGLISH = speakerFor(englishCore);
/** What the core says, in English. */
export const inEnglish = ENGLISH.say;

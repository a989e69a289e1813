import { createSpeaker, englishCore } from '../src/language/index.ts';

/** What the core says, in English. */
export const inEnglish = createSpeaker(englishCore);

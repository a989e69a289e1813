import { englishCore, speakerFor } from '../language/index.ts';

/** Words on paper and in files, lengths in both units. */
export const englishSpeaker = speakerFor(englishCore);

import type { core as english } from '../../english/app/core.ts';

export const core: typeof english = {
  // German nouns keep their capital wherever they stand.
  inSentence: (name) => name,
};

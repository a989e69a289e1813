import type { core as english } from '../../english/app/core.ts';

export const core: typeof english = {
  // The first letter alone: what follows it may be an abbreviation.
  inSentence: (name) => name.charAt(0).toLowerCase() + name.slice(1),
};

import type { core as english } from '../../english/app/core.ts';
import { translate } from '../legacy/core.ts';
import { wordCorrection } from '../legacy/correct.ts';

export const core: typeof english = {
  correction: (correction, nameOf, unit, numbers) => {
    const nameOfAny = (id: string) => {
      const name = nameOf(id);
      return name === id ? translate(id) : name;
    };
    return wordCorrection(correction, nameOfAny, unit, numbers);
  },
  check: (worded) => worded.replace(' to ', ' bis '),
  // German nouns keep their capital wherever they stand.
  within: (name) => name,
};

import type { Catalogue } from '../catalogue.ts';
import { base } from './core/base.ts';
import { translate } from './legacy/core.ts';

/** Everything the core says, in German. */
export const catalogue: Catalogue = {
  tag: 'de',
  // German nouns keep their capital wherever they stand.
  within: (name) => name,
  entries: { ...base, plain: ({ text }) => translate(text) },
};

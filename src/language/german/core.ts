import type { Catalogue } from '../catalogue.ts';
import { base } from './core/base.ts';
import { making } from './core/making.ts';
import { plan } from './core/plan.ts';
import { translate } from './legacy/core.ts';

/** Everything the core says, in German. */
export const germanCore: Catalogue = {
  tag: 'de',
  // German nouns keep their capital wherever they stand.
  within: (name) => name,
  entries: { ...base, ...making, ...plan, plain: ({ text }) => translate(text) },
};

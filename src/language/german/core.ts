import type { Catalogue } from '../catalogue.ts';
import { base } from './core/base.ts';
import { draft } from './core/draft.ts';
import { exported } from './core/export.ts';
import { files } from './core/files.ts';
import { pattern } from './core/pattern.ts';
import { sheet } from './core/sheet.ts';
import { translate } from './legacy/core.ts';

/** Everything the core says, in German. */
export const germanCore: Catalogue = {
  tag: 'de',
  // German nouns keep their capital wherever they stand.
  within: (name) => name,
  entries: {
    ...base,
    ...draft,
    ...exported,
    ...files,
    ...pattern,
    ...sheet,
    plain: ({ text }) => translate(text),
  },
};

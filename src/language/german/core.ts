import type { Catalogue } from '../catalogue.ts';
import { base } from './core/base.ts';
import { body } from './core/body.ts';
import { flatten } from './core/flatten.ts';
import { mesh } from './core/mesh.ts';
import { project } from './core/project.ts';
import { simulate } from './core/simulate.ts';
import { supports } from './core/supports.ts';
import { translate } from './legacy/core.ts';

/** Everything the core says, in German. */
export const germanCore: Catalogue = {
  tag: 'de',
  // German nouns keep their capital wherever they stand.
  within: (name) => name,
  entries: {
    ...base,
    ...mesh,
    ...body,
    ...flatten,
    ...supports,
    ...simulate,
    ...project,
    plain: ({ text }) => translate(text),
  },
};

import type { Catalogue } from '../catalogue.ts';
import { advice } from './core/advice.ts';
import { assembly } from './core/assembly.ts';
import { base } from './core/base.ts';
import { body } from './core/body.ts';
import { flatten } from './core/flatten.ts';
import { mesh } from './core/mesh.ts';
import { project } from './core/project.ts';
import { seams } from './core/seams.ts';
import { zones } from './core/zones.ts';
import { translate } from './legacy/core.ts';

/** Everything the core says, in German. */
export const catalogue: Catalogue = {
  tag: 'de',
  // German nouns keep their capital wherever they stand.
  within: (name) => name,
  entries: {
    ...advice,
    ...assembly,
    ...base,
    ...body,
    ...flatten,
    ...mesh,
    ...project,
    ...seams,
    ...zones,
    plain: ({ text }) => translate(text),
  },
};

import { speakInCore } from '../../core/base/index.ts';
import type { Catalogue } from '../catalogue.ts';
import { createSpeaker } from '../create-speaker.ts';
import { base } from './core/base.ts';
import { body } from './core/body.ts';
import { flatten } from './core/flatten.ts';
import { mesh } from './core/mesh.ts';
import { project } from './core/project.ts';
import { simulate } from './core/simulate.ts';
import { supports } from './core/supports.ts';

/** Everything the core says. */
export const englishCore: Catalogue = {
  tag: 'en',
  within: (name) => name.toLowerCase(),
  entries: {
    ...base,
    ...mesh,
    ...body,
    ...flatten,
    ...supports,
    ...simulate,
    ...project,
    plain: ({ text }) => text,
  },
};

// TRANSITIONAL.
speakInCore(createSpeaker(englishCore));

import { speakInCore } from '../../core/base/index.ts';
import type { Catalogue } from '../catalogue.ts';
import { createSpeaker } from '../create-speaker.ts';
import { base } from './core/base.ts';
import { body } from './core/body.ts';
import { flatten } from './core/flatten.ts';
import { making } from './core/making.ts';
import { mesh } from './core/mesh.ts';
import { pipeline } from './core/pipeline.ts';
import { plan } from './core/plan.ts';
import { project } from './core/project.ts';

/** Everything the core says. */
export const englishCore: Catalogue = {
  tag: 'en',
  within: (name) => name.toLowerCase(),
  entries: {
    ...base,
    ...mesh,
    ...body,
    ...flatten,
    ...project,
    ...making,
    ...pipeline,
    ...plan,
    plain: ({ text }) => text,
  },
};

// TRANSITIONAL.
speakInCore(createSpeaker(englishCore));

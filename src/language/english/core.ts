import { speakInCore } from '../../core/base/index.ts';
import type { Catalogue } from '../catalogue.ts';
import { createSpeaker } from '../create-speaker.ts';
import { base } from './core/base.ts';
import { body } from './core/body.ts';
import { flatten } from './core/flatten.ts';
import { mesh } from './core/mesh.ts';
import { project } from './core/project.ts';

/** Everything the core says. */
export const englishCore: Catalogue = {
  tag: 'en',
  within: (name) => name.toLowerCase(),
  entries: { ...base, ...mesh, ...body, ...flatten, ...project, plain: ({ text }) => text },
};

// TRANSITIONAL.
speakInCore(createSpeaker(englishCore));

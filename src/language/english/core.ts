import { speakInCore } from '../../core/base/index.ts';
import type { Catalogue } from '../catalogue.ts';
import { createSpeaker } from '../create-speaker.ts';
import { base } from './core/base.ts';
import { mesh } from './core/mesh.ts';

/** Everything the core says. */
export const englishCore: Catalogue = {
  tag: 'en',
  within: (name) => name.toLowerCase(),
  entries: { ...base, ...mesh, plain: ({ text }) => text },
};

// TRANSITIONAL.
speakInCore(createSpeaker(englishCore));

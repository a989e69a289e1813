import { speakInCore } from '../../core/base/index.ts';
import type { Catalogue } from '../catalogue.ts';
import { createSpeaker } from '../create-speaker.ts';
import { base } from './core/base.ts';

/** Everything the core says. */
export const catalogue: Catalogue = {
  tag: 'en',
  within: (name) => name.toLowerCase(),
  entries: { ...base, plain: ({ text }) => text },
};

// TRANSITIONAL.
speakInCore(createSpeaker(catalogue));

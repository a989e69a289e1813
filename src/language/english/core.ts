import { speakInCore } from '../../core/base/index.ts';
import type { Catalogue } from '../catalogue.ts';
import { createSpeaker } from '../create-speaker.ts';
import { advice } from './core/advice.ts';
import { assembly } from './core/assembly.ts';
import { base } from './core/base.ts';
import { seams } from './core/seams.ts';
import { zones } from './core/zones.ts';

/** Everything the core says. */
export const englishCore: Catalogue = {
  tag: 'en',
  within: (name) => name.toLowerCase(),
  entries: { ...advice, ...assembly, ...base, ...seams, ...zones, plain: ({ text }) => text },
};

// TRANSITIONAL.
speakInCore(createSpeaker(englishCore));

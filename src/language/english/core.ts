import { speakInCore } from '../../core/base/index.ts';
import type { Catalogue } from '../catalogue.ts';
import { createSpeaker } from '../create-speaker.ts';
import { base } from './core/base.ts';
import { draft } from './core/draft.ts';
import { exported } from './core/export.ts';
import { files } from './core/files.ts';
import { pattern } from './core/pattern.ts';
import { sheet } from './core/sheet.ts';

/** Everything the core says. */
export const englishCore: Catalogue = {
  tag: 'en',
  within: (name) => name.toLowerCase(),
  entries: { ...base, ...draft, ...exported, ...files, ...pattern, ...sheet, plain: ({ text }) => text },
};

// TRANSITIONAL.
speakInCore(createSpeaker(englishCore));

import type { Speaker } from '../core/base/index.ts';
import type { Catalogue } from './catalogue.ts';
import { createSpeaker, type SpeakerOptions } from './create-speaker.ts';

/** Whoever letters pieces in this language: as `createSpeaker`, with a key that differs wherever the words may. */
export function speakerFor(catalogue: Catalogue, options: SpeakerOptions = {}): Speaker {
  const { locale = catalogue.tag, units = 'both' } = options;
  return { key: [catalogue.tag, locale, units].join(' '), say: createSpeaker(catalogue, options) };
}

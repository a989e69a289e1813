import type { Speaker } from '../../core/base/index.ts';
import { loadCatalogue, speakerFor } from '../../language/index.ts';
import type { Voice } from '../calls/index.ts';

const found = new Map<string, Promise<Speaker>>();

/** Whoever letters in that language, its words fetched once. Fails when they cannot be fetched; the next call tries again. */
export function findSpeaker({ language, locale }: Voice): Promise<Speaker> {
  const key = `${language} ${locale}`;
  const known = found.get(key);
  if (known) return known;
  const speaker = loadCatalogue(language).then((catalogue) => speakerFor(catalogue, { locale }));
  found.set(key, speaker);
  speaker.catch(() => found.delete(key));
  return speaker;
}

import { type Phrase, verbatim } from '../base/index.ts';
import { type OpeningId, phrase } from './phrases.ts';

const OPENINGS: readonly OpeningId[] = ['base', 'neck', 'armholeRight', 'armholeLeft'];

/** An opening of the shell by its id. */
export function nameOfOpening(id: string): Phrase {
  const opening = OPENINGS.find((known) => known === id);
  return opening ? phrase(`opening.${opening}`) : verbatim(id);
}

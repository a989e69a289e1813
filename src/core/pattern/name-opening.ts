import { type Phrase, verbatim } from '../base/index.ts';
import { EDGE_WORDS, type EdgeWord, phrase } from './phrases.ts';
import type { PieceEdge } from './types.ts';

const known: readonly string[] = EDGE_WORDS;
const isKnown = (word: string): word is EdgeWord => known.includes(word);

/** The id of an edge that is not a seam, the same for both armholes. */
export function openingOf(id: string): string {
  return id.startsWith('armhole') ? 'armhole' : id;
}

/** A name for two: the right piece's, then the left one's where it differs. */
export function bothOf(own: string, twin: string | undefined): string {
  return twin === undefined || twin === own ? own : `${own}/${twin}`;
}

/** What a person reads on an edge: a seam's letter, the name of an opening. */
export function nameOfEdge({
  letter,
  id,
  twinLetter,
}: Pick<PieceEdge, 'letter' | 'id' | 'twinLetter'>): Phrase {
  if (letter) return verbatim(bothOf(letter, twinLetter));
  const opening = openingOf(id);
  return isKnown(opening) ? phrase(`edge.${opening}`) : verbatim(opening);
}

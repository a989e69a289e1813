import { type Phrase, verbatim } from '../base/index.ts';
import { EDGE_WORDS, type EdgeWord, phrase } from './phrases.ts';
import type { PieceEdge } from './types.ts';

const known: readonly string[] = EDGE_WORDS;
const isKnown = (word: string): word is EdgeWord => known.includes(word);

/** The id of an edge that is not a seam, the same for both armholes. */
export function openingOf(id: string): string {
  return id.startsWith('armhole') ? 'armhole' : id;
}

/** What a person reads on an edge: a seam's letter, the name of an opening. */
export function nameOfEdge({ letter, id }: Pick<PieceEdge, 'letter' | 'id'>): Phrase {
  if (letter) return verbatim(letter);
  const opening = openingOf(id);
  return isKnown(opening) ? phrase(`edge.${opening}`) : verbatim(opening);
}

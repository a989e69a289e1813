import { findTwins, type Piece } from '../pattern/index.ts';

/** What is laid on folded cloth. */
export interface FoldedPieces {
  /** One of each pair of twins, cut through both layers, and all others. */
  readonly laid: readonly Piece[];
  /** The twin cut under a piece, by its id. */
  readonly under: ReadonlyMap<string, Piece>;
}

/**
 * Cloth folded right side out has its right side up above and down below, so a piece laid face up on it gives itself above and its mirror
 * image below. Twins that are alike without being turned over, and pieces without a twin, are cut from the upper layer alone.
 */
export function foldPieces(pieces: readonly Piece[]): FoldedPieces {
  const mirrored = findTwins(pieces).filter(({ kind }) => kind === 'mirrored');
  const under = new Map(mirrored.map(({ right, left }) => [pieces[right].id, pieces[left]]));
  const hidden = new Set(mirrored.map(({ left }) => left));
  return { laid: pieces.filter((_, i) => !hidden.has(i)), under };
}

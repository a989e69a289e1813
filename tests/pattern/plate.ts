import { verbatim } from '../../src/core/base/index.ts';
import { draftPiece, type Piece } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { LABEL } from './synthetic-panels.ts';

/** A plate of card of that size, mm, without allowance, its four edges named in their middles. */
export function plate(width: number, length: number): Piece {
  const corners = [0, 0, width, 0, width, length, 0, length, 0, 0];
  const edges = ['back', 'right', 'front', 'left'].map((id, i) => ({
    kind: 'opening' as const,
    id,
    letter: '',
    points: Float64Array.from(corners.slice(2 * i, 2 * i + 4)),
    marks: [],
    bodyHalf: 'front' as const,
  }));
  const input = {
    id: 'plate',
    name: verbatim('plate'),
    side: 'centre' as const,
    edges,
    levelLines: [],
    material: 'card',
  };
  const drafted = draftPiece(input, LABEL, { allowance: 0 });
  if (!drafted.ok) throw new Error(inEnglish(drafted.issues[0].message));
  return drafted.value;
}

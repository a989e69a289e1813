import { draftPiece, type Piece } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { LABEL, samplePanels } from '../pattern/synthetic-panels.ts';

/** Drafted pieces of made-up panels, without a body behind them. */
export function samplePieces(): Piece[] {
  return samplePanels().map((input) => {
    const piece = draftPiece(input, LABEL);
    if (!piece.ok) throw new Error(inEnglish(piece.issues[0].message));
    return piece.value;
  });
}

export { type ArrangeOptions, arrangePieces } from './arrange-pieces.ts';
export { draftPiece } from './draft-piece.ts';
export { drawPieces } from './draw-pieces.ts';
export { drawTestBars, TEST_BARS_SIZE } from './draw-test-bars.ts';
export { MITRE_LIMIT } from './offset-outline.ts';
export { packOutlines } from './pack-outlines.ts';
export { smoothPiece } from './smooth-piece.ts';
export * from './types.ts';
export { materialInWords } from './word-label.ts';

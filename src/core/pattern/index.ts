export { type ArrangeOptions, arrangePieces } from './arrange-pieces.ts';
export { draftPiece } from './draft-piece.ts';
export { MITRE_LIMIT } from './offset-outline.ts';
export type * from './types.ts';

export { type ArrangeOptions, arrangePieces, DEFAULT_SHEET_WIDTH } from './arrange-pieces.ts';
export { DEFAULT_ALLOWANCE } from './check-piece.ts';
export { draftPiece } from './draft-piece.ts';
export { MITRE_LIMIT } from './offset-outline.ts';
export type * from './types.ts';

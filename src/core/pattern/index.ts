export { type ArrangeOptions, arrangePieces } from './arrange-pieces.ts';
export { ALLOWANCE_LIMITS, kindsWithUsualAllowance, readAllowances } from './check-piece.ts';
export { draftPiece } from './draft-piece.ts';
export { drawPieces } from './draw-pieces.ts';
export { drawTestBars, TEST_BARS_SIZE } from './draw-test-bars.ts';
export { drawTwins, nameBoth } from './draw-twins.ts';
export { findTwins, type TwinPair } from './find-twins.ts';
export { nameOfAllowanceKind } from './name-allowance-kind.ts';
export { materialInShort, materialInWords, sideInShort, sideInWords, titleOfSheet } from './name-material.ts';
export { nameOfEdge } from './name-opening.ts';
export { MITRE_LIMIT } from './offset-outline.ts';
export { packOutlines } from './pack-outlines.ts';
export { findTooLarge, type PackedPage, packPages } from './pack-pages.ts';
export { ROW, type SheetRows } from './packing-rows.ts';
export {
  type DraftOptions,
  GRAIN_TURN,
  INCH_ALLOWANCES,
  NOTCH_SHAPES,
  type NotchShape,
  PATTERN_OPTIONS,
  type PatternOptions,
  WADDING,
} from './pattern-options.ts';
export type { PatternPhrases } from './phrases.ts';
export { smoothPiece } from './smooth-piece.ts';
export type * from './types.ts';
export { ALLOWANCE_KINDS, type AllowanceKind, type RulerUnit, usualAllowance } from './usual-allowances.ts';

export {
  correctionFromBars,
  correctPage,
  type MeasuredBars,
  type PrintCorrection,
} from './correct-print.ts';
export { barsOfCover } from './draw-cover.ts';
export { drawForProjector, PROJECTED_SIDES, type ProjectorOptions } from './draw-for-projector.ts';
export { drawLabels } from './draw-labels.ts';
export { findHomography, type ProjectedSquare } from './find-homography.ts';
export { type CutterOptions, type CutterSheet, layOutForCutter } from './lay-out-for-cutter.ts';
export { findPaper, MATS, PAPERS, type Paper } from './papers.ts';
export type { SheetPhrases } from './phrases.ts';
export { type PagePicture, type PrintPlan, picturePages } from './picture-pages.ts';
export { planTiles, type TileGrid, type TileOptions } from './plan-tiles.ts';
export { type PrintJob, type PrintOptions, printPieces } from './print-pieces.ts';
export { CUTTER_OPTIONS, MAT_SIDE, MEASURED_BAR, PRINT_OPTIONS, PROJECTED_LENGTH } from './sheet-options.ts';
export { type TileDrawingOptions, tileDrawing } from './tile-drawing.ts';
export type { Joint, PrintInfo, Tile, TiledDrawing } from './types.ts';

export { type FittedPath, fitCurves } from './fit-curves.ts';
export { foldText } from './fold-text.ts';
export { makeLayer, makePath, makeRectangle, makeText } from './make-items.ts';
export { boundsOfDrawing, boundsOfItems } from './measure-bounds.ts';
export { cornersOfText, measureText, TEXT_ASCENT, TEXT_DESCENT } from './measure-text.ts';
export { type Placement, pageFromUpright, placeItem, placePoints, translateItem } from './move-items.ts';
export { strokeLetters, strokesOfText } from './stroke-letters.ts';
export type * from './types.ts';

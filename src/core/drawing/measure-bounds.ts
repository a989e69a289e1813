import { type Bounds, boundsOfPoints } from '../math/index.ts';
import { cornersOfText } from './measure-text.ts';
import type { Drawing, DrawingItem } from './types.ts';

/** Bounds of paths (stroke width not counted) and of text boxes as `measureText` estimates them. */
export function boundsOfItems(items: readonly DrawingItem[]): Bounds | null {
  return boundsOfPoints(items.map((item) => (item.kind === 'path' ? item.points : cornersOfText(item))));
}

/** Bounds of everything drawn, which may differ from the sheet's width and height. */
export function boundsOfDrawing(drawing: Drawing): Bounds | null {
  return boundsOfItems(drawing.layers.flatMap((layer) => layer.items));
}

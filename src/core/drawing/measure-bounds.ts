import { cornersOfText } from './measure-text.ts';
import type { Drawing, DrawingItem } from './types.ts';

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Smallest upright rectangle round polylines (n × 2); `null` when there is no point at all. O(n). */
export function boundsOfPoints(lines: readonly Float64Array[]): Bounds | null {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (const points of lines) {
    for (let i = 0; i < points.length; i += 2) {
      minX = Math.min(minX, points[i]);
      maxX = Math.max(maxX, points[i]);
      minY = Math.min(minY, points[i + 1]);
      maxY = Math.max(maxY, points[i + 1]);
    }
  }
  return minX > maxX ? null : { minX, minY, maxX, maxY };
}

/** Bounds of paths (stroke width not counted) and of text boxes as `measureText` estimates them. */
export function boundsOfItems(items: readonly DrawingItem[]): Bounds | null {
  return boundsOfPoints(items.map((item) => (item.kind === 'path' ? item.points : cornersOfText(item))));
}

/** Bounds of everything drawn, which may differ from the sheet's width and height. */
export function boundsOfDrawing(drawing: Drawing): Bounds | null {
  return boundsOfItems(drawing.layers.flatMap((layer) => layer.items));
}

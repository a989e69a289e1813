import type { DrawingItem, DrawingLayer, DrawingPath, DrawingStyle, DrawingText } from './types.ts';

interface PathExtras {
  readonly id?: string;
  readonly closed?: boolean;
  readonly style?: DrawingStyle;
}

type TextExtras = Pick<DrawingText, 'angle' | 'anchor' | 'colour' | 'id'>;

/** A path over a polyline (n × 2 mm, page coordinates). The points are kept, not copied. */
export function makePath(points: Float64Array | readonly number[], extras: PathExtras = {}): DrawingPath {
  const { closed = false, ...rest } = extras;
  const kept = points instanceof Float64Array ? points : Float64Array.from(points);
  return { kind: 'path', points: kept, closed, ...rest };
}

/** An axis-parallel rectangle from its top left corner. mm. */
export function makeRectangle(
  x: number,
  y: number,
  width: number,
  height: number,
  extras: Omit<PathExtras, 'closed'> = {},
): DrawingPath {
  const points = [x, y, x + width, y, x + width, y + height, x, y + height];
  return makePath(points, { ...extras, closed: true });
}

/** One line of text; (x, y) is where its baseline starts, ends or is halved, as `anchor` says. mm. */
export function makeText(
  x: number,
  y: number,
  text: string,
  size: number,
  extras: TextExtras = {},
): DrawingText {
  return { kind: 'text', x, y, text, size, ...extras };
}

export function makeLayer(name: string, items: readonly DrawingItem[]): DrawingLayer {
  return { name, items };
}

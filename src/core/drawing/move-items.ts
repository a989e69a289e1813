import type { DrawingItem } from './types.ts';

/** A copy of the item moved by (dx, dy) mm on the page. */
export function translateItem<T extends DrawingItem>(item: T, dx: number, dy: number): T {
  if (item.kind === 'text') return { ...item, x: item.x + dx, y: item.y + dy };
  const points = Float64Array.from(item.points, (value, i) => value + (i % 2 === 0 ? dx : dy));
  return { ...item, points };
}

/**
 * Points with y up (n × 2) put on the page, where y runs down: the upright point (0, 0) lands on the page
 * point (originX, originY). Angles change sign on the way.
 */
export function pageFromUpright(points: Float64Array, originX: number, originY: number): Float64Array {
  return Float64Array.from(points, (value, i) => (i % 2 === 0 ? originX + value : originY - value));
}

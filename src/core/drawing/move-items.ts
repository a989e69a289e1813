import type { DrawingItem } from './types.ts';

/** Where something goes on a page: turned by `angle` (clockwise as the page is seen) about its origin, then moved by (dx, dy) mm. */
export interface Placement {
  readonly dx: number;
  readonly dy: number;
  readonly angle?: number;
}

/** A copy of the item moved by (dx, dy) mm on the page. */
export function translateItem<T extends DrawingItem>(item: T, dx: number, dy: number): T {
  return placeItem(item, { dx, dy });
}

/** A copy of the item turned and moved on the page. */
export function placeItem<T extends DrawingItem>(item: T, placement: Placement): T {
  const { dx, dy, angle = 0 } = placement;
  if (item.kind === 'path') return { ...item, points: placePoints(item.points, placement) };
  if (angle === 0) return { ...item, x: item.x + dx, y: item.y + dy };
  const [x, y] = placePoints(Float64Array.of(item.x, item.y), placement);
  return { ...item, x, y, angle: (item.angle ?? 0) + angle };
}

/** Page points (n × 2) turned and moved. */
export function placePoints(points: Float64Array, { dx, dy, angle = 0 }: Placement): Float64Array {
  if (angle === 0) return Float64Array.from(points, (value, i) => value + (i % 2 === 0 ? dx : dy));
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const placed = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 2) {
    placed[i] = cos * points[i] - sin * points[i + 1] + dx;
    placed[i + 1] = sin * points[i] + cos * points[i + 1] + dy;
  }
  return placed;
}

/**
 * Points with y up (n × 2) put on the page, where y runs down: the upright point (0, 0) lands on the page
 * point (originX, originY). Angles change sign on the way.
 */
export function pageFromUpright(points: Float64Array, originX: number, originY: number): Float64Array {
  return Float64Array.from(points, (value, i) => (i % 2 === 0 ? originX + value : originY - value));
}

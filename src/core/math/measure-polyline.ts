import { clamp } from './clamp.ts';
import { distanceInPlane } from './distances.ts';

/** Plane polylines as flat arrays, n × 2. Lengths in the unit of the points. */

/** Sum of the segment lengths; `closed` adds the last-to-first segment. O(n). */
export function measurePolyline(points: Float64Array, closed = false): number {
  let length = 0;
  for (let i = 2; i < points.length; i += 2) {
    length += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  }
  const end = points.length;
  if (closed && end >= 4) length += Math.hypot(points[0] - points[end - 2], points[1] - points[end - 1]);
  return length;
}

/** Distance along the polyline from its start to each point (n). O(n). */
export function measureAlong(points: Float64Array): Float64Array {
  const along = new Float64Array(points.length / 2);
  for (let i = 1; i < along.length; i++) along[i] = along[i - 1] + distanceInPlane(points, i - 1, i);
  return along;
}

/** The same points the other way round, n × 2. O(n). */
export function reversePolyline(points: Float64Array): Float64Array {
  const last = points.length - 2;
  return points.map((_, i) => points[last - 2 * (i >> 1) + (i % 2)]);
}

/** Signed area of a closed polygon, positive counter-clockwise with y up (shoelace formula). O(n). */
export function measurePolygonArea(points: Float64Array): number {
  const count = points.length / 2;
  if (count < 3) return 0;
  const x0 = points[0];
  const y0 = points[1];
  let twice = 0;
  for (let i = 1; i + 1 < count; i++) {
    const ax = points[2 * i] - x0;
    const ay = points[2 * i + 1] - y0;
    twice += ax * (points[2 * i + 3] - y0) - ay * (points[2 * i + 2] - x0);
  }
  return twice / 2;
}

/** Even-odd test against a closed polygon; points exactly on the boundary may fall either way. O(n). */
export function isInsidePolygon(points: Float64Array, x: number, y: number): boolean {
  let inside = false;
  const count = points.length / 2;
  for (let i = 0, j = count - 1; i < count; j = i++) {
    const yi = points[2 * i + 1];
    const yj = points[2 * j + 1];
    if (yi > y === yj > y) continue;
    const crossing = points[2 * i] + ((y - yi) / (yj - yi)) * (points[2 * j] - points[2 * i]);
    if (x < crossing) inside = !inside;
  }
  return inside;
}

/** Shortest distance from (x, y) to the polyline. O(n). Infinity for an empty polyline. */
export function measureDistanceToPolyline(
  points: Float64Array,
  closed: boolean,
  x: number,
  y: number,
): number {
  const count = points.length / 2;
  let best = count === 1 ? (points[0] - x) ** 2 + (points[1] - y) ** 2 : Number.POSITIVE_INFINITY;
  for (let i = closed ? 0 : 1, j = closed ? count - 1 : 0; i < count; j = i++) {
    const ax = points[2 * j];
    const ay = points[2 * j + 1];
    const dx = points[2 * i] - ax;
    const dy = points[2 * i + 1] - ay;
    const squared = dx * dx + dy * dy;
    const t = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / squared));
    const [ox, oy] = [ax + t * dx - x, ay + t * dy - y];
    best = Math.min(best, ox * ox + oy * oy);
  }
  return Math.sqrt(best);
}

/**
 * Which share of the segment from (ax, ay) to (bx, by) lies before the place on it nearest to (x, y): 0 to 1, and 0 for a
 * segment without length.
 */
export function shareOfSegment(ax: number, ay: number, bx: number, by: number, x: number, y: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const squared = dx * dx + dy * dy;
  return squared === 0 ? 0 : clamp(((x - ax) * dx + (y - ay) * dy) / squared, 0, 1);
}

/** Distance along the polyline to the place on it nearest to (x, y); `closed` counts the last-to-first segment. O(n). */
export function nearestAlong(points: Float64Array, closed: boolean, x: number, y: number): number {
  const count = points.length / 2;
  let [best, found, along] = [Number.POSITIVE_INFINITY, 0, 0];
  for (let i = 0; i < (closed ? count : count - 1); i++) {
    const j = (i + 1) % count;
    const [ax, ay, bx, by] = [points[2 * i], points[2 * i + 1], points[2 * j], points[2 * j + 1]];
    const t = shareOfSegment(ax, ay, bx, by, x, y);
    const away = Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y);
    if (away < best)
      [best, found] = [away, along + t * Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay))];
    along += distanceInPlane(points, i, j);
  }
  return found;
}

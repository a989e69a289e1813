import { orient2d } from 'robust-predicates';
import { clamp } from './clamp.ts';

/**
 * Twice the signed area of triangle abc with the exactly right sign: positive when counter-clockwise (y up),
 * zero only when exactly collinear.
 * Source: Shewchuk, Adaptive precision floating-point arithmetic, Discrete Comput. Geom. 18 (1997).
 */
export function orientation(ax: number, ay: number, bx: number, by: number, cx: number, cy: number): number {
  // The library counts clockwise as positive in a y-up plane.
  return -orient2d(ax, ay, bx, by, cx, cy);
}

/** Two segments as parameters along each (0..1); null when they do not meet or are parallel. */
export interface SegmentCrossing {
  readonly s: number;
  readonly t: number;
}

/** True when the closed segments ab and cd share at least one point. Exact. */
export function doSegmentsTouch(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): boolean {
  const c = orientation(ax, ay, bx, by, cx, cy);
  const d = orientation(ax, ay, bx, by, dx, dy);
  if ((c > 0 && d > 0) || (c < 0 && d < 0)) return false;
  const a = orientation(cx, cy, dx, dy, ax, ay);
  const b = orientation(cx, cy, dx, dy, bx, by);
  if ((a > 0 && b > 0) || (a < 0 && b < 0)) return false;
  if (c !== 0 || d !== 0 || a !== 0 || b !== 0) return true;
  // All four on one line: the boxes decide.
  return (
    Math.max(ax, bx) >= Math.min(cx, dx) &&
    Math.max(cx, dx) >= Math.min(ax, bx) &&
    Math.max(ay, by) >= Math.min(cy, dy) &&
    Math.max(cy, dy) >= Math.min(ay, by)
  );
}

/**
 * Where segment ab meets segment cd: s along ab and t along cd, both 0..1.
 * Whether they meet is decided exactly; the parameters are rounded. Null when apart or collinear.
 */
export function intersectSegments(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): SegmentCrossing | null {
  if (!doSegmentsTouch(ax, ay, bx, by, cx, cy, dx, dy)) return null;
  const determinant = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
  if (determinant === 0) return null;
  const s = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / determinant;
  const t = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / determinant;
  return { s: clamp(s, 0, 1), t: clamp(t, 0, 1) };
}

/**
 * 1 inside, 0 exactly on the border, −1 outside a simple polygon (n × 2, either direction). O(n), exact.
 * Source: crossing number with exact side tests (Hormann and Agathos, Comput. Geom. 20 (2001), the even-odd rule).
 */
export function locateInPolygon(polygon: ArrayLike<number>, x: number, y: number): -1 | 0 | 1 {
  const n = polygon.length / 2;
  let isInside = false;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const ax = polygon[2 * j];
    const ay = polygon[2 * j + 1];
    const bx = polygon[2 * i];
    const by = polygon[2 * i + 1];
    if (ay === by) {
      if (y === ay && x >= Math.min(ax, bx) && x <= Math.max(ax, bx)) return 0;
      continue;
    }
    if (y < Math.min(ay, by) || y > Math.max(ay, by)) continue;
    const side = ay < by ? orientation(ax, ay, bx, by, x, y) : orientation(bx, by, ax, ay, x, y);
    if (side === 0) return 0;
    // Half-open in y, so that a ray through a corner counts it once.
    if (side > 0 && ay > y !== by > y) isInside = !isInside;
  }
  return isInside ? 1 : -1;
}

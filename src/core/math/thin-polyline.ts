import { clamp } from './clamp.ts';

/**
 * Indices of the fewest points found that keep a polyline (n × 2 mm, closed or open) within `tolerance` mm of all its points;
 * ends, the first point of a closed line and the points of `fixed` always stay. The point farthest from a chord is kept until
 * none is farther than the tolerance (Douglas and Peucker, Algorithms for the reduction of the number of points required to
 * represent a digitized line, The Canadian Cartographer 10, 1973). O(n log n) as a rule.
 */
export function thinPolyline(
  points: Float64Array,
  closed: boolean,
  tolerance: number,
  fixed: ReadonlySet<number> = new Set(),
): number[] {
  const count = points.length / 2;
  if (count < 3) return Array.from({ length: count }, (_, i) => i);
  // A closed line comes back to its first point, here number `count`.
  const last = closed ? count : count - 1;
  const anchors = [0, ...[...fixed].filter((i) => i > 0 && i < last).sort((a, b) => a - b), last];
  if (closed && anchors.length === 2) anchors.splice(1, 0, farthest(points, 0, last).index);
  const kept = new Set(anchors);
  const open = anchors.slice(1).map((to, k): [number, number] => [anchors[k], to]);
  for (let stretch = open.pop(); stretch; stretch = open.pop()) {
    const [from, to] = stretch;
    const { index, distance } = farthest(points, from, to);
    if (!(distance > tolerance)) continue;
    kept.add(index);
    open.push([from, index], [index, to]);
  }
  return [...kept].filter((i) => i < count).sort((a, b) => a - b);
}

/** The point between two others that lies farthest from the segment between these. */
function farthest(points: Float64Array, from: number, to: number): { index: number; distance: number } {
  const end = to % (points.length / 2);
  const [ax, ay] = [points[2 * from], points[2 * from + 1]];
  const [ux, uy] = [points[2 * end] - ax, points[2 * end + 1] - ay];
  const square = ux * ux + uy * uy;
  let [index, distance] = [from, -1];
  for (let i = from + 1; i < to; i++) {
    const [x, y] = [points[2 * i] - ax, points[2 * i + 1] - ay];
    const t = square > 0 ? clamp((x * ux + y * uy) / square, 0, 1) : 0;
    const off = Math.hypot(x - t * ux, y - t * uy);
    if (off > distance) [index, distance] = [i, off];
  }
  return { index, distance };
}

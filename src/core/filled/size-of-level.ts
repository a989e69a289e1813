import type { SectionSize } from '../inside/index.ts';
import { boundsOfPolyline, convexHull, measurePolyline } from '../math/index.ts';

/**
 * Seen from above: width and depth of a loop of points, and its girth as a taut tape takes it, all `outside` mm further out
 * (a curve moved out by d is 2πd longer: Steiner). O(n log n).
 */
export function sizeOfLevel(positions: Float64Array, loop: Uint32Array, outside: number): SectionSize {
  const plan = Float64Array.from(
    { length: 2 * loop.length },
    (_, i) => positions[3 * loop[i >> 1] + (i % 2)],
  );
  const hull = convexHull(plan);
  const taut = Float64Array.from({ length: 2 * hull.length }, (_, i) => plan[2 * hull[i >> 1] + (i % 2)]);
  const box = boundsOfPolyline(plan);
  return {
    width: box.maxX - box.minX + 2 * outside,
    depth: box.maxY - box.minY + 2 * outside,
    girth: measurePolyline(taut, true) + 2 * Math.PI * outside,
  };
}

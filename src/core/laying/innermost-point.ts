import { boundsOfPolyline, locateInPolygon, measureDistanceToPolyline } from '../math/index.ts';

const STEPS = 24;

/** The point of a grid over a closed outline (n × 2) that lies deepest inside it and outside of its holes, and how deep. O(n), 600 points tried. */
export function innermostPoint(
  outline: Float64Array,
  holes: readonly Float64Array[] = [],
): { x: number; y: number; radius: number } {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(outline);
  let best = { x: (minX + maxX) / 2, y: (minY + maxY) / 2, radius: 0 };
  for (let i = 1; i < STEPS; i++) {
    // From one point of a column to the next no distance grows by more than the way between them.
    let most = Number.POSITIVE_INFINITY;
    for (let j = 1; j < STEPS; j++) {
      most += (maxY - minY) / STEPS;
      if (most <= best.radius) continue;
      const [x, y] = [minX + ((maxX - minX) * i) / STEPS, minY + ((maxY - minY) * j) / STEPS];
      if (locateInPolygon(outline, x, y) <= 0) continue;
      if (holes.some((hole) => locateInPolygon(hole, x, y) >= 0)) continue;
      const radius = Math.min(
        ...[outline, ...holes].map((line) => measureDistanceToPolyline(line, true, x, y)),
      );
      most = radius;
      if (radius > best.radius + 1e-9) best = { x, y, radius };
    }
  }
  return best;
}

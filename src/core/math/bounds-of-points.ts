/** An upright rectangle, in the unit of the points. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Smallest upright rectangle round one polyline (n × 2, n > 0). O(n). */
export function boundsOfPolyline(points: ArrayLike<number>): Bounds {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < points.length; i += 2) {
    minX = Math.min(minX, points[i]);
    maxX = Math.max(maxX, points[i]);
    minY = Math.min(minY, points[i + 1]);
    maxY = Math.max(maxY, points[i + 1]);
  }
  return { minX, minY, maxX, maxY };
}

/** The same round several polylines; `null` when there is no point at all. O(n). */
export function boundsOfPoints(lines: readonly Float64Array[]): Bounds | null {
  let { minX, minY, maxX, maxY } = boundsOfPolyline([]);
  for (const points of lines) {
    const own = boundsOfPolyline(points);
    minX = Math.min(minX, own.minX);
    minY = Math.min(minY, own.minY);
    maxX = Math.max(maxX, own.maxX);
    maxY = Math.max(maxY, own.maxY);
  }
  return minX > maxX ? null : { minX, minY, maxX, maxY };
}

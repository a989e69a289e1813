/** Straight distances by `Math.hypot`, in the unit of the points. */

/** Between two points in space. */
export function distance(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Between points number `i` and `j` of a flat array n × 2. */
export function distanceInPlane(points: ArrayLike<number>, i: number, j: number): number {
  return Math.hypot(points[2 * j] - points[2 * i], points[2 * j + 1] - points[2 * i + 1]);
}

/** Between points number `i` and `j` of a flat array n × 3. */
export function distanceInSpace(points: ArrayLike<number>, i: number, j: number): number {
  return Math.hypot(
    points[3 * j] - points[3 * i],
    points[3 * j + 1] - points[3 * i + 1],
    points[3 * j + 2] - points[3 * i + 2],
  );
}

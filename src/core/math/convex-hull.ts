/**
 * Convex hull of 2D points, counter-clockwise, as indices into `points` (n × 2).
 * Source: Andrew's monotone chain, Inf. Proc. Letters 9 (1979). O(n log n).
 */
export function convexHull(points: Float64Array): Int32Array {
  const n = points.length / 2;
  const order = Int32Array.from({ length: n }, (_, i) => i);
  order.sort((a, b) => points[2 * a] - points[2 * b] || points[2 * a + 1] - points[2 * b + 1]);
  if (n < 3) return order;
  const hull = new Int32Array(2 * n);
  let size = 0;
  const turnsLeft = (a: number, b: number, c: number): boolean =>
    (points[2 * b] - points[2 * a]) * (points[2 * c + 1] - points[2 * a + 1]) -
      (points[2 * b + 1] - points[2 * a + 1]) * (points[2 * c] - points[2 * a]) >
    0;
  for (let i = 0; i < n; i++) {
    while (size >= 2 && !turnsLeft(hull[size - 2], hull[size - 1], order[i])) size--;
    hull[size++] = order[i];
  }
  const lowerSize = size + 1;
  for (let i = n - 2; i >= 0; i--) {
    while (size >= lowerSize && !turnsLeft(hull[size - 2], hull[size - 1], order[i])) size--;
    hull[size++] = order[i];
  }
  return hull.slice(0, size - 1);
}

/** How far along the outline the nearest place is looked for, in points either way. */
const REACH = 9;

/**
 * Signed distance (mm, positive outside) of every point of `ring` from the closed outline `target`, both n × 2 with the
 * same number of points, counter-clockwise, point i of one being the same cloth as about point i of the other. O(n).
 */
export function measureDeviations(ring: Float64Array, target: Float64Array, out: Float64Array): void {
  const count = target.length / 2;
  const reach = Math.min(REACH, count >> 1);
  for (let i = 0; i < count; i++) {
    const x = ring[2 * i];
    const y = ring[2 * i + 1];
    let best = Number.POSITIVE_INFINITY;
    let sign = 1;
    for (let k = -reach; k < reach; k++) {
      const a = 2 * ((i + k + count) % count);
      const b = 2 * ((i + k + 1 + count) % count);
      const dx = target[b] - target[a];
      const dy = target[b + 1] - target[a + 1];
      const px = x - target[a];
      const py = y - target[a + 1];
      const t = Math.min(1, Math.max(0, (px * dx + py * dy) / (dx * dx + dy * dy)));
      const ex = px - t * dx;
      const ey = py - t * dy;
      const squared = ex * ex + ey * ey;
      if (squared < best) {
        best = squared;
        sign = dx * py - dy * px > 0 ? -1 : 1;
      }
    }
    out[i] = sign * Math.sqrt(best);
  }
}

/**
 * The outline a tape would take, with the outline's own number of points: those in hollows lie on the bridge between the
 * last points before and after, spread evenly. `outline`: n × 2, closed, counter-clockwise. O(n log n).
 */
export function bridgeHollows(outline: Float64Array): Float64Array {
  const n = outline.length / 2;
  const onHull = hullIndices(outline);
  const bridged = new Float64Array(2 * n);
  for (let k = 0; k < onHull.length; k++) {
    const a = onHull[k];
    const b = k + 1 < onHull.length ? onHull[k + 1] : onHull[0] + n;
    const c = b % n;
    for (let i = a; i < b; i++) {
      const t = (i - a) / (b - a);
      const j = 2 * (i % n);
      bridged[j] = outline[2 * a] + t * (outline[2 * c] - outline[2 * a]);
      bridged[j + 1] = outline[2 * a + 1] + t * (outline[2 * c + 1] - outline[2 * a + 1]);
    }
  }
  return bridged;
}

/** Indices of the convex hull's corners, rising. Andrew's monotone chain (Inf. Proc. Letters 9, 1979). */
function hullIndices(points: Float64Array): number[] {
  const order = Array.from({ length: points.length / 2 }, (_, i) => i).sort(
    (a, b) => points[2 * a] - points[2 * b] || points[2 * a + 1] - points[2 * b + 1],
  );
  const turn = (a: number, b: number, c: number): number =>
    (points[2 * b] - points[2 * a]) * (points[2 * c + 1] - points[2 * a + 1]) -
    (points[2 * b + 1] - points[2 * a + 1]) * (points[2 * c] - points[2 * a]);
  const chain = (indices: readonly number[]): number[] => {
    const kept: number[] = [];
    for (const i of indices) {
      while (kept.length > 1 && turn(kept[kept.length - 2], kept[kept.length - 1], i) <= 0) kept.pop();
      kept.push(i);
    }
    return kept;
  };
  const hull = new Set([...chain(order), ...chain(order.reverse())]);
  return [...hull].sort((a, b) => a - b);
}

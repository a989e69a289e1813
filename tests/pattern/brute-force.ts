/** Slow, plain geometry for judging results; shares no code with what it judges. */

export function distanceToSegment(
  px: number,
  py: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): { distance: number; t: number } {
  const squared = (bx - ax) ** 2 + (by - ay) ** 2;
  const t =
    squared === 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / squared));
  return { distance: Math.sqrt((px - ax - t * (bx - ax)) ** 2 + (py - ay - t * (by - ay)) ** 2), t };
}

export function distanceTo(points: Float64Array, closed: boolean, px: number, py: number): number {
  let best = Number.POSITIVE_INFINITY;
  const n = points.length / 2;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const j = (i + 1) % n;
    const { distance } = distanceToSegment(
      px,
      py,
      points[2 * i],
      points[2 * i + 1],
      points[2 * j],
      points[2 * j + 1],
    );
    if (distance < best) best = distance;
  }
  return best;
}

/** Winding number by summed angles: nothing in common with an even-odd ray. */
export function isInside(points: Float64Array, px: number, py: number): boolean {
  let sum = 0;
  const n = points.length / 2;
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    const [ax, ay] = [points[2 * i] - px, points[2 * i + 1] - py];
    const [bx, by] = [points[2 * j] - px, points[2 * j + 1] - py];
    sum += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
  return Math.abs(sum) > Math.PI;
}

/** Points every `step` mm along a polyline, vertices included. */
export function sample(points: Float64Array, closed: boolean, step: number): [number, number][] {
  const samples: [number, number][] = [];
  const n = points.length / 2;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const j = (i + 1) % n;
    const dx = points[2 * j] - points[2 * i];
    const dy = points[2 * j + 1] - points[2 * i + 1];
    const count = Math.max(1, Math.ceil(Math.sqrt(dx * dx + dy * dy) / step));
    for (let k = 0; k < count; k++)
      samples.push([points[2 * i] + (dx * k) / count, points[2 * i + 1] + (dy * k) / count]);
  }
  if (!closed) samples.push([points[2 * n - 2], points[2 * n - 1]]);
  return samples;
}

/** Length of a polyline, summed segment by segment. */
export function lengthOf(points: Float64Array, closed = false): number {
  let length = 0;
  const n = points.length / 2;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const j = (i + 1) % n;
    length += Math.sqrt((points[2 * j] - points[2 * i]) ** 2 + (points[2 * j + 1] - points[2 * i + 1]) ** 2);
  }
  return length;
}

/** Whether two convex quadrilaterals (4 × 2) overlap, by separating axes. */
export function doQuadsOverlap(a: Float64Array, b: Float64Array): boolean {
  for (const quad of [a, b]) {
    for (let i = 0; i < 4; i++) {
      const j = (i + 1) % 4;
      const nx = quad[2 * j + 1] - quad[2 * i + 1];
      const ny = quad[2 * i] - quad[2 * j];
      const spread = (other: Float64Array): number[] =>
        [0, 1, 2, 3].map((k) => other[2 * k] * nx + other[2 * k + 1] * ny);
      const [pa, pb] = [spread(a), spread(b)];
      if (Math.max(...pa) <= Math.min(...pb) || Math.max(...pb) <= Math.min(...pa)) return false;
    }
  }
  return true;
}

/** Small seeded generator (mulberry32, public domain, Tommy Ettinger). */
export function createRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

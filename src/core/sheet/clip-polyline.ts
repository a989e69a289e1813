/** An upright rectangle on a drawing, mm. */
export interface Rectangle {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

const WHOLE = [0, 1] as const;

/**
 * The parts of a polyline (n × 2; a closed one returns to its start) inside a rectangle, borders included. Segments are
 * clipped by parameter (Liang and Barsky, ACM Transactions on Graphics 3, 1984), points inside are kept bit for bit. A
 * closed line that lies wholly inside comes back as one part that repeats its first point.
 */
export function clipPolyline(points: Float64Array, isClosed: boolean, box: Rectangle): Float64Array[] {
  const parts: Float64Array[] = [];
  let current: number[] = [];
  const finish = (): void => {
    if (current.length >= 4) parts.push(Float64Array.from(current));
    current = [];
  };
  const count = points.length / 2;
  const segments = isClosed ? count : count - 1;
  for (let i = 0; i < segments; i++) {
    const [ax, ay] = [points[2 * i], points[2 * i + 1]];
    const j = (i + 1) % count;
    const [bx, by] = [points[2 * j], points[2 * j + 1]];
    const span = clipSegment(ax, ay, bx, by, box);
    if (!span) {
      finish();
      continue;
    }
    const [t0, t1] = span;
    if (t0 > 0 || current.length === 0) {
      finish();
      current.push(...(t0 === 0 ? [ax, ay] : [ax + t0 * (bx - ax), ay + t0 * (by - ay)]));
    }
    current.push(...(t1 === 1 ? [bx, by] : [ax + t1 * (bx - ax), ay + t1 * (by - ay)]));
    if (t1 < 1) finish();
  }
  finish();
  return isClosed ? joinEnds(parts) : parts;
}

/** Parameters at which the segment enters and leaves; null when it stays outside or only touches in a point. */
function clipSegment(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  { minX, minY, maxX, maxY }: Rectangle,
): readonly [number, number] | null {
  // Most segments are wholly inside, or wholly beyond one side.
  if ((ax < minX && bx < minX) || (ax > maxX && bx > maxX)) return null;
  if ((ay < minY && by < minY) || (ay > maxY && by > maxY)) return null;
  const isInside =
    Math.min(ax, bx) >= minX &&
    Math.max(ax, bx) <= maxX &&
    Math.min(ay, by) >= minY &&
    Math.max(ay, by) <= maxY;
  if (isInside) return WHOLE;
  let t0 = 0;
  let t1 = 1;
  const sides = [
    [ax - bx, ax - minX],
    [bx - ax, maxX - ax],
    [ay - by, ay - minY],
    [by - ay, maxY - ay],
  ];
  for (const [p, q] of sides) {
    if (p === 0 && q < 0) return null;
    if (p < 0) t0 = Math.max(t0, q / p);
    if (p > 0) t1 = Math.min(t1, q / p);
  }
  return t0 < t1 ? [t0, t1] : null;
}

/** A closed line cut apart only at its own starting point is one part there. */
function joinEnds(parts: Float64Array[]): Float64Array[] {
  if (parts.length < 2) return parts;
  const first = parts[0];
  const last = parts[parts.length - 1];
  const end = last.length;
  if (last[end - 2] !== first[0] || last[end - 1] !== first[1]) return parts;
  return [Float64Array.of(...last, ...first.subarray(2)), ...parts.slice(1, -1)];
}

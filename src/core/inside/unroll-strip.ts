/** A strip of cloth laid flat: both edges, n × 2, from the bottom up, the left one first. */
export interface FlatStrip {
  readonly left: Float64Array;
  readonly right: Float64Array;
}

/**
 * Lays a ladder of n rungs flat, triangle by triangle, from the exact lengths of its rails and rungs (mm): `left[k]` and
 * `right[k]` are the rails' lengths from rung k to k + 1, `diagonal[k]` the length from the right end of rung k to the
 * left end of rung k + 1. Every given length is kept to rounding, so partners agree by construction. A triangle that
 * cannot be closed is laid straight. Turned at the end so that the strip's middle line is upright. O(n).
 */
export function unrollStrip(
  rungs: ArrayLike<number>,
  left: ArrayLike<number>,
  right: ArrayLike<number>,
  diagonal: ArrayLike<number>,
): FlatStrip {
  const n = rungs.length;
  const l = new Float64Array(2 * n);
  const r = new Float64Array(2 * n);
  r[0] = rungs[0];
  for (let k = 0; k + 1 < n; k++) {
    const [a, b] = [2 * k, 2 * k + 2];
    l.set(closeTriangle(r[a], r[a + 1], l[a], l[a + 1], diagonal[k], left[k]), b);
    r.set(closeTriangle(r[a], r[a + 1], l[b], l[b + 1], right[k], rungs[k + 1]), b);
  }
  const end = 2 * n - 2;
  const up = Math.atan2(l[end + 1] + r[end + 1] - l[1] - r[1], l[end] + r[end] - l[0] - r[0]);
  return { left: turn(l, Math.PI / 2 - up), right: turn(r, Math.PI / 2 - up) };
}

/** The point at distance `fromP` from p and `fromQ` from q, on the right hand of the way from p to q. */
function closeTriangle(
  px: number,
  py: number,
  qx: number,
  qy: number,
  fromP: number,
  fromQ: number,
): [number, number] {
  const [dx, dy] = [qx - px, qy - py];
  const d = Math.hypot(dx, dy);
  const x = (fromP * fromP - fromQ * fromQ + d * d) / (2 * d);
  const y = Math.sqrt(Math.max(0, fromP * fromP - x * x));
  return [px + (x * dx + y * dy) / d, py + (x * dy - y * dx) / d];
}

function turn(points: Float64Array, angle: number): Float64Array {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return points.map((value, i) =>
    i % 2 === 0 ? cos * value - sin * points[i + 1] : sin * points[i - 1] + cos * value,
  );
}

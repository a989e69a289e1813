import { distanceInPlane } from '../../../core/math/index.ts';

/** Shares of a line's length where its letter may stand, the best first. */
const SHARES = [0.5, 0.38, 0.62, 0.26, 0.74, 0.14, 0.86];

/**
 * Where the letters of a piece's lines (each n × 2 mm, the piece on the left of its way) stand: inset from the line, at its
 * middle or as near to it as it comes no closer than `apart` to the letters before it; where all places are too close, the
 * farthest from them. O(lines² · places).
 */
export function placeBadges(
  lines: readonly Float64Array[],
  inset: number,
  apart: number,
): readonly (readonly [number, number])[] {
  const placed: (readonly [number, number])[] = [];
  for (const points of lines) {
    let best: readonly [number, number] = [points[0] ?? 0, points[1] ?? 0];
    let room = -1;
    for (const share of SHARES) {
      const [x, y] = insetPoint(points, share, inset);
      const nearest = Math.min(
        Number.POSITIVE_INFINITY,
        ...placed.map(([px, py]) => Math.hypot(px - x, py - y)),
      );
      if (nearest > room) [best, room] = [[x, y], nearest];
      if (room >= apart) break;
    }
    placed.push(best);
  }
  return placed;
}

/** The point at a share of a line's length, moved to its left. */
function insetPoint(points: Float64Array, share: number, inset: number): [number, number] {
  const lengths = Array.from({ length: points.length / 2 - 1 }, (_, i) => distanceInPlane(points, i, i + 1));
  let left = share * lengths.reduce((sum, length) => sum + length, 0);
  let k = 0;
  while (k + 1 < lengths.length && left > lengths[k]) left -= lengths[k++];
  const [ax, ay, bx, by] = points.subarray(2 * k, 2 * k + 4);
  const length = lengths[k] || 1;
  const t = left / length;
  return [
    ax + t * (bx - ax) - (inset * (by - ay)) / length,
    ay + t * (by - ay) + (inset * (bx - ax)) / length,
  ];
}

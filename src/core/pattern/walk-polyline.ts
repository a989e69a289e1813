/** A place on a polyline with the unit direction of travel there. mm, y up. */
export interface Station {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * The place `distance` mm from the start; straight on past either end. Its direction is that of the chord from
 * `reach` before to `reach` after it, so that lettering does not lean on one short segment. O(n).
 */
export function stationAlong(
  points: Float64Array,
  along: Float64Array,
  distance: number,
  reach: number,
): Station {
  const here = placeAt(points, along, distance);
  const back = placeAt(points, along, distance - reach);
  const ahead = placeAt(points, along, distance + reach);
  const length = Math.hypot(ahead.x - back.x, ahead.y - back.y);
  return { ...here, dx: (ahead.x - back.x) / length, dy: (ahead.y - back.y) / length };
}

function placeAt(points: Float64Array, along: Float64Array, distance: number): { x: number; y: number } {
  let i = 1;
  while (i < along.length - 1 && along[i] < distance) i++;
  while (i > 1 && along[i] === along[i - 1]) i--;
  const step = along[i] - along[i - 1];
  const t = step === 0 ? 0 : (distance - along[i - 1]) / step;
  return {
    x: points[2 * i - 2] + t * (points[2 * i] - points[2 * i - 2]),
    y: points[2 * i - 1] + t * (points[2 * i + 1] - points[2 * i - 1]),
  };
}

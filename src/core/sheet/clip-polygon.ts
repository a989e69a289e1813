import { EndType, FillRule, inflatePathsD, intersectD, JoinType, type PathD } from 'clipper2-ts';
import type { Rectangle } from './clip-polyline.ts';

/** Decimals kept by the polygon library: 0.0001 mm. */
const DECIMALS = 4;
/** A sharp tip moved by half a kerf may stick out this many times as far. */
const MITRE_LIMIT = 4;

/** The parts of a simple polygon (n × 2) inside a rectangle, each closed along the border. */
export function clipPolygon(points: Float64Array, { minX, minY, maxX, maxY }: Rectangle): Float64Array[] {
  const frame = [minX, minY, maxX, minY, maxX, maxY, minX, maxY];
  const parts = intersectD([pathOf(points)], [pathOf(frame)], FillRule.NonZero, DECIMALS);
  return parts.map(pointsOf);
}

/** The polygon grown (or, with a negative distance, shrunk) on all sides, corners kept. The largest part alone. */
export function offsetPolygon(points: Float64Array, distance: number): Float64Array {
  if (distance === 0) return points;
  const path = pathOf(points);
  const grown = inflatePathsD([path], distance, JoinType.Miter, EndType.Polygon, MITRE_LIMIT, DECIMALS);
  const parts = grown.map(pointsOf).sort((a, b) => b.length - a.length);
  return parts[0] ?? new Float64Array(0);
}

function pathOf(points: ArrayLike<number>): PathD {
  return Array.from({ length: points.length / 2 }, (_, i) => ({ x: points[2 * i], y: points[2 * i + 1] }));
}

function pointsOf(path: PathD): Float64Array {
  return Float64Array.from(path.flatMap(({ x, y }) => [x, y]));
}

import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import {
  boundsOfPolyline,
  cross,
  dot,
  measurePolygonArea,
  normalise,
  reversePolyline,
  scale,
  subtract,
} from '../math/index.ts';
import type { InsideForm } from './types.ts';

/** Less board than this beside a hole breaks, mm. Ours. */
export const BOARD_BESIDE_HOLE = 6;

export type OpeningId = InsideForm['openings'][number]['id'];

/** An opening of the shell laid into its own plane. mm. */
export interface PlateOutline {
  readonly id: OpeningId;
  /** The shell's edge, closed, counter-clockwise, n × 2. */
  readonly edge: Float64Array;
  /** By how much the sewn edge is longer, mm. */
  readonly excess: number;
  /**
   * At every point the lean of the shell's wall behind the edge, radians from square to the plate: negative where the shell
   * narrows inwards, up to π/2 and more where it goes on in the plate's plane.
   */
  readonly lean: Float64Array;
  /** Base and neck are seen from above, the front at the top; armholes from outside, up at the top. */
  readonly flatten: (x: number, y: number, z: number) => [number, number];
}

/** Lays an opening's edge into its mean plane (normal of its area; Newell's method). */
export function outlinePlate(form: InsideForm, id: OpeningId): PlateOutline | null {
  const opening = form.openings.find((one) => one.id === id);
  if (!opening || opening.points.length < 9) return null;
  const { points } = opening;
  const isFlat = id === 'base' || id === 'neck';
  const laid = isFlat
    ? layRing(points, [0, 0, 1], [0, 1, 0], false)
    : layRing(points, [id === 'armholeRight' ? 1 : -1, 0, 0], [0, 0, 1], true);
  // Base plates are seen from inside, all others from outside.
  const inwards = laid.normal.map((x) => (id === 'base' ? x : -x));
  return {
    id,
    edge: laid.edge,
    excess: opening.excess,
    flatten: laid.flatten,
    lean: leanOfWall(opening, laid, inwards),
  };
}

/** Parallel to the laid edge. */
function leanOfWall(
  { points, into }: InsideForm['openings'][number],
  { edge, isReversed, flatten }: ReturnType<typeof layRing>,
  inwards: readonly number[],
): Float64Array {
  const count = edge.length / 2;
  return Float64Array.from({ length: count }, (_, i) => {
    const k = 3 * (isReversed ? count - 1 - i : i);
    const [ax, ay] = flatten(points[k], points[k + 1], points[k + 2]);
    const [bx, by] = flatten(points[k] + into[k], points[k + 1] + into[k + 1], points[k + 2] + into[k + 2]);
    const [before, after] = [2 * ((i + count - 1) % count), 2 * ((i + 1) % count)];
    const [tx, ty] = [edge[after] - edge[before], edge[after + 1] - edge[before + 1]];
    // Outwards is on the right hand of a counter-clockwise edge.
    const outwards = ((bx - ax) * ty - (by - ay) * tx) / Math.hypot(tx, ty);
    const depth = dot(into.subarray(k, k + 3), inwards);
    return Math.atan2(outwards, depth);
  });
}

/**
 * Lays a closed ring (n × 3) into its mean plane, seen against its normal on the side of `facing`, with `up` upwards.
 * From its own middle, or with x as it is.
 */
export function layRing(
  points: Float64Array,
  facing: readonly number[],
  up: readonly number[],
  isFromMiddle: boolean,
): {
  /** n × 2, counter-clockwise. */
  readonly edge: Float64Array;
  /** True when the edge runs the other way than the points. */
  readonly isReversed: boolean;
  /** Unit, on the side of `facing`. */
  readonly normal: readonly number[];
  readonly flatten: PlateOutline['flatten'];
} {
  const count = points.length / 3;
  const middle = [0, 0, 0];
  const area = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    const [a, b] = [3 * i, 3 * ((i + 1) % count)];
    for (let c = 0; c < 3; c++) {
      middle[c] += points[a + c] / count;
      const [d, e] = [(c + 1) % 3, (c + 2) % 3];
      area[c] += (points[a + d] - points[b + d]) * (points[a + e] + points[b + e]) * 0.5;
    }
  }
  const n = scale(normalise(area), dot(area, facing) < 0 ? -1 : 1);
  const v = normalise(subtract(up, scale(n, dot(up, n))));
  const u = cross(v, n);
  const origin = isFromMiddle ? middle : [0, middle[1], middle[2]];
  const along = (axis: readonly number[], x: number, y: number, z: number): number =>
    axis[0] * (x - origin[0]) + axis[1] * (y - origin[1]) + axis[2] * (z - origin[2]);
  const flatten = (x: number, y: number, z: number): [number, number] => [
    along(u, x, y, z),
    along(v, x, y, z),
  ];
  const edge: number[] = [];
  for (let i = 0; i < points.length; i += 3) edge.push(...flatten(points[i], points[i + 1], points[i + 2]));
  const ring = Float64Array.from(edge);
  const isReversed = measurePolygonArea(ring) < 0;
  return { edge: isReversed ? reversePolyline(ring) : ring, isReversed, normal: n, flatten };
}

/**
 * The ring moved inwards (n × 2, counter-clockwise) by `distance` mm; the largest part where it falls apart, null where
 * nothing is left.
 */
export function insetRing(ring: Float64Array, distance: number): Float64Array | null {
  const path = Array.from({ length: ring.length / 2 }, (_, i) => ({ x: ring[2 * i], y: ring[2 * i + 1] }));
  const parts = inflatePathsD([path], -distance, JoinType.Miter, EndType.Polygon, 3, 4);
  const rings = parts.map((part) => Float64Array.from(part.flatMap(({ x, y }) => [x, y])));
  if (rings.length === 0) return null;
  return dropNearPoints(
    rings.reduce((best, one) => (measurePolygonArea(one) > measurePolygonArea(best) ? one : best)),
  );
}

/** The offset rounds to 1e-4 mm: of points so near to each other the outline would seem to turn back on itself. */
const NEAR = 0.001;

function dropNearPoints(ring: Float64Array): Float64Array {
  const kept: number[] = [];
  const n = ring.length / 2;
  for (let i = 0; i < n; i++) {
    const before = 2 * ((i + n - 1) % n);
    const isNear = Math.hypot(ring[2 * i] - ring[before], ring[2 * i + 1] - ring[before + 1]) < NEAR;
    if (!isNear) kept.push(ring[2 * i], ring[2 * i + 1]);
  }
  return Float64Array.from(kept);
}

/** The largest inset that leaves something of the ring, mm: bisection to 0.01 mm. */
export function largestInset(ring: Float64Array): number {
  const { minX, maxX } = boundsOfPolyline(ring);
  let [low, high] = [0, 0.5 * (maxX - minX) + 1];
  while (high - low > 0.01) {
    const middle = 0.5 * (low + high);
    if (insetRing(ring, middle)) low = middle;
    else high = middle;
  }
  return low;
}

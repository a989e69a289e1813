import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { measurePolygonArea } from '../math/index.ts';
import type { InsideForm } from './types.ts';

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
    const depth = into[k] * inwards[0] + into[k + 1] * inwards[1] + into[k + 2] * inwards[2];
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
  const size = Math.hypot(area[0], area[1], area[2]);
  const towards = area[0] * facing[0] + area[1] * facing[1] + area[2] * facing[2];
  const n = area.map((value) => (value / size) * (towards < 0 ? -1 : 1));
  const lean = up[0] * n[0] + up[1] * n[1] + up[2] * n[2];
  const raw = up.map((value, c) => value - lean * n[c]);
  const length = Math.hypot(raw[0], raw[1], raw[2]);
  const v = raw.map((value) => value / length);
  const u = [v[1] * n[2] - v[2] * n[1], v[2] * n[0] - v[0] * n[2], v[0] * n[1] - v[1] * n[0]];
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
  return { edge: isReversed ? reverseRing(ring) : ring, isReversed, normal: n, flatten };
}

function reverseRing(ring: Float64Array): Float64Array {
  const count = ring.length / 2;
  return ring.map((_, i) => ring[2 * (count - 1 - (i >> 1)) + (i % 2)]);
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
  return rings.reduce((best, one) => (measurePolygonArea(one) > measurePolygonArea(best) ? one : best));
}

/** The largest inset that leaves something of the ring, mm: bisection to 0.01 mm. */
export function largestInset(ring: Float64Array): number {
  const xs = ring.filter((_, i) => i % 2 === 0);
  let [low, high] = [0, 0.5 * (Math.max(...xs) - Math.min(...xs)) + 1];
  while (high - low > 0.01) {
    const middle = 0.5 * (low + high);
    if (insetRing(ring, middle)) low = middle;
    else high = middle;
  }
  return low;
}

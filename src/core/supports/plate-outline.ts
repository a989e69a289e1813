import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { InvariantError } from '../base/index.ts';
import { measurePolygonArea } from '../math/index.ts';
import type { InsideForm } from './types.ts';

export type OpeningId = InsideForm['openings'][number]['id'];

/** An opening of the shell laid into its own plane. mm. */
export interface PlateOutline {
  readonly id: OpeningId;
  /** The shell's edge, closed, counter-clockwise, n × 2. */
  readonly edge: Float64Array;
  /** Largest distance of the shell's edge from the plane. */
  readonly unevenness: number;
  /** Base and neck are seen from above, the front at the top; armholes from outside, up at the top. */
  readonly flatten: (x: number, y: number, z: number) => [number, number];
}

/** Lays an opening's edge into its mean plane (normal of its area; Newell's method). */
export function outlinePlate(form: InsideForm, id: OpeningId): PlateOutline | null {
  const points = form.openings.find((opening) => opening.id === id)?.points;
  if (!points || points.length < 9) return null;
  if (id === 'base' || id === 'neck') return { id, ...layRing(points, [0, 0, 1], [0, 1, 0], false) };
  return { id, ...layRing(points, [id === 'armholeRight' ? 1 : -1, 0, 0], [0, 0, 1], true) };
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
): Omit<PlateOutline, 'id'> {
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
  let unevenness = 0;
  const edge: number[] = [];
  for (let i = 0; i < points.length; i += 3) {
    const [x, y, z] = [points[i], points[i + 1], points[i + 2]];
    edge.push(...flatten(x, y, z));
    unevenness = Math.max(unevenness, Math.abs(along(n, x, y, z)));
  }
  const ring = Float64Array.from(edge);
  return { edge: measurePolygonArea(ring) > 0 ? ring : reverseRing(ring), unevenness, flatten };
}

function reverseRing(ring: Float64Array): Float64Array {
  const count = ring.length / 2;
  return ring.map((_, i) => ring[2 * (count - 1 - (i >> 1)) + (i % 2)]);
}

/** The ring moved inwards (n × 2, counter-clockwise) by `distance` mm; the largest part where it falls apart. */
export function insetRing(ring: Float64Array, distance: number): Float64Array {
  const path = Array.from({ length: ring.length / 2 }, (_, i) => ({ x: ring[2 * i], y: ring[2 * i + 1] }));
  const parts = inflatePathsD([path], -distance, JoinType.Miter, EndType.Polygon, 3, 4);
  const rings = parts.map((part) => Float64Array.from(part.flatMap(({ x, y }) => [x, y])));
  if (rings.length === 0)
    throw new InvariantError('supports', 'a plate is wider than twice its inset', distance);
  return rings.reduce((best, one) => (measurePolygonArea(one) > measurePolygonArea(best) ? one : best));
}

import { cubicSplineMoments, distanceInPlane, evaluateCubicSpline, measureAlong } from '../math/index.ts';

/** Points nearer than this to the one kept before are left out, mm: where a plane passes near a vertex of the mesh they crowd. */
const CROWDED = 2;
/** A point where the line turns by more is a corner, where a plate meets the shell. Ours. */
const CORNER = (35 * Math.PI) / 180;
/** Between the points of the curve, at most, mm: chords then leave it by less than 0.02 mm where it is rounder than 25 mm. */
const STEP = 2;

/**
 * The smooth curve through an open line of chords (n × 2 mm), as chords fine enough to pass for it: the cubic spline by chord length
 * through its points, from corner to corner. Its points lie on the surface, its chords a little inside. O(n).
 */
export function curveThrough(line: Float64Array): Float64Array {
  const even = withoutCrowds(line);
  const count = even.length / 2;
  const isCorner = (i: number): boolean => {
    const [ax, ay] = [even[2 * i] - even[2 * i - 2], even[2 * i + 1] - even[2 * i - 1]];
    const [bx, by] = [even[2 * i + 2] - even[2 * i], even[2 * i + 3] - even[2 * i + 1]];
    return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) > CORNER;
  };
  const stops = Array.from({ length: count }, (_, i) => i).filter(
    (i) => i === 0 || i === count - 1 || isCorner(i),
  );
  const points = [even[0], even[1]];
  for (let k = 1; k < stops.length; k++)
    points.push(...refine(even.subarray(2 * stops[k - 1], 2 * stops[k] + 2)));
  return Float64Array.from(points);
}

/** Points on the spline through the nodes, without the first. */
function refine(nodes: Float64Array): number[] {
  const count = nodes.length / 2;
  if (count < 3) return [nodes[2], nodes[3]];
  const along = measureAlong(nodes);
  const axes = [0, 1].map((axis) => {
    const values = nodes.filter((_, i) => i % 2 === axis);
    return { values, moments: cubicSplineMoments(along, values) };
  });
  const points: number[] = [];
  for (let i = 1; i < count; i++) {
    const parts = Math.ceil(distanceInPlane(nodes, i - 1, i) / STEP);
    for (let k = 1; k < parts; k++) {
      const s = along[i - 1] + ((along[i] - along[i - 1]) * k) / parts;
      points.push(...axes.map(({ values, moments }) => evaluateCubicSpline(along, values, moments, s)));
    }
    points.push(nodes[2 * i], nodes[2 * i + 1]);
  }
  return points;
}

/** Both ends stay. */
function withoutCrowds(line: Float64Array): Float64Array {
  const last = line.length - 2;
  const kept = [line[0], line[1]];
  const isFar = (i: number, x: number, y: number) => Math.hypot(line[i] - x, line[i + 1] - y) >= CROWDED;
  for (let i = 2; i < last; i += 2) {
    const [x, y] = kept.slice(-2);
    if (isFar(i, x, y) && isFar(i, line[last], line[last + 1])) kept.push(line[i], line[i + 1]);
  }
  return Float64Array.of(...kept, line[last], line[last + 1]);
}

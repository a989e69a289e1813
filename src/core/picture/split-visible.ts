import { dot, type Vector } from '../math/index.ts';
import type { Occluders } from './find-occluders.ts';
import type { Projector } from './project-camera.ts';
import type { SurfaceLine } from './trace-contours.ts';

/** A line seen, on the page. */
export interface SeenRun {
  /** n × 2 mm of paper. */
  readonly points: Float64Array;
  readonly closed: boolean;
}

/** mm of paper: samples along a line, hidden gaps that are closed, and runs too short to be drawn. */
const STEP = 0.15;
const GAP = 0.6;
const SHORTEST = 0.8;
/** Off its cloth a point is looked for, and so much nearer another cloth must be to hide it, mm in space. */
const OFF = 1;
const TOLERANCE = 1.5;

/**
 * The stretches of a line that are seen. A point of a `contour` is looked for a little off the cloth on both sides: over a
 * bulge the outer side is free and the inner one lies behind the bulge itself, in a hollow seen from its wrong side the
 * other way round, and neither is where the contour runs behind its own fold; so chains end at cusps by themselves. Points
 * of an `edge` (a seam, a border) are looked for on the side of the cloth that faces the viewer. O(samples × triangles over each).
 */
export function splitVisible(
  line: SurfaceLine,
  kind: 'contour' | 'edge',
  projector: Projector,
  occluders: Occluders,
): SeenRun[] {
  const { points, normals } = closeLine(line);
  const seen = projector.project(points);
  const along = lengthsAlong(seen);
  const total = along[along.length - 1];
  if (!(total > SHORTEST)) return [];
  const count = Math.max(2, Math.ceil(total / STEP));
  const point: [number, number, number] = [0, 0, 0];
  const normal: [number, number, number] = [0, 0, 0];
  const look = (s: number): boolean => {
    const [i, t] = locate(along, s);
    for (let k = 0; k < 3; k++) {
      point[k] = (1 - t) * points[3 * i + k] + t * points[3 * i + 3 + k];
      normal[k] = (1 - t) * normals[3 * i + k] + t * normals[3 * i + 3 + k];
    }
    return isSeen(point, normal, kind, projector, occluders);
  };
  const samples = Array.from({ length: count + 1 }, (_, i) => (total * i) / count);
  const flags = closeGaps(samples.map(look), GAP / (total / count));
  if (flags.every(Boolean)) {
    const whole = stretchOf(seen, along, 0, total);
    return [{ points: line.closed ? whole.slice(0, -2) : whole, closed: line.closed }];
  }
  const runs: SeenRun[] = [];
  for (let i = 0; i <= count; i++) {
    if (!flags[i] || (i > 0 && flags[i - 1])) continue;
    let end = i;
    while (end < count && flags[end + 1]) end++;
    const from = i === 0 ? 0 : refine(look, samples[i - 1], samples[i]);
    const to = end === count ? total : refine(look, samples[end + 1], samples[end]);
    runs.push({ points: stretchOf(seen, along, from, to), closed: false });
    i = end;
  }
  return (line.closed ? joinFirstToLast(runs) : runs).filter((run) => lengthOf(run.points) >= SHORTEST);
}

/** Whether a point with this normal is seen, as `splitVisible` says. */
export function isSeen(
  point: Vector,
  normal: Vector,
  kind: 'contour' | 'edge',
  projector: Projector,
  occluders: Occluders,
): boolean {
  const isFree = (side: 1 | -1): boolean => {
    const seen = projector.project([
      point[0] + side * OFF * normal[0],
      point[1] + side * OFF * normal[1],
      point[2] + side * OFF * normal[2],
    ]);
    return !occluders.isHidden(seen[0], seen[1], seen[2], TOLERANCE);
  };
  if (kind === 'contour') return isFree(1) || isFree(-1);
  return isFree(dot(normal, projector.toViewer) >= 0 ? 1 : -1);
}

/** With its first point again at the end of a closed one. */
function closeLine({ points, normals, closed }: SurfaceLine): Pick<SurfaceLine, 'points' | 'normals'> {
  if (!closed) return { points, normals };
  const again = (rows: Float64Array): Float64Array => Float64Array.of(...rows, ...rows.subarray(0, 3));
  return { points: again(points), normals: again(normals) };
}

function lengthsAlong(seen: Float64Array): Float64Array {
  const along = new Float64Array(seen.length / 3);
  for (let i = 1; i < along.length; i++) {
    const step = Math.hypot(seen[3 * i] - seen[3 * i - 3], seen[3 * i + 1] - seen[3 * i - 2]);
    along[i] = along[i - 1] + step;
  }
  return along;
}

/** Index of the stretch that holds a length, and the share of it. */
function locate(along: Float64Array, s: number): [number, number] {
  let [low, high] = [0, along.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (along[middle] <= s) low = middle;
    else high = middle;
  }
  const length = along[high] - along[low];
  return [low, length > 0 ? (s - along[low]) / length : 0];
}

/** Flags with hidden stretches of at most so many samples between seen ones made seen. */
function closeGaps(flags: readonly boolean[], most: number): boolean[] {
  const closed = flags.slice();
  for (let i = 1; i < flags.length; i++) {
    if (flags[i] || !flags[i - 1]) continue;
    let end = i;
    while (end < flags.length && !flags[end]) end++;
    if (end < flags.length && end - i <= most) closed.fill(true, i, end);
  }
  return closed;
}

/** Where a line becomes seen between a hidden and a seen place. */
function refine(look: (s: number) => boolean, hidden: number, seen: number): number {
  for (let step = 0; step < 4; step++) {
    const middle = (hidden + seen) / 2;
    if (look(middle)) seen = middle;
    else hidden = middle;
  }
  return seen;
}

function stretchOf(seen: Float64Array, along: Float64Array, from: number, to: number): Float64Array {
  const points: number[] = [];
  const put = (s: number): void => {
    const [i, t] = locate(along, s);
    points.push((1 - t) * seen[3 * i] + t * seen[3 * i + 3], (1 - t) * seen[3 * i + 1] + t * seen[3 * i + 4]);
  };
  put(from);
  for (let i = 0; i < along.length; i++)
    if (along[i] > from && along[i] < to) points.push(seen[3 * i], seen[3 * i + 1]);
  put(to);
  return Float64Array.from(points);
}

/** A closed line seen over its start is one run there. */
function joinFirstToLast(runs: readonly SeenRun[]): readonly SeenRun[] {
  if (runs.length < 2) return runs;
  const [first, last] = [runs[0], runs[runs.length - 1]];
  const end = last.points.length;
  const meet =
    Math.hypot(first.points[0] - last.points[end - 2], first.points[1] - last.points[end - 1]) < 1e-6;
  if (!meet) return runs;
  const joined = { points: Float64Array.of(...last.points, ...first.points.subarray(2)), closed: false };
  return [joined, ...runs.slice(1, -1)];
}

function lengthOf(points: Float64Array): number {
  let length = 0;
  for (let i = 2; i < points.length; i += 2) {
    length += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  }
  return length;
}

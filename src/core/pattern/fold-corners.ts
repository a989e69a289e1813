import { measurePolyline, reversePolyline, shareOfSegment } from '../math/index.ts';
import type { PieceEdge } from './types.ts';

/** A folded corner reaches no farther than this many allowances, as a mitred one does. Ours. */
const FOLD_LIMIT = 2.5;
/** Where the outline turns less, the two edges lie in one line and nothing crosses there. Ours. */
const LEAST_TURN = Math.PI / 6;
/** An edge shorter than this many allowances leaves no room for two corners. Ours. */
const SHORTEST_EDGE = 3;
/** How far the cut line may be from where the plain offset puts it, mm, before the corner is left alone. */
const SAME_PLACE = 0.02;

/** How the allowance's corner between two edges is shaped: by extending both cut lines, or to be turned over one of the edges. */
export type CornerShape = 'mitred' | 'folded-over-first' | 'folded-over-second';

/**
 * Which edge's allowance is turned at the corner where `first` ends and `second` begins. At a plate edge or opening its own
 * allowance is turned over the finished seam; where two seams meet, that of the one sewn first is pressed open before
 * the other is stitched across it. Without an order, or between two openings, neither is.
 */
export function shapeOfCorner(first: PieceEdge, second: PieceEdge): CornerShape {
  if (first.kind !== second.kind)
    return first.kind === 'opening' ? 'folded-over-first' : 'folded-over-second';
  if (first.sewn === undefined || second.sewn === undefined || first.sewn === second.sewn) return 'mitred';
  return first.sewn < second.sewn ? 'folded-over-first' : 'folded-over-second';
}

/**
 * The mitred cut line (closed, counter-clockwise, n × 2 mm) with those corners that will be turned shaped for it: the end of
 * the turned edge's allowance is the mirror image, over that edge's sew line at the corner, of its neighbour's cut line, so
 * that, pressed open or turned in, it ends on it. On a blunt corner that adds a flare to the mitre, ended square at
 * 2.5 allowances; on a sharp one it takes the mitre's tip away, though never any of the edge's own allowance.
 * Corners that are hollow, nearly straight (30°), between short edges, or whose cut line other allowances overlay, stay
 * mitred. O(corners · n).
 */
export function foldCorners(
  cutLine: Float64Array,
  edges: readonly PieceEdge[],
  allowances: readonly number[],
): Float64Array {
  let ring = cutLine;
  edges.forEach((second, i) => {
    const h = (i + edges.length - 1) % edges.length;
    const first = edges[h];
    const shape = edges.length > 1 ? shapeOfCorner(first, second) : 'mitred';
    if (shape === 'mitred') return;
    const shortest = SHORTEST_EDGE * Math.max(allowances[h], allowances[i]);
    if (measurePolyline(first.points) < shortest || measurePolyline(second.points) < shortest) return;
    const isFirst = shape === 'folded-over-first';
    // Seen from the other side the second edge is the first one: the ring is run round backwards.
    const along = isFirst ? first.points : reversePolyline(second.points);
    const beyond = isFirst ? second.points : reversePolyline(first.points);
    const frame = frameAtEnd(along, beyond, isFirst ? 1 : -1, isFirst ? allowances[h] : allowances[i]);
    if (frame === null) return;
    const other = isFirst ? allowances[i] : allowances[h];
    const folded = foldCorner(isFirst ? ring : reversePolyline(ring), frame, other);
    if (folded !== null) ring = isFirst ? folded : reversePolyline(folded);
  });
  return ring;
}

/** The corner p, the direction d in which the turned edge arrives there, its outward normal n, its allowance. */
interface CornerFrame {
  readonly px: number;
  readonly py: number;
  readonly dx: number;
  readonly dy: number;
  readonly nx: number;
  readonly ny: number;
  readonly allowance: number;
}

/** Null where the corner is hollow or nearly straight. `hand`: 1 when the ring is run round counter-clockwise, else −1. */
function frameAtEnd(
  along: Float64Array,
  beyond: Float64Array,
  hand: 1 | -1,
  allowance: number,
): CornerFrame | null {
  if (allowance === 0) return null;
  const end = along.length;
  const [px, py] = [along[end - 2], along[end - 1]];
  const [ax, ay] = [px - along[end - 4], py - along[end - 3]];
  const [bx, by] = [beyond[2] - px, beyond[3] - py];
  const turn = hand * Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  if (turn < LEAST_TURN) return null;
  const length = Math.hypot(ax, ay);
  const [dx, dy] = [ax / length, ay / length];
  return { px, py, dx, dy, nx: hand * dy, ny: -hand * dx, allowance };
}

/**
 * Legend: a vertex in the frame has x along d from the corner and z inwards from the sew line; the foot is where the
 * edge's own cut line ends, (0, −allowance); the hinge is where the neighbour's cut line meets the extended sew line, z = 0.
 */
function foldCorner(ring: Float64Array, frame: CornerFrame, other: number): Float64Array | null {
  const { px, py, dx, dy, nx, ny, allowance } = frame;
  const count = ring.length / 2;
  const xOf = (i: number): number => (ring[2 * i] - px) * dx + (ring[2 * i + 1] - py) * dy;
  const zOf = (i: number): number => -(ring[2 * i] - px) * nx - (ring[2 * i + 1] - py) * ny;
  const limit = FOLD_LIMIT * Math.max(allowance, other);
  const farthest = Math.sqrt(limit * limit - allowance * allowance);

  // 1. The segment that holds the foot, and the first one after it that comes up through z = 0: the hinge.
  const foot = segmentThrough(ring, px + allowance * nx, py + allowance * ny);
  if (foot < 0) return null;
  let i = foot;
  for (let steps = 0; ; steps++, i = (i + 1) % count) {
    if (steps === count) return null;
    if (zOf(i) < 0 && zOf((i + 1) % count) >= 0) break;
    if (zOf((i + 1) % count) < -limit || Math.abs(xOf((i + 1) % count)) > 2 * limit) return null;
  }
  const hingeX = crossing(xOf(i), zOf(i), xOf((i + 1) % count), zOf((i + 1) % count), 0);
  if (!(hingeX > 0 && hingeX < farthest)) return null;

  // 2. Up the neighbour's cut line until the mirror image is as deep as the allowance, or leaves 0 … farthest.
  const mirrored: [number, number][] = [[hingeX, 0]];
  const first = (i + 1) % count;
  for (let k = first, steps = 0; ; k = (k + 1) % count, steps++) {
    if (steps === count) return null;
    const [x0, z0] = mirrored[mirrored.length - 1];
    let [x, z] = [xOf(k), zOf(k)];
    if (z < z0) return null;
    if (z >= allowance) [x, z] = [crossing(x0, z0, x, z, allowance), allowance];
    const bound = x < 0 ? 0 : farthest;
    if (x < 0 || x > farthest) [x, z] = [bound, crossing(z0, x0, z, x, bound)];
    if (x !== x0 || z !== z0) mirrored.push([x, z]);
    if (z === allowance) break;
    if (x === bound) {
      mirrored.push([bound, allowance]);
      break;
    }
  }

  // 3. Everything from the hinge round to the foot stays; the mirror image joins them.
  const kept: number[] = [];
  const at = ([x, z]: [number, number]): [number, number] => [px + x * dx + z * nx, py + x * dy + z * ny];
  for (let k = first; k !== (foot + 1) % count; k = (k + 1) % count) kept.push(ring[2 * k], ring[2 * k + 1]);
  const corner = mirrored.reverse().flatMap(at);
  return Float64Array.from([...kept, ...corner]);
}

/** x where the segment from (x0, z0) to (x1, z1) has the given z. */
function crossing(x0: number, z0: number, x1: number, z1: number, z: number): number {
  return z1 === z0 ? x1 : x0 + ((x1 - x0) * (z - z0)) / (z1 - z0);
}

/** Index of the segment of the ring on which (x, y) lies, −1 when there is none. */
function segmentThrough(ring: Float64Array, x: number, y: number): number {
  const count = ring.length / 2;
  let [best, found] = [SAME_PLACE, -1];
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    const [ax, ay, bx, by] = [ring[2 * i], ring[2 * i + 1], ring[2 * j], ring[2 * j + 1]];
    const t = shareOfSegment(ax, ay, bx, by, x, y);
    const distance = Math.hypot(t * (bx - ax) - (x - ax), t * (by - ay) - (y - ay));
    if (distance < best) [best, found] = [distance, i];
  }
  return found;
}

import { measurePolygonArea, reversePolyline } from '../math/index.ts';
import { type Mesh, sliceMesh } from '../mesh/index.ts';
import { curveThrough } from './curve-through.ts';
import { moveOutwards } from './move-outwards.ts';

/** The inner edge of a half ring. */
export interface HalfSection {
  /** n × 2 (x, y) mm as seen from above, front up, counter-clockwise round the form from one tip to the other. */
  readonly edge: Float64Array;
  /** How far each tip ends before the middle of the form, mm; 0 where it reaches it. */
  readonly fromMiddle: { readonly front: number; readonly back: number };
}

/**
 * Half of the form's section at height `z`, `clearance` outside it. A tip that would hook behind something deeper than the
 * middle, such as a breast, ends where the form is deepest, so that the ring can be put on from the side. Null where the
 * plane finds no closed outline round the middle. O(triangles).
 */
export function halfOfSection(
  mesh: Mesh,
  z: number,
  side: 'right' | 'left',
  clearance: number,
): HalfSection | null {
  const rings = sliceMesh(mesh, 2, z).filter(({ closed }) => closed);
  const largest = rings
    .map(({ points }) => ({ points, area: measurePolygonArea(points) }))
    .sort((a, b) => Math.abs(b.area) - Math.abs(a.area))[0];
  if (!largest) return null;
  const ring = largest.area < 0 ? reversePolyline(largest.points) : largest.points;
  const half = halfOfRing(ring, side === 'right' ? 1 : -1);
  if (!half) return null;
  const even = curveThrough(half);
  const [first, last] = side === 'right' ? ([-1, 1] as const) : ([1, -1] as const);
  const edge = moveOutwards(even, clearance, { first: [0, first], last: [0, last] });
  return withoutHooks(edge, even, side);
}

/** The stretch of a counter-clockwise ring with sign · x ≥ 0, cut exactly at x = 0. Null where the ring does not go round x = 0 once. */
function halfOfRing(ring: Float64Array, sign: 1 | -1): Float64Array | null {
  const count = ring.length / 2;
  const isOn = (i: number) => sign * ring[2 * (i % count)] > 0;
  const starts = Array.from({ length: count }, (_, i) => i).filter((i) => !isOn(i) && isOn(i + 1));
  if (starts.length !== 1) return null;
  const half = [0, crossing(ring, starts[0])];
  let i = starts[0] + 1;
  for (; isOn(i); i++) half.push(ring[2 * (i % count)], ring[2 * (i % count) + 1]);
  half.push(0, crossing(ring, (i - 1) % count));
  return Float64Array.from(half);
}

/** y at which the segment from point `i` meets x = 0. */
function crossing(ring: Float64Array, i: number): number {
  const j = (i + 1) % (ring.length / 2);
  const t = ring[2 * i] / (ring[2 * i] - ring[2 * j]);
  return ring[2 * i + 1] + t * (ring[2 * j + 1] - ring[2 * i + 1]);
}

function withoutHooks(edge: Float64Array, form: Float64Array, side: 'right' | 'left'): HalfSection {
  const count = edge.length / 2;
  const deepest = (sign: 1 | -1): number => {
    let best = 0;
    for (let i = 1; i < count; i++) if (sign * form[2 * i + 1] > sign * form[2 * best + 1]) best = i;
    return best;
  };
  const [frontEnd, backEnd] = side === 'right' ? [count - 1, 0] : [0, count - 1];
  const isClear = (end: number, sign: 1 | -1): boolean =>
    sign * form[2 * deepest(sign) + 1] <= sign * edge[2 * end + 1];
  const front = isClear(frontEnd, 1) ? frontEnd : deepest(1);
  const back = isClear(backEnd, -1) ? backEnd : deepest(-1);
  const [from, to] = side === 'right' ? [back, front] : [front, back];
  return {
    edge: edge.slice(2 * from, 2 * to + 2),
    fromMiddle: { front: Math.abs(edge[2 * front]), back: Math.abs(edge[2 * back]) },
  };
}

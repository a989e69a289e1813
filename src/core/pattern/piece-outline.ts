import { assertInvariant } from '../base/index.ts';
import type { OutlineVertex } from './offset-outline.ts';
import type { PieceEdge, PieceInput } from './types.ts';

/** Neighbouring edges must share their end points to this, mm. */
const SAME_POINT = 1e-6;

/**
 * The closed sew outline as a ring (n × 2, first point not repeated), each edge's last point left to its
 * neighbour. Throws when the edges do not chain.
 */
export function outlineOfPiece(input: PieceInput): Float64Array {
  const ring: number[] = [];
  input.edges.forEach((edge, i) => {
    const next = input.edges[(i + 1) % input.edges.length].points;
    const end = edge.points.length;
    assertInvariant(end >= 4, 'pattern', `edge ${edge.id} of ${input.id} has at least two points`, end / 2);
    const gap = Math.hypot(edge.points[end - 2] - next[0], edge.points[end - 1] - next[1]);
    assertInvariant(
      gap <= SAME_POINT,
      'pattern',
      `edge ${edge.id} of ${input.id} ends where the next begins`,
      gap,
    );
    const firstBad = edge.points.findIndex((value) => !Number.isFinite(value));
    assertInvariant(firstBad < 0, 'pattern', `edge ${edge.id} of ${input.id} has finite points`, firstBad);
    for (let j = 0; j < end - 2; j++) ring.push(edge.points[j]);
  });
  return Float64Array.from(ring);
}

/** The same ring as vertices that know their allowance; repeated points are left out. */
export function verticesOfPiece(
  edges: readonly PieceEdge[],
  allowances: readonly number[],
): readonly OutlineVertex[] {
  const vertices: OutlineVertex[] = [];
  edges.forEach((edge, i) => {
    const { points } = edge;
    for (let j = 0; j + 2 < points.length; j += 2) {
      if (Math.hypot(points[j + 2] - points[j], points[j + 3] - points[j + 1]) < SAME_POINT) continue;
      vertices.push({ x: points[j], y: points[j + 1], allowance: allowances[i], isCorner: j === 0 });
    }
  });
  return vertices;
}

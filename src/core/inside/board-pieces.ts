import type { Phrase } from '../base/index.ts';
import { type Bounds, boundsOfPolyline } from '../math/index.ts';
import type { PieceEdge, PieceInput, PieceLine } from '../pattern/index.ts';
import { phrase } from './phrases.ts';
import { turnedHoles } from './turned-holes.ts';

/** A board's edge round, seen on the face that is drawn. */
export interface BoardRing {
  readonly id: string;
  readonly name: Phrase;
  readonly side: PieceInput['side'];
  /** The four edges as a maker names them, from the right hand of the drawing counter-clockwise. */
  readonly edgeNames: readonly [string, string, string, string];
  /** Has no room for many words. */
  readonly isSmall?: boolean;
  /** n × 2, closed, counter-clockwise. */
  readonly ring: Float64Array;
  /** Of the second layer, behind the first, where it is smaller. */
  readonly innerRing?: Float64Array;
}

/** Two layers whose flutes cross: the second is drawn a quarter turned. `pole`: of its magnets, the one that looks outwards. */
export function boardLayers(board: BoardRing, holes: readonly PieceLine[], pole?: 'N' | 'S'): PieceInput[] {
  return ([false, true] as const).map((isTurned): PieceInput => {
    const move = isTurned ? quarterTurn : (points: Float64Array) => points.slice();
    const ring = isTurned ? (board.innerRing ?? board.ring) : board.ring;
    const face = isTurned ? 'inside' : 'outside';
    return {
      id: `${board.id}-${isTurned ? 2 : 1}`,
      name: phrase('plate.layer', {
        plate: board.name,
        layer: isTurned ? 2 : 1,
        ...(board.innerRing && { face }),
        ...(pole && { pole }),
        ...(board.isSmall && { isShort: true }),
      }),
      side: board.side,
      edges: ringEdges({ ...board, ring }, false).map((edge) => ({ ...edge, points: move(edge.points) })),
      levelLines: [],
      ...(holes.length === 0
        ? {}
        : { cutouts: holes.map((hole) => ({ ...hole, points: move(hole.points) })) }),
      material: 'card',
      grainWord: phrase('grain.flutes'),
      ...(isTurned && { follows: { piece: `${board.id}-1`, how: 'layer' as const } }),
    };
  });
}

/** Of a small plate's width: more cloth turned over its edge would cover it. */
const SMALL_SHARE = 0.25;

/** Allowance of a cover, mm: folded over the edge and laced or glued behind; on a small plate less than is `wanted`. */
export function allowanceOfCover(cover: PieceInput, wanted: number): number {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(cover.edges.flatMap(({ points }) => [...points]));
  return Math.min(wanted, Math.round(SMALL_SHARE * Math.min(maxX - minX, maxY - minY)));
}

/** A cloth cover, with a mark in the middle of each edge, cut and turned at the plate's `holes` that go through it. */
export function boardCover(board: BoardRing, holes: readonly PieceLine[] = []): PieceInput {
  return {
    id: `${board.id}-cover`,
    name: phrase('plate.cover', { plate: board.name }),
    side: board.side,
    edges: ringEdges(board, true),
    levelLines: [],
    material: 'covers',
    ...turnedHoles(holes),
    follows: { piece: `${board.id}-1`, how: 'cover' },
  };
}

/** Clockwise, so that the second layer's flutes, upright on the sheet, cross the first one's. */
function quarterTurn(points: Float64Array): Float64Array {
  return points.map((_, i) => (i % 2 === 0 ? points[i + 1] : -points[i - 1]));
}

/** In which quarter of its ring a point lies, by the diagonals of the ring's box: 0 right, 1 up, 2 left, 3 down. */
export function quarterOf(ring: Float64Array, index: number): number {
  return quarterIn(boundsOfPolyline(ring), ring[2 * index], ring[2 * index + 1]);
}

function quarterIn({ minX, minY, maxX, maxY }: Bounds, x: number, y: number): number {
  const angle = Math.atan2((2 * y - minY - maxY) / (maxY - minY), (2 * x - minX - maxX) / (maxX - minX));
  return Math.floor(((angle + Math.PI / 4) / (Math.PI / 2) + 8) % 4);
}

/** The ring as four edges, divided at the diagonals of its box. */
function ringEdges({ edgeNames, ring }: BoardRing, hasMarks: boolean): PieceEdge[] {
  const box = boundsOfPolyline(ring);
  const count = ring.length / 2;
  const quarter = (i: number): number => quarterIn(box, ring[2 * i], ring[2 * i + 1]);
  let first = 0;
  while (!(quarter(first) === 0 && quarter((first + count - 1) % count) === 3)) first++;
  const edges: PieceEdge[] = [];
  for (let q = 0, i = first; q < 4; q++) {
    const points = [ring[2 * (i % count)], ring[2 * (i % count) + 1]];
    let steps = 0;
    do {
      i++;
      steps++;
      points.push(ring[2 * (i % count)], ring[2 * (i % count) + 1]);
    } while (quarter(i % count) === q && i < first + count);
    const middle = hasMarks && steps > 1 ? [{ kind: 'balance' as const, index: steps >> 1, number: 1 }] : [];
    edges.push({
      kind: 'opening',
      id: edgeNames[q],
      letter: '',
      points: Float64Array.from(points),
      marks: middle,
      bodyHalf: 'front',
    });
  }
  return edges;
}

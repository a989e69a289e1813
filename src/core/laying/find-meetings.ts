import { measureDistanceToPolyline } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';

/** A mark shared by two pieces at a seam, and where it lies on each, in the piece's own coordinates. */
export interface Meeting {
  /** The seam's letter. */
  readonly seam: string;
  /** Id of the level that crosses there; `start` and `end` are the seam's ends as the first piece has them. */
  readonly at: string;
  readonly pieces: readonly [string, string];
  readonly points: readonly [Point, Point];
}

export type Point = readonly [x: number, y: number];

/** A level line that ends within this of a sew line ends on it, mm: both are the same vertex but for rounding. */
const ON_SEAM = 0.05;

/** Where pieces meet at their seams: at the levels that cross both, and at both ends. O(seams × points). */
export function findMeetings(pieces: readonly Piece[]): Meeting[] {
  const sides = new Map<string, { piece: Piece; points: Float64Array }[]>();
  // An opening goes by its id, a seam by its letter.
  for (const piece of pieces)
    for (const { id, name, points } of piece.sewLines)
      if (id !== name) sides.set(name, [...(sides.get(name) ?? []), { piece, points }]);
  return [...sides].flatMap(([seam, both]) => {
    if (both.length !== 2 || both[0].piece === both[1].piece) return [];
    const [a, b] = both;
    const names: [string, string] = [a.piece.id, b.piece.id];
    const levels = levelsAt(a).flatMap(([at, point]): Meeting[] => {
      const other = levelsAt(b).find(([id]) => id === at);
      return other ? [{ seam, at, pieces: names, points: [point, other[1]] }] : [];
    });
    // Both run counter-clockwise round their own piece, so one begins where the other ends.
    const ends: Meeting[] = [
      { seam, at: 'start', pieces: names, points: [pointAt(a.points, 0), pointAt(b.points, -1)] },
      { seam, at: 'end', pieces: names, points: [pointAt(a.points, -1), pointAt(b.points, 0)] },
    ];
    return [...levels, ...ends];
  });
}

/** Ids of the levels that end on a sew line, and where. */
function levelsAt({ piece, points }: { piece: Piece; points: Float64Array }): [string, Point][] {
  return piece.levelLines.flatMap(({ id, points: line }) =>
    [pointAt(line, 0), pointAt(line, -1)]
      .filter(([x, y]) => measureDistanceToPolyline(points, false, x, y) < ON_SEAM)
      .slice(0, 1)
      .map((point): [string, Point] => [id, point]),
  );
}

function pointAt(points: Float64Array, index: 0 | -1): Point {
  const at = index === 0 ? 0 : points.length - 2;
  return [points[at], points[at + 1]];
}

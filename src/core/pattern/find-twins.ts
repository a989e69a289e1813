import { boundsOfPolyline, measureDistanceToPolyline } from '../math/index.ts';
import type { Piece, PieceLine, Twins } from './types.ts';

/** How far any line of one piece may lie from the same line of the other, mm. */
const NEAR = 0.1;

/** Two pieces that one drawing serves: indices of the right and the left one. */
export interface TwinPair {
  readonly right: number;
  readonly left: number;
  readonly kind: Twins['kind'];
}

/**
 * Right and left pieces of one material whose outlines, sew lines, notches, level lines, holes and grain lie on each other within
 * 0.1 mm, as they lie or with the left one turned over: measured, whatever they are called. Where the allowance may be clipped is the
 * same to the maker on both, so it is not compared. Each piece is in one pair at most; a partner whose id differs by the side alone goes before others. O(right · left pieces of like size · points²).
 */
export function findTwins(pieces: readonly Piece[]): TwinPair[] {
  const pairs: TwinPair[] = [];
  const free = new Set(pieces.flatMap(({ side }, i) => (side === 'left' ? [i] : [])));
  for (const [right, piece] of pieces.entries()) {
    if (piece.side !== 'right') continue;
    const stem = stemOf(piece.id);
    const candidates = [...free].sort(
      (a, b) => Number(stemOf(pieces[b].id) === stem) - Number(stemOf(pieces[a].id) === stem) || a - b,
    );
    for (const left of candidates) {
      const kind = kindOfTwins(piece, pieces[left]);
      if (!kind) continue;
      pairs.push({ right, left, kind });
      free.delete(left);
      break;
    }
  }
  return pairs;
}

function stemOf(id: string): string {
  return id.replace(/right|left/gi, '');
}

function kindOfTwins(a: Piece, b: Piece): Twins['kind'] | null {
  if (a.material !== b.material) return null;
  const mirrored = (['mirrored', 'alike'] as const).find((kind) => {
    const move = moverOf(a, b, kind);
    if (!move || !areLinesAlike(linesOf(b), linesOf(a), move)) return false;
    return areSewLinesAlike(a, b, move) && isGrainAlike(a, b, move);
  });
  return mirrored ?? null;
}

type Mover = (points: Float64Array) => Float64Array;

/** Brings lines of b onto a, box on box; null where the boxes differ. */
export function moverOf(a: Piece, b: Piece, kind: Twins['kind']): Mover | null {
  const [own, other] = [boundsOfPolyline(a.cutLine), boundsOfPolyline(b.cutLine)];
  if (Math.abs(own.maxX - own.minX - other.maxX + other.minX) > NEAR) return null;
  if (Math.abs(own.maxY - own.minY - other.maxY + other.minY) > NEAR) return null;
  const flip = kind === 'mirrored' ? -1 : 1;
  const dx = 0.5 * (own.minX + own.maxX - flip * (other.minX + other.maxX));
  const dy = 0.5 * (own.minY + own.maxY - other.minY - other.maxY);
  return (points) => points.map((value, i) => (i % 2 === 0 ? flip * value + dx : value + dy));
}

interface Outlined {
  readonly points: Float64Array;
  readonly isClosed: boolean;
  /** Lines are compared with those of their sort alone. */
  readonly sort: string;
}

function linesOf(piece: Piece): Outlined[] {
  const open = (sort: string, lines: readonly Pick<PieceLine, 'points'>[] = []): Outlined[] =>
    lines.map(({ points }) => ({ points, isClosed: false, sort }));
  return [
    { points: piece.cutLine, isClosed: true, sort: 'cut' },
    ...open('notch', piece.notches),
    ...open('level', piece.levelLines),
    ...(piece.cutouts ?? []).map(({ points }) => ({ points, isClosed: true, sort: 'hole' })),
  ];
}

function areLinesAlike(lines: readonly Outlined[], others: readonly Outlined[], move: Mover): boolean {
  if (lines.length !== others.length) return false;
  const left = new Set(others);
  return lines.every((line) => {
    const moved = { ...line, points: move(line.points) };
    const found = [...left].find((other) => other.sort === line.sort && isLineAlike(moved, other));
    return found !== undefined && left.delete(found);
  });
}

/** Sew lines as one: where a plate's rim is divided into edges depends on the points it has. */
function areSewLinesAlike(a: Piece, b: Piece, move: Mover): boolean {
  const [own, other] = [a.sewLines, b.sewLines.map((line) => ({ ...line, points: move(line.points) }))];
  const areOn = (lines: readonly PieceLine[], others: readonly PieceLine[]): boolean =>
    lines.every(({ points }) => {
      for (let i = 0; i < points.length; i += 2) {
        const [x, y] = [points[i], points[i + 1]];
        if (others.every((line) => measureDistanceToPolyline(line.points, false, x, y) > NEAR)) return false;
      }
      return true;
    });
  return areOn(own, other) && areOn(other, own);
}

/** True when every point of each lies on the other. */
function isLineAlike(a: Outlined, b: Outlined): boolean {
  const [own, other] = [boundsOfPolyline(a.points), boundsOfPolyline(b.points)];
  const isBoxAlike = (['minX', 'minY', 'maxX', 'maxY'] as const).every(
    (key) => Math.abs(own[key] - other[key]) <= NEAR,
  );
  return isBoxAlike && liesOn(a.points, b) && liesOn(b.points, a);
}

function liesOn(points: Float64Array, line: Outlined): boolean {
  for (let i = 0; i < points.length; i += 2)
    if (measureDistanceToPolyline(line.points, line.isClosed, points[i], points[i + 1]) > NEAR) return false;
  return true;
}

/** The same direction: a grain line's place depends on the words beside it. */
function isGrainAlike(a: Piece, b: Piece, move: Mover): boolean {
  if (a.grainLine.length === 0 || b.grainLine.length === 0) return a.grainLine.length === b.grainLine.length;
  const [ax, ay] = directionOf(a.grainLine);
  const [bx, by] = directionOf(move(b.grainLine));
  return Math.abs(ax * by - ay * bx) < 1e-3;
}

function directionOf([x0, y0, x1, y1]: Float64Array): [number, number] {
  const length = Math.hypot(x1 - x0, y1 - y0);
  return [(x1 - x0) / length, (y1 - y0) / length];
}

import type { Phrase } from '../base/index.ts';
import { boundsOfPolyline, reversePolyline } from '../math/index.ts';
import { draftPiece } from './draft-piece.ts';
import { moverOf } from './find-twins.ts';
import { bothOf, openingOf } from './name-opening.ts';
import { phrase } from './phrases.ts';
import type { LabelInfo, NamedLine, Piece, PieceEdge, PieceInput, PieceMark, Twins } from './types.ts';

/** How far marks and lines of twins may lie apart, mm: twice what outlines may, for points that are nearest and not the same. */
const NEAR = 0.2;
/** A rim is divided into edges at one of its points, mm: these may lie so far apart. */
const RIM = 6;

/**
 * The right piece of a pair of twins with words that are true for both: names of both, how the two are cut, and at every seam, notch
 * and line the right one's name and then the left one's where it differs. Null where they cannot be told on one drawing: an edge or
 * mark without its like, or words without room.
 */
export function drawTwins(right: Piece, left: Piece, kind: Twins['kind'], info: LabelInfo): Piece | null {
  const move = moverOf(right, left, kind);
  if (!right.draft || !left.draft || !move) return null;
  const isFlipped = kind === 'mirrored';
  const others = left.draft.input.edges.map((edge): PieceEdge => {
    const points = move(edge.points);
    if (!isFlipped) return { ...edge, points };
    const last = points.length / 2 - 1;
    const marks = edge.marks.map((mark) => ({ ...mark, index: last - mark.index }));
    return { ...edge, points: reversePolyline(points), marks };
  });
  const edges = right.draft.input.edges.map((edge) => drawEdge(edge, others));
  const found = edges.filter((edge) => edge !== null);
  if (found.length < edges.length) return null;
  const nameLine = (line: NamedLine, lines: readonly NamedLine[]): NamedLine => {
    const other = lines.find(({ points }) => areNear(line.points, move(points), NEAR));
    if (!other) return line;
    return { ...line, name: nameBoth([line.name, other.name]) };
  };
  const { input, options } = right.draft;
  const twin = left.draft.input;
  const merged: PieceInput = {
    ...input,
    name: nameBoth([input.name, twin.name]),
    side: 'centre',
    edges: found,
    levelLines: input.levelLines.map((line) => nameLine(line, twin.levelLines)),
    twins: { kind, hasLetters: found.some(hasTwoNames) },
  };
  const drawn = draftPiece(merged, info, options);
  if (!drawn.ok) return null;
  const lacks = (codes: readonly string[]): boolean => drawn.issues.some(({ code }) => codes.includes(code));
  return lacks(['mark-without-room', 'letter-without-room', 'label-without-room']) ? null : drawn.value;
}

/** One name for several; the same one stays as it is. */
export function nameBoth(names: readonly Phrase[]): Phrase {
  const others = new Map(names.map((name) => [JSON.stringify(name), name]));
  return others.size === 1 ? names[0] : phrase('piece.both', { names: [...others.values()] });
}

function hasTwoNames({ letter, twinLetter, marks }: PieceEdge): boolean {
  return bothOf(letter, twinLetter) !== letter || marks.some((mark) => mark.twinNumber !== undefined);
}

/** The edge with the letter and the numbers of the like edge of the other piece. */
function drawEdge(edge: PieceEdge, others: readonly PieceEdge[]): PieceEdge | null {
  const other = others.find((one) =>
    edge.kind === 'seam'
      ? one.kind === 'seam' && areNear(edge.points, one.points, NEAR)
      : openingOf(one.id) === openingOf(edge.id) && areNear(edge.points, one.points, RIM),
  );
  if (!other) return null;
  const marks = edge.marks.map((mark): PieceMark | null => {
    const [x, y] = pointOf(edge, mark);
    const like = other.marks.find((one) => {
      const [ox, oy] = pointOf(other, one);
      return Math.hypot(ox - x, oy - y) <= NEAR;
    });
    if (!like) return null;
    const isSame = other.letter === edge.letter && like.number === mark.number;
    return isSame ? mark : { ...mark, twinNumber: like.number };
  });
  const found = marks.filter((mark) => mark !== null);
  if (found.length < marks.length || other.marks.length !== edge.marks.length) return null;
  return { ...edge, marks: found, ...(other.letter === edge.letter ? {} : { twinLetter: other.letter }) };
}

function pointOf({ points }: PieceEdge, { index }: PieceMark): [number, number] {
  return [points[2 * index], points[2 * index + 1]];
}

/** The same ends or the same box: lines of twins are known to lie on each other. */
function areNear(a: Float64Array, b: Float64Array, near: number): boolean {
  const [own, other] = [boundsOfPolyline(a), boundsOfPolyline(b)];
  const isBoxNear = (['minX', 'minY', 'maxX', 'maxY'] as const).every(
    (key) => Math.abs(own[key] - other[key]) <= near,
  );
  const middle = (points: Float64Array): [number, number] => {
    let [x, y] = [0, 0];
    for (let i = 0; i < points.length; i += 2) [x, y] = [x + points[i], y + points[i + 1]];
    return [(2 * x) / points.length, (2 * y) / points.length];
  };
  const [[ax, ay], [bx, by]] = [middle(a), middle(b)];
  return isBoxNear && Math.hypot(ax - bx, ay - by) < 5 * near;
}

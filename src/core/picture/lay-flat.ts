import { type Drawing, type DrawingItem, makePath, makeText, translateItem } from '../drawing/index.ts';
import { boundsOfPolyline, isInsidePolygon } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { drawArrow } from './draw-arrows.ts';
import { finishDrawing } from './finish-drawing.ts';
import { type FlatEdge, type FlatPiece, flattenPiece, thinLine } from './flatten-piece.ts';
import { GHOST_DASH, LETTER_SIZE, lineStyle, TINTS } from './line-styles.ts';

export interface FlatChoices {
  readonly title: string;
  /** Letters of seams sewn before: their pieces lie close, laced together. */
  readonly joined?: readonly string[];
  /** mm on paper for one mm of cloth; a tenth as a rule. */
  readonly scale?: number;
  /** mm of paper; a row longer than this goes on below. */
  readonly width?: number;
  /** Right side up, for pieces that are marked or pressed before anything is sewn. */
  readonly isRightSideUp?: boolean;
  /** Stitching lines that are not sewn now are left out. */
  readonly isBare?: boolean;
}

const TENTH = 0.1;
const WIDEST = 170;
/** Between pieces, mm of paper: to be sewn, with room for dotted lines; laced; not sewn at all; and between rows. */
const GAP = 9;
const LACED_GAP = 1.4;
const LOOSE_GAP = 4;
const ROW_GAP = 5;
/** Heights at which pieces are compared, and between stitches of a laced seam, mm of paper. */
const STEP = 1;
const STITCH = 3;
/** Radius of the disc behind a letter, and how far inside its seam it lies, mm of paper. */
const DISC = 2.4;
/** So that it is round within 0.04 mm, and short to write down: a picture has many. */
const DISC_CORNERS = 18;
const INSIDE = 3.6;

/**
 * Pieces side by side from left to right as given, wrong side up, at one height by their waist line, else by their lower
 * edge. What is sewn `now` (letters of edges, or of lines on a piece) is bold on all its partners, with dotted lines from notch to notch. mm of paper. O(pieces² × height).
 */
export function layFlat(pieces: readonly Piece[], now: readonly string[], choices: FlatChoices): Drawing {
  const { scale = TENTH, joined = [], width = WIDEST, isRightSideUp = false, isBare = false } = choices;
  const flat = pieces.map((piece) => flattenPiece(piece, scale, isRightSideUp));
  const gap = now.length > 0 ? GAP : LOOSE_GAP;
  const laid = layRows(flat, new Set(joined), width, gap);
  const tint = isRightSideUp ? TINTS.right : TINTS.wrong;
  const cloth = laid.flatMap((piece) => [
    makePath(piece.cut, {
      closed: true,
      style: { ...lineStyle('seam'), fill: piece.isInner ? TINTS.web : tint },
    }),
    ...piece.holes.map((hole) =>
      makePath(hole, { closed: true, style: { ...lineStyle('seam'), fill: TINTS.paper } }),
    ),
  ]);
  const lines = laid.flatMap((piece) => [
    ...piece.edges
      .filter(({ letter }) => !isBare && !now.includes(letter))
      .map(({ points }) => makePath(thinLine(points, false), { style: lineStyle('thin', GHOST_DASH) })),
    ...piece.levels.map((points) => makePath(points, { style: lineStyle('thin') })),
    ...piece.notches
      .filter(({ seam }) => now.length === 0 || now.includes(seam))
      .map(({ points }) => makePath(points, { style: lineStyle('seam') })),
  ]);
  return finishDrawing(choices.title, cloth, [...lines, ...lace(laid, joined), ...sew(laid, now, joined)]);
}

/** Pieces in rows, each moved to its place. */
function layRows(
  pieces: readonly FlatPiece[],
  joined: ReadonlySet<string>,
  width: number,
  gap: number,
): FlatPiece[] {
  const rows: FlatPiece[][] = [[]];
  for (const piece of pieces) {
    const row = rows[rows.length - 1];
    const placed = placeBeside(row, piece, joined, gap);
    const isTooWide = row.length > 0 && rightOf([...row, placed]) - leftOf([...row, placed]) > width;
    if (isTooWide) rows.push([piece]);
    else row.push(placed);
  }
  let top = 0;
  return rows.flatMap((row) => {
    const { minX, minY, maxY } = boundsOfPolyline(row.flatMap(({ cut }) => [...cut]));
    const moved = row.map((piece) => movePiece(piece, -minX, top - minY));
    top += maxY - minY + ROW_GAP;
    return moved;
  });
}

/** To the right of what lies there already, so near that the least gap between them at any height is the wanted one. */
function placeBeside(
  row: readonly FlatPiece[],
  piece: FlatPiece,
  joined: ReadonlySet<string>,
  apart: number,
): FlatPiece {
  const last = row[row.length - 1];
  if (!last) return piece;
  const areLaced = last.edges.some(({ letter }) => {
    return joined.has(letter) && piece.edges.some((edge) => edge.letter === letter);
  });
  const gap = areLaced ? LACED_GAP : apart;
  const { minX, minY, maxY } = boundsOfPolyline(piece.cut);
  let by = -Infinity;
  for (const before of row) {
    for (let y = minY; y <= maxY; y += STEP) {
      const [from, to] = [extentAt(piece.cut, y), extentAt(before.cut, y)];
      if (from && to) by = Math.max(by, to[1] + gap - from[0]);
    }
  }
  // Pieces that share no height keep their boxes apart.
  if (by === -Infinity) by = rightOf(row) + gap - minX;
  return movePiece(piece, by, 0);
}

function rightOf(row: readonly FlatPiece[]): number {
  return Math.max(...row.map(({ cut }) => boundsOfPolyline(cut).maxX));
}

function leftOf(row: readonly FlatPiece[]): number {
  return Math.min(...row.map(({ cut }) => boundsOfPolyline(cut).minX));
}

/** Leftmost and rightmost point of a closed outline at a height; null where it does not reach. */
function extentAt(outline: Float64Array, y: number): [number, number] | null {
  let [left, right] = [Infinity, -Infinity];
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    const [ay, by] = [outline[i + 1], outline[j + 1]];
    if (ay < y === by < y) continue;
    const x = outline[i] + ((y - ay) / (by - ay)) * (outline[j] - outline[i]);
    left = Math.min(left, x);
    right = Math.max(right, x);
  }
  return left <= right ? [left, right] : null;
}

function movePiece(piece: FlatPiece, dx: number, dy: number): FlatPiece {
  const move = (points: Float64Array): Float64Array =>
    points.map((value, i) => value + (i % 2 === 0 ? dx : dy));
  return {
    ...piece,
    cut: move(piece.cut),
    holes: piece.holes.map(move),
    levels: piece.levels.map(move),
    notches: piece.notches.map((notch) => ({ ...notch, points: move(notch.points) })),
    edges: piece.edges.map((edge) => ({ ...edge, points: move(edge.points) })),
    lines: piece.lines.map((line) => ({ ...line, points: move(line.points) })),
  };
}

/** An edge and the piece it belongs to. */
interface OwnEdge {
  readonly piece: FlatPiece;
  readonly edge: FlatEdge;
}

/** Edges of one letter next to each other: every two neighbours in the order of the pieces are partners. */
function partnersOf(laid: readonly FlatPiece[], letter: string): OwnEdge[][] {
  const own = laid.flatMap((piece) =>
    piece.edges.filter((edge) => edge.letter === letter).map((edge) => ({ piece, edge })),
  );
  return own.slice(1).map((second, i) => [own[i], second]);
}

/** Stitches over the gap between pieces sewn before. */
function lace(laid: readonly FlatPiece[], joined: readonly string[]): DrawingItem[] {
  return joined.flatMap((letter) =>
    partnersOf(laid, letter).flatMap(([a, b]) => {
      const [one, other] = [a.edge.points, directed(b.edge, a.edge)];
      const count = Math.max(2, Math.round(lengthOf(one) / STITCH));
      // To and fro in one line: between stitches it runs along the edges, which are thicker.
      const rungs = Array.from({ length: count - 1 }, (_, k) => {
        const ends = [alongLine(one, (k + 1) / count), alongLine(other, (k + 1) / count)];
        return (k % 2 === 0 ? ends : ends.toReversed()).flat();
      });
      const stitches = makePath(rungs.flat(), { style: lineStyle('thin') });
      const edges = [one, other].map((points) =>
        makePath(thinLine(points, false), { style: lineStyle('outline') }),
      );
      return [...edges, stitches];
    }),
  );
}

/** Bold edges and lines, dotted lines from notch to notch with an arrow among them, letters. */
function sew(laid: readonly FlatPiece[], now: readonly string[], joined: readonly string[]): DrawingItem[] {
  const taken: [number, number][] = [];
  const discs: DrawingItem[] = [];
  const ties: DrawingItem[] = [];
  const bold: DrawingItem[] = [];
  for (const letter of now) {
    if (!joined.includes(letter)) ties.push(...partnersOf(laid, letter).flatMap(([a, b]) => tie(a, b)));
    for (const piece of laid) {
      const edges = piece.edges.filter((edge) => edge.letter === letter);
      const lines = piece.lines.filter((line) => line.letter === letter);
      bold.push(
        ...[...edges, ...lines].map(({ points }) =>
          makePath(thinLine(points, false), { style: lineStyle('bold') }),
        ),
      );
      for (const { points } of edges)
        discs.push(...placeDisc(placesBesideEdge(points, piece), letter, taken));
      for (const { points } of lines) discs.push(...placeDisc(placesOnLine(points), letter, taken));
    }
  }
  return [...ties, ...bold, ...discs];
}

/** Shares of a line at which its letter may stand, the best first: the arrow is at the middle's other side. */
const SHARES = [0.55, 0.45, 0.65, 0.35, 0.75, 0.25, 0.85, 0.15];
/** A line shorter than this has its letter beside it, mm of paper. */
const SHORT = 12;

function placesOnLine(points: Float64Array): [number, number][] {
  if (lengthOf(points) >= SHORT) return SHARES.map((share) => alongLine(points, share));
  const [[ax, ay], [bx, by]] = [alongLine(points, 0), alongLine(points, 1)];
  const length = Math.hypot(bx - ax, by - ay) || 1;
  const [nx, ny] = [(by - ay) / length, (ax - bx) / length];
  return [1, -1, 2.5, -2.5].map((k) => [(ax + bx) / 2 + k * INSIDE * nx, (ay + by) / 2 + k * INSIDE * ny]);
}

/** At the first place that is free of other letters, else at the best. */
function placeDisc(
  places: readonly [number, number][],
  letter: string,
  taken: [number, number][],
): DrawingItem[] {
  const isFree = ([x, y]: readonly number[]): boolean => {
    return taken.every(([ox, oy]) => Math.hypot(x - ox, y - oy) > 2 * DISC + 1);
  };
  const place = places.find(isFree) ?? places[0];
  taken.push(place);
  return discAt(place, letter);
}

/** From an edge so far along its tie lies beyond its allowance, mm of paper. */
const BEYOND = 3;

/** The straight way to the partner leads over the edge's own piece: its letters tell, lines would hide the piece. */
function leadsOverPiece(
  [x, y]: readonly number[],
  [toX, toY]: readonly number[],
  { cut }: FlatPiece,
): boolean {
  const share = BEYOND / (Math.hypot(toX - x, toY - y) || 1);
  return share < 0.5 && isInsidePolygon(cut, x + share * (toX - x), y + share * (toY - y));
}

/** Dotted lines between the same marks of two edges, and an arrow both ways. */
function tie({ piece, edge: one }: OwnEdge, { piece: otherPiece, edge: other }: OwnEdge): DrawingItem[] {
  const points = directed(other, one);
  const [a, b] = [alongLine(one.points, 0.4), alongLine(points, 0.4)];
  if (leadsOverPiece(a, b, piece) && leadsOverPiece(b, a, otherPiece)) return [];
  const ends = [0, 1].map((t) => [...alongLine(one.points, t), ...alongLine(points, t)]);
  const marks = one.marks.flatMap(({ number, index }) => {
    const partner = other.marks.find((mark) => mark.number === number);
    if (!partner) return [];
    const at = (edge: FlatEdge, i: number): number[] => [edge.points[2 * i], edge.points[2 * i + 1]];
    return [[...at(one, index), ...at(other, partner.index)]];
  });
  const dotted = [...ends, ...marks].map((line) => makePath(line, { style: lineStyle('seam', GHOST_DASH) }));
  const [mx, my] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const short = ([x, y]: readonly number[]): [number, number] => [x + 0.12 * (mx - x), y + 0.12 * (my - y)];
  if (Math.hypot(a[0] - b[0], a[1] - b[1]) < GAP / 2) return dotted;
  return [...dotted, ...drawArrow(mx, my, ...short(a)), ...drawArrow(mx, my, ...short(b))];
}

/** A partner's points in the order of the edge it is sewn to: the two run against each other round their pieces. */
function directed(edge: FlatEdge, to: FlatEdge): Float64Array {
  const [first, last] = [edge.marks[0], edge.marks[edge.marks.length - 1]];
  const rises = (one: FlatEdge): boolean => {
    const low = one.marks.find(({ number }) => number === first?.number);
    const high = one.marks.find(({ number }) => number === last?.number);
    return !low || !high || low.index < high.index;
  };
  const isAlike = edge.marks.length > 1 ? rises(edge) === rises(to) : false;
  return isAlike ? edge.points : turned(edge.points);
}

function turned(points: Float64Array): Float64Array {
  const back: number[] = [];
  for (let i = points.length - 2; i >= 0; i -= 2) back.push(points[i], points[i + 1]);
  return Float64Array.from(back);
}

function lengthOf(points: Float64Array): number {
  let length = 0;
  for (let i = 2; i < points.length; i += 2) {
    length += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  }
  return length;
}

/** The point at a share of a line's length. */
function alongLine(points: Float64Array, share: number): [number, number] {
  let left = share * lengthOf(points);
  for (let i = 2; i < points.length; i += 2) {
    const [dx, dy] = [points[i] - points[i - 2], points[i + 1] - points[i - 1]];
    const step = Math.hypot(dx, dy);
    if (left <= step && step > 0)
      return [points[i - 2] + (left / step) * dx, points[i - 1] + (left / step) * dy];
    left -= step;
  }
  return [points[points.length - 2], points[points.length - 1]];
}

function placesBesideEdge(points: Float64Array, piece: FlatPiece): [number, number][] {
  return SHARES.map((share) => besideEdge(points, share, piece));
}

/** Inside the piece, beside a place of its edge. */
function besideEdge(points: Float64Array, share: number, { cut }: FlatPiece): [number, number] {
  const [x, y] = alongLine(points, share);
  const [ax, ay] = alongLine(points, share - 0.05);
  const length = Math.hypot(x - ax, y - ay) || 1;
  const [nx, ny] = [-(y - ay) / length, (x - ax) / length];
  const near: [number, number] = [x + INSIDE * nx, y + INSIDE * ny];
  const far: [number, number] = [x - INSIDE * nx, y - INSIDE * ny];
  return isInsidePolygon(cut, ...near) ? near : far;
}

/** A letter on a white disc. */
function discAt([x, y]: readonly number[], letter: string): DrawingItem[] {
  const radius = DISC + (letter.length > 1 ? 0.5 : 0);
  const ring = Array.from({ length: DISC_CORNERS }, (_, k) => (2 * Math.PI * k) / DISC_CORNERS).flatMap(
    (angle) => {
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    },
  );
  const disc = makePath(ring, { closed: true, style: { ...lineStyle('thin'), fill: TINTS.paper } });
  const text = makeText(0, 0.36 * LETTER_SIZE, letter, LETTER_SIZE, { anchor: 'middle', colour: '#000000' });
  return [translateItem(disc, x, y), translateItem(text, x, y)];
}

import { boundsOfPolyline, isInsidePolygon, measureDistanceToPolyline } from '../math/index.ts';
import { draftPiece, drawTwins, findTwins, type LabelInfo, type Piece } from '../pattern/index.ts';
import { phrase } from './phrases.ts';

/** What counts as the same line, mm. */
const NEAR = 0.1;
/** A cover's edge may come out so unevenly beside its plate's and still be traced, mm: chalk draws no finer. */
const TRACED = 0.75;
/** Least width that is worth tracing round, mm. */
const LEAST_ALLOWANCE = 3;

/** A piece that ruler, compass or another piece gives as well as a drawing, and how. */
export interface ToldPiece {
  readonly piece: Piece;
  readonly how:
    | { readonly kind: 'rectangle'; readonly width: number; readonly height: number }
    | { readonly kind: 'circle'; readonly diameter: number }
    /** The same as another piece, or along the line drawn on it. */
    | { readonly kind: 'layer'; readonly of: Piece; readonly hasLine: boolean }
    /** Another piece's edge, and so much round it. */
    | { readonly kind: 'cover'; readonly of: Piece; readonly allowance: number };
}

export interface DrawnPieces {
  /** In the order given; the right one of each pair of twins stands for both. */
  readonly drawn: readonly Piece[];
  readonly told: readonly ToldPiece[];
  /** Ids of the pieces that a drawn one serves, by its own id. */
  readonly serves: ReadonlyMap<string, readonly string[]>;
}

export interface DrawnChoice {
  /** Draw right and left apart even where one drawing serves both. */
  readonly twins: 'once' | 'apart';
  /** Draw also what can be told by numbers. */
  readonly plain: 'told' | 'drawn';
}

/**
 * Which pieces need a drawing: twins need one for both, and what is a rectangle, a circle, a board's next layer or a plate's cover needs
 * none. All by measuring: what does not fit is drawn.
 */
export function chooseDrawn(pieces: readonly Piece[], info: LabelInfo, choice: DrawnChoice): DrawnPieces {
  const told = choice.plain === 'drawn' ? [] : pieces.flatMap((piece) => tellPiece(piece, pieces));
  const isTold = new Set(told.map(({ piece }) => piece.id));
  const lined = pieces
    .filter(({ id }) => !isTold.has(id))
    .map((piece) => {
      const layer = told.find(({ how }) => how.kind === 'layer' && how.hasLine && how.of.id === piece.id);
      return layer ? (withLayerLine(piece, layer.piece, info) ?? piece) : piece;
    });
  const serves = new Map(lined.map(({ id }) => [id, [id]]));
  if (choice.twins === 'apart') return { drawn: lined, told, serves };
  const drawn: (Piece | null)[] = [...lined];
  for (const { right, left, kind } of findTwins(lined)) {
    const both = drawTwins(lined[right], lined[left], kind, info);
    if (!both) continue;
    drawn[right] = both;
    drawn[left] = null;
    serves.set(both.id, [lined[right].id, lined[left].id]);
    serves.delete(lined[left].id);
  }
  return { drawn: drawn.filter((piece) => piece !== null), told, serves };
}

function tellPiece(piece: Piece, pieces: readonly Piece[]): ToldPiece[] {
  const leader = pieces.find(({ id }) => id === piece.follows?.piece);
  const how = (leader && tellByLeader(piece, leader)) ?? tellByNumbers(piece);
  return how ? [{ piece, how }] : [];
}

function tellByLeader(piece: Piece, of: Piece): ToldPiece['how'] | null {
  if (piece.follows?.how === 'cover') {
    const allowance = distanceAround(of.cutLine, piece.cutLine);
    return allowance === null ? null : { kind: 'cover', of, allowance };
  }
  const upright = turnBack(piece.cutLine);
  if (liesOn(upright, of.cutLine) && liesOn(of.cutLine, upright))
    return { kind: 'layer', of, hasLine: false };
  const sticksOut = points(upright).some(
    ([x, y]) =>
      !isInsidePolygon(of.cutLine, x, y) && measureDistanceToPolyline(of.cutLine, true, x, y) > NEAR,
  );
  return sticksOut ? null : { kind: 'layer', of, hasLine: true };
}

/** A next layer's line as it lies on the layer before: layers are drawn a quarter turned, clockwise. */
function turnBack(line: Float64Array): Float64Array {
  return line.map((_, i) => (i % 2 === 0 ? -line[i + 1] : line[i - 1]));
}

function withLayerLine(piece: Piece, layer: Piece, info: LabelInfo): Piece | null {
  if (!piece.draft) return null;
  const ring = turnBack(layer.cutLine);
  const line = Float64Array.of(...ring, ring[0], ring[1]);
  const { input, options } = piece.draft;
  const name = phrase('numbers.layer-line');
  const levelLines = [...input.levelLines, { id: 'layer-2', name, points: line }];
  const drafted = draftPiece({ ...input, levelLines }, info, options);
  return drafted.ok ? drafted.value : null;
}

function tellByNumbers(piece: Piece): ToldPiece['how'] | null {
  const { cutLine, notchPoints, cutouts, levelLines, draft } = piece;
  if (notchPoints || cutouts || !draft) return null;
  if (![...levelLines, ...(draft.input.stitchLines ?? [])].every((line) => isStraight(line.points)))
    return null;
  const { minX, minY, maxX, maxY } = boundsOfPolyline(cutLine);
  const [width, height] = [maxX - minX, maxY - minY];
  const all = points(cutLine);
  const box = Float64Array.of(minX, minY, maxX, minY, maxX, maxY, minX, maxY);
  if (liesOn(cutLine, box) && liesOn(box, cutLine)) return { kind: 'rectangle', width, height };
  const [cx, cy, radius] = [0.5 * (minX + maxX), 0.5 * (minY + maxY), 0.25 * (width + height)];
  const isRound =
    all.length > 24 && all.every(([x, y]) => Math.abs(Math.hypot(x - cx, y - cy) - radius) <= NEAR);
  return isRound ? { kind: 'circle', diameter: 2 * radius } : null;
}

/** The distance that every point of a line keeps from the closed line it goes round, or null where it keeps none. */
function distanceAround(inner: Float64Array, outer: Float64Array): number | null {
  const far = points(outer).map(([x, y]) => measureDistanceToPolyline(inner, true, x, y));
  const [least, most] = [Math.min(...far), Math.max(...far)];
  return most - least <= 2 * TRACED && least >= LEAST_ALLOWANCE ? 0.5 * (least + most) : null;
}

function liesOn(line: Float64Array, other: Float64Array): boolean {
  return points(line).every(([x, y]) => measureDistanceToPolyline(other, true, x, y) <= NEAR);
}

function points(line: Float64Array): [number, number][] {
  return Array.from({ length: line.length / 2 }, (_, i) => [line[2 * i], line[2 * i + 1]]);
}

/** Upright or level, from end to end. */
function isStraight(line: Float64Array): boolean {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(line);
  return Math.min(maxX - minX, maxY - minY) <= NEAR;
}

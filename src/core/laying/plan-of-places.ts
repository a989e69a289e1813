import { withUsual } from '../base/index.ts';
import { boundsOfPolyline, measurePolygonArea } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { placePiece } from './draw-lay.ts';
import type { Meeting, Point } from './find-meetings.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import { offRepeat } from './match-print.ts';
import type { LayRules } from './rules-of-lay.ts';
import type { KeptPlace, LaidPiece, LayPlan, PrintGap } from './types.ts';

/**
 * The plan that places kept make, as they are: nothing is moved, and what lies over another is for `findFaults` to tell. Places of
 * pieces that are no more are left out; pieces without a place are `left`. How the print goes on at the seams is measured on the cloth.
 */
export function planOfPlaces(rules: LayRules, kept: readonly KeptPlace[]): LayPlan {
  const { use, pieces, under, ground, print } = rules;
  const placed = pieces.flatMap(({ id }): LaidPiece[] => {
    const place = kept.find(({ piece }) => piece === id);
    return place ? [{ sheet: 0, isHeld: false, ...place }] : [];
  });
  const sheetsUsed = placed.length === 0 ? 0 : 1 + Math.max(...placed.map(({ sheet }) => sheet));
  const last = placed.filter(({ sheet }) => sheet === sheetsUsed - 1);
  const length = Math.max(0, ...last.map((place) => boundsOnCloth(pieces, place).maxX));
  const area = areaOf(pieces);
  const isRoll = ground.kind === 'roll';
  const sheets = ground.sheets.slice(0, sheetsUsed);
  return {
    use: use.id,
    placed,
    left: pieces.flatMap(({ id }) => (placed.some(({ piece }) => piece === id) ? [] : [id])),
    ground,
    length,
    sheetsUsed,
    area: area + areaOf([...under.values()]),
    taken: isRoll
      ? length * ground.width * (ground.isFolded ? 2 : 1)
      : sheets.reduce((sum, { outline }) => sum + Math.abs(measurePolygonArea(outline)), 0),
    bound: isRoll ? leastLength(rules, area) : 0,
    ...(ground.isFolded && { under: [...under].map(([piece, twin]) => ({ piece, twin: twin.id })) }),
    ...(print && { print: gapsOnCloth(rules, placed) }),
    evaluations: 0,
  };
}

function areaOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { cutLine }) => sum + Math.abs(measurePolygonArea(cutLine)), 0);
}

function boundsOnCloth(pieces: readonly Piece[], place: LaidPiece) {
  const piece = pieces.find(({ id }) => id === place.piece) as Piece;
  return boundsOfPolyline(placePiece(piece.cutLine, place));
}

/** No roll can be shorter: the area over its width, or the longest piece in the best of its ways. */
function leastLength({ pieces, ways, ground }: LayRules, area: number): number {
  const longest = pieces.map(({ id, cutLine }) => {
    const lengths = (ways.get(id) ?? []).map(({ angle }) => {
      const { minX, maxX } = boundsOfPolyline(placePiece(cutLine, { x: 0, y: 0, angle }));
      return maxX - minX;
    });
    return Math.min(...lengths);
  });
  return Math.max(area / ground.usableWidth, ...longest);
}

function gapsOnCloth({ meetings, stock, print: matched }: LayRules, placed: readonly LaidPiece[]) {
  const print = withUsual(LAYING_OPTIONS.print, stock.print ?? {});
  const gaps = meetings.flatMap((meeting) => {
    const [a, b] = meeting.pieces.map((id) => placed.find(({ piece }) => piece === id));
    // From side to side only what is to be met there is told.
    const isBothWays = meeting.pieces.every((id) => matched?.phases.get(id)?.across !== undefined);
    return a && b ? [gapOf(meeting, [a, b], print, isBothWays)] : [];
  });
  return {
    met: gaps.filter(({ at }) => at === print.level),
    others: gaps.filter(({ at }) => at !== print.level),
  };
}

function gapOf(
  { seam, at, pieces, points }: Meeting,
  places: readonly [LaidPiece, LaidPiece],
  repeat: Repeat,
  isBothWays: boolean,
): PrintGap {
  const [p, q] = places.map((place, side) => inPrint(points[side], place, repeat));
  return {
    seam,
    pieces,
    at,
    along: offRepeat(q[0] - p[0], repeat.along),
    across: isBothWays ? offRepeat(q[1] - p[1], repeat.across) : 0,
  };
}

/** From a motif's middle, counted backwards for a piece that lies the other way: prints met so look alike upside down. */
function inPrint(point: Point, place: LaidPiece, { firstAlong, firstAcross }: Repeat): Point {
  const [x, y] = placePiece(Float64Array.from(point), place);
  const sign = Math.sin(place.angle) > 0 ? -1 : 1;
  return [sign * (x - firstAlong), sign * (y - firstAcross)];
}

type Repeat = Readonly<Record<'along' | 'across' | 'firstAlong' | 'firstAcross', number>>;

import { type Drawing, type DrawingItem, makePath } from '../drawing/index.ts';
import { boundsOfPolyline } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { finishDrawing } from './finish-drawing.ts';
import { thinLine } from './flatten-piece.ts';
import { GHOST_DASH, lineStyle, TINTS } from './line-styles.ts';

const SCALE = 1 / 5;
/** A laced plate is drawn so wide; the cover folded round its rim, and the points of a star. mm of paper. */
const WIDE = 62;
const FOLD = 7;
const POINT = 3.5;
/** Between two threads of the lacing, and between two stitches round a rim or lid, mm of paper. */
const LACE = 3;
const STITCH = 2.6;
/** The disc under the base plate, and how far the collar reaches round the pole, mm of the thing. */
const DISC = 40;
const COLLAR = 9;

/**
 * A covered plate seen from the side that lies inside, front up: the cover folded over the board's edge and laced to and fro, and its points
 * turned out of every round hole. All plates 62 mm of paper wide.
 */
export function drawLacedPlate(board: Piece, title: string): Drawing {
  const { minX, maxX } = boundsOfPolyline(board.cutLine);
  const scale = WIDE / (maxX - minX);
  const rim = onPage(board.cutLine, 1, scale);
  const fold = drawnIn(rim, FOLD);
  const holes = (board.cutouts ?? []).map(({ id, points }) => ({ id, ring: onPage(points, 1, scale) }));
  const stars = holes.filter(({ id }) => !isSlot(id)).map(({ ring }) => ({ ring, points: starOf(ring) }));
  const blocked = [...stars.map(({ points }) => points.flat()), ...holes.map(({ ring }) => [...ring])];
  return finishDrawing(
    title,
    [
      filled(rim, 'outline', 'right'),
      filled(fold, 'seam', 'paper'),
      ...stars.flatMap(({ points }) =>
        points.map((point) => filled(Float64Array.from(point), 'seam', 'right')),
      ),
      ...holes.map(({ ring }) => filled(ring, 'seam', 'web')),
    ],
    laceAcross(fold, blocked),
  );
}

/** Tape over each face of a bound rim, and holes in it, mm of paper; the holes stand so far from the rim and from each other. */
const TAPE = 5;
const PRICK = { inside: 2.6, apart: 3.4, radius: 0.45 } as const;

/** A plate without a cover, from outside, front up: tape folded over its rim, and the holes in it through which the shell is sewn on. */
export function drawBoundPlate(board: Piece, title: string): Drawing {
  const { minX, maxX } = boundsOfPolyline(board.cutLine);
  const scale = WIDE / (maxX - minX);
  const rim = onPage(board.cutLine, 1, scale);
  const holes = (board.cutouts ?? []).map(({ points }) => onPage(points, 1, scale));
  return finishDrawing(
    title,
    [
      filled(rim, 'outline', 'web'),
      filled(drawnIn(rim, TAPE), 'seam', 'paper'),
      ...holes.map((ring) => filled(ring, 'seam', 'web')),
    ],
    pricksAlong(drawnIn(rim, PRICK.inside)),
  );
}

/**
 * The base seen from below, front up: pole, collar and disc in the middle, lids laced over the filling holes, ladder stitches round
 * the rim. A fifth of true size, mm of paper.
 */
export function drawCoveredBase(
  board: Piece,
  lids: readonly Piece[],
  poleRadius: number,
  title: string,
): Drawing {
  const rim = onPage(board.cutLine, -1);
  const holes = (board.cutouts ?? []).map(({ id, points }) => ({ id, ring: onPage(points, -1) }));
  const pole = holes.find(({ id }) => id === 'pole');
  const covered = lids.flatMap((lid) => {
    const hole = holes.find(({ id }) => lid.id === `lid-${id}`);
    return hole ? [{ hole: hole.ring, lid: centredOn(onPage(lid.cutLine, -1), hole.ring) }] : [];
  });
  const around = pole ? [DISC, poleRadius + COLLAR, poleRadius] : [];
  return finishDrawing(
    title,
    [
      filled(rim, 'outline', 'right'),
      ...covered.map(({ lid }) => filled(lid, 'outline', 'wrong')),
      ...(pole ? around.map((radius) => filled(circleOn(pole.ring, radius), 'seam', 'paper')) : []),
    ],
    [
      ...covered.map(({ hole }) => makePath(hole, { closed: true, style: lineStyle('seam', GHOST_DASH) })),
      ...[rim, ...covered.map(({ lid }) => lid)].flatMap(stitchesRound),
    ],
  );
}

function isSlot(id: string): boolean {
  return id.startsWith('tab') || id.startsWith('magnet');
}

/** `side` −1: in the mirror, as seen from below. */
function onPage(points: Float64Array, side: 1 | -1, scale = SCALE): Float64Array {
  return points.map((value, i) => (i % 2 === 0 ? side * scale * value : -scale * value));
}

function filled(points: Float64Array, width: 'seam' | 'outline', tint: keyof typeof TINTS): DrawingItem {
  return makePath(thinLine(points, true), {
    closed: true,
    style: { ...lineStyle(width), fill: TINTS[tint] },
  });
}

function middleOf(points: ArrayLike<number>): [number, number] {
  const { minX, maxX, minY, maxY } = boundsOfPolyline(points);
  return [(minX + maxX) / 2, (minY + maxY) / 2];
}

/** Every point so much nearer the middle: a scheme, no offset. */
function drawnIn(points: Float64Array, by: number): Float64Array {
  const [mx, my] = middleOf(points);
  const drawn = points.slice();
  for (let i = 0; i < points.length; i += 2) {
    const [x, y] = [points[i] - mx, points[i + 1] - my];
    const share = 1 - by / Math.hypot(x, y);
    drawn.set([mx + share * x, my + share * y], i);
  }
  return drawn;
}

/** The points of a cover cut in a star, turned out round its hole: triangles, each six numbers. */
function starOf(ring: Float64Array): number[][] {
  const [mx, my] = middleOf(ring);
  const { minX, maxX } = boundsOfPolyline(ring);
  const radius = (maxX - minX) / 2;
  const long = Math.min(POINT, radius);
  const count = Math.max(8, Math.round((1.6 * Math.PI * radius) / long));
  const at = (turn: number, r: number): number[] => {
    const angle = (2 * Math.PI * turn) / count;
    return [mx + r * Math.cos(angle), my + r * Math.sin(angle)];
  };
  return Array.from({ length: count }, (_, k) => {
    return [...at(k - 0.45, radius), ...at(k, radius + long), ...at(k + 0.45, radius)];
  });
}

/** A thread to and fro between the long edges of the fold; left out where it would run over a hole. */
function laceAcross(fold: Float64Array, blocked: readonly number[][]): DrawingItem[] {
  const { minX, maxX } = boundsOfPolyline(fold);
  const boxes = blocked.map((points) => boundsOfPolyline(points));
  const count = Math.max(2, Math.floor((maxX - minX) / LACE) - 1);
  const ends = Array.from({ length: count + 1 }, (_, k): [number, number] => {
    const x = minX + ((k + 0.5) * (maxX - minX)) / (count + 1);
    return [x, edgeAt(fold, x, k % 2 === 0)];
  });
  return ends.slice(1).flatMap((end, k) => {
    const from = ends[k];
    const runsOver = boxes.some(({ minX: left, maxX: right, minY, maxY }) =>
      Array.from({ length: 41 }, (_, i) => i / 40).some((t) => {
        const [x, y] = [from[0] + t * (end[0] - from[0]), from[1] + t * (end[1] - from[1])];
        return x > left && x < right && y > minY && y < maxY;
      }),
    );
    return runsOver ? [] : [makePath([...from, ...end], { style: lineStyle('seam') })];
  });
}

/** The upper or the lower edge of a closed outline at a place across it. */
function edgeAt(outline: Float64Array, x: number, isUpper: boolean): number {
  const ys: number[] = [];
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    const [ax, bx] = [outline[i], outline[j]];
    if (ax < x === bx < x) continue;
    ys.push(outline[i + 1] + ((x - ax) / (bx - ax)) * (outline[j + 1] - outline[i + 1]));
  }
  return isUpper ? Math.min(...ys) : Math.max(...ys);
}

function centredOn(points: Float64Array, ring: Float64Array): Float64Array {
  const [from, to] = [middleOf(points), middleOf(ring)];
  return points.map((value, i) => value + to[i % 2] - from[i % 2]);
}

function circleOn(ring: Float64Array, radius: number): Float64Array {
  const [x, y] = middleOf(ring);
  return Float64Array.from({ length: 96 }, (_, i) => {
    const angle = (2 * Math.PI * (i >> 1)) / 48;
    return i % 2 === 0 ? x + SCALE * radius * Math.cos(angle) : y + SCALE * radius * Math.sin(angle);
  });
}

/** Small round holes along a closed line. */
function pricksAlong(outline: Float64Array): DrawingItem[] {
  const pricks: DrawingItem[] = [];
  const { apart, radius } = PRICK;
  let left = apart;
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    const [ax, ay, bx, by] = [outline[i], outline[i + 1], outline[j], outline[j + 1]];
    const long = Math.hypot(bx - ax, by - ay);
    for (; left < long; left += apart) {
      const [x, y] = [ax + (left / long) * (bx - ax), ay + (left / long) * (by - ay)];
      const ring = Float64Array.from({ length: 24 }, (_, k) => {
        const angle = (Math.PI * (k >> 1)) / 6;
        return k % 2 === 0 ? x + radius * Math.cos(angle) : y + radius * Math.sin(angle);
      });
      pricks.push(makePath(ring, { closed: true, style: lineStyle('seam') }));
    }
    left -= long;
  }
  return pricks;
}

/** Short stitches across a closed edge, half of each inside. */
function stitchesRound(outline: Float64Array): DrawingItem[] {
  const stitches: DrawingItem[] = [];
  let left = STITCH;
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    const [ax, ay, bx, by] = [outline[i], outline[i + 1], outline[j], outline[j + 1]];
    const long = Math.hypot(bx - ax, by - ay);
    for (; left < long; left += STITCH) {
      const [x, y] = [ax + (left / long) * (bx - ax), ay + (left / long) * (by - ay)];
      const [nx, ny] = [(0.8 * (by - ay)) / long, (0.8 * (ax - bx)) / long];
      stitches.push(makePath([x - nx, y - ny, x + nx, y + ny], { style: lineStyle('thin') }));
    }
    left -= long;
  }
  return stitches;
}

import { cornersOfText, makeText, pageFromUpright, placePoints } from '../drawing/index.ts';
import { type Bounds, boundsOfPoints, clamp } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { TileGrid } from './plan-tiles.ts';

/** Kept between a piece and the border of its cells, mm. */
export const PIECE_GAP = 3;
/** A mark this near to a joint is hard to cut and to read, mm. */
const NEAR_JOINT = 4;
/** A label cut in two is hardest to read; a notch weighs 3. */
const LABEL_WEIGHT = 40;
/** Per radian: a slanted piece is a little harder to read. */
const TURN_WEIGHT = 30;
/** A part of a piece thinner than this tears and slips while it is joined, mm; one of no width weighs as much. */
const SLIVER = 40;
const SLIVER_WEIGHT = 120;
/** A page with less of the piece than this costs as much as another page and a little more, mm. */
const STRIP = 12;
const STRIP_COST = 1.1;
/** How far a line may reach beyond the points it is counted by, mm. */
const ROUND = 0.8;
/** Distance of the points by which the pages of an outline are counted, mm. */
const SPACING = 4;
/** Turns tried, gentlest first: every 3° to 45°, then on its side. Grain is drawn on the piece, so paper may lie as it likes. */
const TURNS = [0, ...Array.from({ length: 15 }, (_, i) => [(i + 1) * 3, -(i + 1) * 3]).flat(), 90].map(
  (degrees) => (degrees / 180) * Math.PI,
);
/** Starts tried across and down, first for every turn, then for the most promising ones. */
const COARSE = { across: 4, down: 7 };
const FINE = { across: 10, down: 20, turns: 3 };

/** A piece at its place in a block of cells; the placement brings the piece's origin there. */
export interface BlockPlace {
  readonly columns: number;
  readonly rows: number;
  /** Pages of the block that hold a part of the piece. */
  /** More by a little over one for each that would hold a strip only. */
  readonly pages: number;
  readonly placement: { readonly dx: number; readonly dy: number; readonly angle: number };
}

/**
 * The turn and place of a piece on a block of cells that needs the fewest pages, and among those the gentle turn and the
 * place where fewest notches, words and level lines lie on joints and no page gets only a sliver. Pieces whose grain must stay
 * upright are not turned. Cost about 2000 places × points of the piece, 4 mm apart.
 */
export function placeOnGrid(piece: Piece, grid: TileGrid, keepsGrain = false): BlockPlace {
  const outline = resampleRing(pageFromUpright(piece.cutLine, 0, 0), SPACING);
  const turned = (keepsGrain ? [0] : TURNS).map((angle) =>
    turnPiece(piece, outline, angle, grid, !keepsGrain),
  );
  const fewest = Math.min(...turned.map(({ columns, rows }) => columns * rows));
  // A piece that is not square to its block may leave some of more cells free. A stable sort keeps the gentlest turn first.
  const likely = turned
    .filter(({ columns, rows }) => columns * rows <= 1.5 * fewest)
    .map((candidate) => ({ candidate, place: bestPlace(candidate, grid, COARSE) }))
    .sort((a, b) => a.place.pages - b.place.pages || a.place.penalty - b.place.penalty)
    .slice(0, FINE.turns)
    .map(({ candidate }) => bestPlace(candidate, grid, FINE));
  const best = likely.reduce((a, b) => (isBetter(b, a) ? b : a));
  return keepsGrain ? best : nudge(best, piece, outline, grid);
}

/** Small turns and shifts of a place that leaves a sliver somewhere, or the place itself where none is better. */
function nudge(from: WeighedPlace, piece: Piece, outline: Float64Array, grid: TileGrid): WeighedPlace {
  let best = from;
  for (const turn of NUDGES.turns) {
    const turned = turnPiece(piece, outline, from.placement.angle + turn, grid, true);
    if (turned.columns !== from.columns || turned.rows !== from.rows) continue;
    const { minX, maxX, minY, maxY } = turned.bounds;
    const fits = (shift: number, low: number, high: number, room: number): boolean =>
      low + shift >= PIECE_GAP && high + shift <= room - PIECE_GAP;
    for (const right of NUDGES.shifts) {
      for (const down of NUDGES.shifts) {
        const [dx, dy] = [from.placement.dx + right, from.placement.dy + down];
        if (!fits(dx, minX, maxX, turned.columns * grid.cellWidth)) continue;
        if (!fits(dy, minY, maxY, turned.rows * grid.cellHeight)) continue;
        const place = weighPlace(turned, dx, dy, grid);
        if (place && isBetter(place, best)) best = place;
      }
    }
  }
  return best;
}

/** Tried round the best place, radians and mm. */
const NUDGES = {
  turns: [0, -2, 2, -1, 1].map((degrees) => (degrees / 180) * Math.PI),
  shifts: [0, -1.5, 1.5, -3, 3, -6, 6, -10, 10],
};

interface Turned {
  readonly angle: number;
  readonly ring: Float64Array;
  readonly isInside: (x: number, y: number) => boolean;
  /** Whether a page with only a strip of the piece counts for more than another page would. */
  readonly avoidsStrips: boolean;
  readonly bounds: Bounds;
  readonly columns: number;
  readonly rows: number;
  readonly delicate: readonly Delicate[];
}

function turnPiece(
  piece: Piece,
  outline: Float64Array,
  angle: number,
  grid: TileGrid,
  avoidsStrips: boolean,
): Turned {
  const ring = placePoints(outline, { dx: 0, dy: 0, angle });
  const bounds = boundsOfPoints([ring]) as Bounds;
  const columns = Math.ceil((bounds.maxX - bounds.minX + 2 * PIECE_GAP) / grid.cellWidth);
  const rows = Math.ceil((bounds.maxY - bounds.minY + 2 * PIECE_GAP) / grid.cellHeight);
  return {
    angle,
    ring,
    isInside: createInsideTest(ring, bounds),
    avoidsStrips,
    bounds,
    columns,
    rows,
    delicate: delicatePlaces(piece, angle),
  };
}

interface WeighedPlace extends BlockPlace {
  readonly penalty: number;
}

function isBetter(a: WeighedPlace, b: WeighedPlace): boolean {
  return a.pages < b.pages || (a.pages === b.pages && a.penalty < b.penalty);
}

function bestPlace(turned: Turned, grid: TileGrid, { across, down }: typeof COARSE): WeighedPlace {
  const { bounds, columns, rows } = turned;
  let best: WeighedPlace | null = null;
  for (const left of starts(
    columns * grid.cellWidth - (bounds.maxX - bounds.minX),
    columns > 1 ? across : 1,
  )) {
    for (const top of starts(rows * grid.cellHeight - (bounds.maxY - bounds.minY), rows > 1 ? down : 1)) {
      const [dx, dy] = [left - bounds.minX, top - bounds.minY];
      const place: WeighedPlace | null = weighPlace(turned, dx, dy, grid, best?.pages);
      if (place && (!best || isBetter(place, best))) best = place;
    }
  }
  return best as WeighedPlace;
}

/** The place with what speaks against it; null where it needs more than `most` pages. */
function weighPlace(
  turned: Turned,
  dx: number,
  dy: number,
  grid: TileGrid,
  most = Number.POSITIVE_INFINITY,
): WeighedPlace | null {
  const { angle, columns, rows, delicate } = turned;
  const { pages, slivers } = countPages(turned, dx, dy, grid);
  if (pages > most) return null;
  const joints = weighJoints(delicate, dx, dy, columns, rows, grid);
  const penalty = joints + SLIVER_WEIGHT * slivers + TURN_WEIGHT * Math.abs(angle);
  return { columns, rows, pages, penalty, placement: { dx, dy, angle } };
}

/** Whether points are within a ring, right to half the spacing of its rows: made once, it answers in the time of one row. */
function createInsideTest(ring: Float64Array, { minY, maxY }: Bounds): Turned['isInside'] {
  const crossings: number[][] = Array.from({ length: Math.ceil((maxY - minY) / SPACING) + 1 }, () => []);
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [ring[j], ring[j + 1], ring[i], ring[i + 1]];
    const [low, high] = [Math.min(ay, by) - minY, Math.max(ay, by) - minY];
    for (let row = Math.ceil(low / SPACING); row * SPACING < high; row++)
      crossings[row].push(ax + ((bx - ax) * (row * SPACING + minY - ay)) / (by - ay));
  }
  return (x, y) => {
    let isInside = false;
    for (const crossing of crossings[Math.round((y - minY) / SPACING)] ?? [])
      if (crossing < x) isInside = !isInside;
    return isInside;
  };
}

/** A closed line with points at most so far apart along it, corners kept. */
function resampleRing(ring: Float64Array, spacing: number): Float64Array {
  const points: number[] = [];
  let sinceLast = Number.POSITIVE_INFINITY;
  for (let i = 0, j = 2; i < ring.length; i += 2, j = (j + 2) % ring.length) {
    const [x, y] = [ring[i], ring[i + 1]];
    const length = Math.hypot(ring[j] - x, ring[j + 1] - y);
    if (sinceLast + length > spacing) {
      const steps = Math.max(1, Math.ceil(length / spacing));
      for (let k = 0; k < steps; k++)
        points.push(x + ((ring[j] - x) * k) / steps, y + ((ring[j + 1] - y) * k) / steps);
      sinceLast = length / steps;
    } else sinceLast += length;
  }
  return Float64Array.from(points);
}

/** Evenly spaced starts between the gap and the gap at the other end; the middle alone for one. */
function starts(slack: number, count: number): number[] {
  if (count === 1) return [slack / 2];
  const free = slack - 2 * PIECE_GAP;
  return Array.from({ length: count }, (_, i) => PIECE_GAP + (free * i) / (count - 1));
}

/**
 * Pages that hold a part of the ring or lie within it, and how many of those parts are slivers: 1 for a part of no width,
 * less the wider it is. A part reaches as far as the points and the corners of the cell that are in it.
 */
function countPages(
  { ring, isInside, avoidsStrips, columns, rows }: Turned,
  dx: number,
  dy: number,
  { cellWidth, cellHeight }: TileGrid,
): { readonly pages: number; readonly slivers: number } {
  if (columns * rows === 1) return { pages: 1, slivers: 0 };
  const cells = columns * rows;
  // Per cell how far the part in it reaches: left, up, right, down.
  const parts = new Float64Array(4 * cells).fill(Number.NaN);
  const reach = (cell: number, x: number, y: number): void => {
    const at = 4 * cell;
    if (!(x >= parts[at])) parts[at] = x;
    if (!(y >= parts[at + 1])) parts[at + 1] = y;
    if (!(x <= parts[at + 2])) parts[at + 2] = x;
    if (!(y <= parts[at + 3])) parts[at + 3] = y;
  };
  // Run through some thousand times a piece: nothing is put into lists here.
  for (let i = 0; i < ring.length; i += 2) {
    const x = ring[i] + dx;
    const y = ring[i + 1] + dy;
    const cell = Math.floor(y / cellHeight) * columns + Math.floor(x / cellWidth);
    reach(cell, x, y);
    if (!avoidsStrips) continue;
    // Between two points the line may still pass into the next page.
    const c0 = clamp(Math.floor((x - ROUND) / cellWidth), 0, columns - 1);
    const c1 = clamp(Math.floor((x + ROUND) / cellWidth), 0, columns - 1);
    const r0 = clamp(Math.floor((y - ROUND) / cellHeight), 0, rows - 1);
    const r1 = clamp(Math.floor((y + ROUND) / cellHeight), 0, rows - 1);
    if (c0 === c1 && r0 === r1) continue;
    for (let c = c0; c <= c1; c++)
      for (let r = r0; r <= r1; r++) if (r * columns + c !== cell) reach(r * columns + c, x, y);
  }
  for (let c = 0; c <= columns; c++) {
    for (let r = 0; r <= rows; r++) {
      const [x, y] = [c * cellWidth, r * cellHeight];
      if (!isInside(x - dx, y - dy)) continue;
      for (const [cc, rr] of [
        [c, r],
        [c - 1, r],
        [c, r - 1],
        [c - 1, r - 1],
      ])
        if (cc >= 0 && rr >= 0 && cc < columns && rr < rows) reach(rr * columns + cc, x, y);
    }
  }
  let [pages, slivers] = [0, 0];
  for (let cell = 0; cell < cells; cell++) {
    const width = Math.min(parts[4 * cell + 2] - parts[4 * cell], parts[4 * cell + 3] - parts[4 * cell + 1]);
    if (Number.isNaN(width)) continue;
    pages += avoidsStrips && width < STRIP ? 1 + STRIP_COST : 1;
    slivers += Math.max(0, 1 - width / SLIVER);
  }
  return { pages, slivers };
}

/** What should not lie on a joint, as boxes in the turned piece's coordinates with a weight. */
interface Delicate {
  readonly box: Bounds;
  readonly weight: number;
}

function delicatePlaces(piece: Piece, angle: number): Delicate[] {
  const boxOf = (points: Float64Array): Bounds =>
    boundsOfPoints([placePoints(points, { dx: 0, dy: 0, angle })]) as Bounds;
  const turn = (points: Float64Array): Float64Array => pageFromUpright(points, 0, 0);
  return [
    ...piece.notches.map(({ points }) => ({ box: boxOf(turn(points)), weight: 3 })),
    ...piece.levelLines.flatMap(({ points }) => {
      const share = 8 / (points.length / 2);
      return Array.from({ length: points.length / 2 }, (_, i) => ({
        box: boxOf(turn(points.subarray(2 * i, 2 * i + 2))),
        weight: share,
      }));
    }),
    ...labelOf(piece).map((points) => ({ box: boxOf(points), weight: LABEL_WEIGHT })),
    ...piece.texts.map(({ x, y, text, size, anchor, angle: own }) => ({
      box: boxOf(cornersOfText(makeText(x, -y, text, size, { anchor, angle: -own }))),
      weight: 4,
    })),
  ];
}

/** Corners of all rows of the label together, which is the only lettering that starts at its place; none without a label. */
function labelOf({ texts }: Piece): Float64Array[] {
  const rows = texts.filter(({ anchor }) => anchor === 'start');
  if (rows.length === 0) return [];
  const corners = rows.flatMap(({ x, y, text, size, angle }) => [
    ...cornersOfText(makeText(x, -y, text, size, { angle: -angle })),
  ]);
  return [Float64Array.from(corners)];
}

function weighJoints(
  delicate: readonly Delicate[],
  dx: number,
  dy: number,
  columns: number,
  rows: number,
  { cellWidth, cellHeight }: TileGrid,
): number {
  let sum = 0;
  for (const { box, weight } of delicate) {
    if (isOnJoint(box.minX + dx, box.maxX + dx, cellWidth, columns)) sum += weight;
    if (isOnJoint(box.minY + dy, box.maxY + dy, cellHeight, rows)) sum += weight;
  }
  return sum;
}

/** Whether a stretch on one axis comes near a joint of `count` cells of a size, mm. */
export function isOnJoint(low: number, high: number, size: number, count: number): boolean {
  const joint = Math.ceil((low - NEAR_JOINT) / size);
  return joint >= 1 && joint < count && joint * size <= high + NEAR_JOINT;
}

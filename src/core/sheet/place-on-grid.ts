import {
  type Bounds,
  boundsOfPoints,
  cornersOfText,
  makeText,
  pageFromUpright,
  placePoints,
} from '../drawing/index.ts';
import { isInsidePolygon } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { TileGrid } from './plan-tiles.ts';

/** Kept between a piece and the border of its cells, mm. */
export const PIECE_GAP = 3;
/** A mark this near to a joint is hard to cut and to read, mm. */
const NEAR_JOINT = 4;
const QUARTER = Math.PI / 2;
/** A label cut in two is hardest to read; a notch weighs 3. */
const LABEL_WEIGHT = 40;
/** Per radian: a slanted piece is a little harder to read. */
const TURN_WEIGHT = 30;
/** Turns tried, gentlest first: every 3° to 45°, then on its side. Grain is drawn on the piece, so paper may lie as it likes. */
const TURNS = [0, ...Array.from({ length: 15 }, (_, i) => [(i + 1) * 3, -(i + 1) * 3]).flat(), 90].map(
  (degrees) => (degrees / 90) * QUARTER,
);

/** A piece at its place in a block of cells; the placement brings the piece's origin there. */
export interface BlockPlace {
  readonly columns: number;
  readonly rows: number;
  /** Pages of the block that hold a part of the piece. */
  readonly pages: number;
  readonly placement: { readonly dx: number; readonly dy: number; readonly angle: number };
}

/**
 * The turn and place of a piece on a block of cells that needs the fewest pages, and among those the gentle turn and the
 * place where fewest notches, words and level lines lie on joints. Cost about 100 places × points of the piece.
 */
export function placeOnGrid(piece: Piece, grid: TileGrid): BlockPlace {
  const outline = pageFromUpright(piece.cutLine, 0, 0);
  const turned = TURNS.map((angle) => {
    const ring = placePoints(outline, { dx: 0, dy: 0, angle });
    const bounds = boundsOfPoints([ring]) as Bounds;
    const columns = Math.ceil((bounds.maxX - bounds.minX + 2 * PIECE_GAP) / grid.cellWidth);
    const rows = Math.ceil((bounds.maxY - bounds.minY + 2 * PIECE_GAP) / grid.cellHeight);
    return { angle, ring, bounds, columns, rows };
  });
  // A stable sort keeps the gentlest turn first among equals.
  const likely = turned
    .slice()
    .sort((a, b) => a.columns * a.rows - b.columns * b.rows)
    .slice(0, 3);
  let best: (BlockPlace & { readonly penalty: number }) | null = null;
  for (const candidate of likely) {
    const { angle, ring, bounds, columns, rows } = candidate;
    const delicate = delicatePlaces(piece, angle);
    for (const left of starts(columns * grid.cellWidth - (bounds.maxX - bounds.minX), columns > 1 ? 12 : 1)) {
      for (const top of starts(rows * grid.cellHeight - (bounds.maxY - bounds.minY), rows > 1 ? 30 : 1)) {
        const [dx, dy] = [left - bounds.minX, top - bounds.minY];
        const pages = columns * rows === 1 ? 1 : countPages(ring, dx, dy, columns, rows, grid);
        if (best && pages > best.pages) continue;
        const penalty = weighJoints(delicate, dx, dy, columns, rows, grid) + TURN_WEIGHT * Math.abs(angle);
        const isBetter = !best || pages < best.pages || penalty < best.penalty;
        if (isBetter) best = { columns, rows, pages, penalty, placement: { dx, dy, angle } };
      }
    }
  }
  return best as BlockPlace;
}

/** Evenly spaced starts between the gap and the gap at the other end; the middle alone for one. */
function starts(slack: number, count: number): number[] {
  if (count === 1) return [slack / 2];
  const free = slack - 2 * PIECE_GAP;
  return Array.from({ length: count }, (_, i) => PIECE_GAP + (free * i) / (count - 1));
}

/** Cells that hold a corner of the ring, or whose middle is inside it; for choosing only, so cut corners may be missed. */
function countPages(
  ring: Float64Array,
  dx: number,
  dy: number,
  columns: number,
  rows: number,
  { cellWidth, cellHeight }: TileGrid,
): number {
  const used = new Uint8Array(columns * rows);
  for (let i = 0; i < ring.length; i += 2) {
    const column = Math.floor((ring[i] + dx) / cellWidth);
    const row = Math.floor((ring[i + 1] + dy) / cellHeight);
    used[row * columns + column] = 1;
  }
  let pages = 0;
  for (let cell = 0; cell < used.length; cell++) {
    const x = ((cell % columns) + 0.5) * cellWidth - dx;
    const y = (Math.floor(cell / columns) + 0.5) * cellHeight - dy;
    if (used[cell] === 1 || isInsidePolygon(ring, x, y)) pages++;
  }
  return pages;
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

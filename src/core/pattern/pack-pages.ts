import { type Placement, placePoints } from '../drawing/index.ts';
import { findLeft, putShape, ROW, rowsOf, type Shape, type SheetRows } from './packing-rows.ts';

/** Turns tried, the easiest to read first, degrees. Grain is drawn on the piece, so paper may lie as it likes. */
const TURNS = [0, 90, -90, 180, 30, -30, 60, -60, 45, -45, 15, -15, 75, -75];

/** The grain stays upright; plain cloth may lie head up or head down. */
const ALONG_GRAIN = [0, 180];

/** One page: which outlines it holds, and where. */
export type PackedPage = readonly { readonly index: number; readonly place: Placement }[];

export interface PackedPages {
  /** What came onto each of the pages that were begun. */
  readonly added: readonly PackedPage[];
  /** By the first outline on each. */
  readonly pages: readonly PackedPage[];
  /** Outlines that fit on no page, whichever way they are turned. */
  readonly tooLarge: readonly number[];
}

/**
 * Lays outlines (closed, n × 2, page coordinates) whole on pages of one size, at least `gap` mm from each other and from the
 * edges: the largest first, each on the first page that has room for it, upright where that can be and turned rather than on a
 * page of its own (first fit decreasing, which needs at most 11/9 of the fewest bins in one dimension: Johnson, 1973). Two
 * orders are tried. `begun`: pages that hold something already, filled before others; what they take is counted from the gap inwards.
 * O(outlines · pages · turns · rows²) at worst.
 */
export function packPages(
  outlines: readonly Float64Array[],
  pageWidth: number,
  pageHeight: number,
  gap: number,
  keepsGrain = false,
  begun: readonly SheetRows[] = [],
): PackedPages {
  const turns = keepsGrain ? ALONG_GRAIN : TURNS;
  const room = { width: pageWidth - 2 * gap, height: pageHeight - 2 * gap };
  const turned = outlines.map((outline) => createTurns(outline, gap, turns));
  const fits = turned.map((shapeAt) => fitsIn(shapeAt, turns.length, room));
  const whole = outlines.map((_, i) => i).filter((i) => fits[i]);
  const byFalling = (key: (shape: Shape) => number): number[] =>
    whole.slice().sort((a, b) => key(turned[b](0)) - key(turned[a](0)) || a - b);
  const [first, second] = [
    byFalling((shape) => shape.width * shape.height),
    byFalling((shape) => Math.max(shape.width, shape.height)),
  ].map((order) => fillPages(order, turned, turns.length, room, begun));
  const chosen = second.length < first.length ? second : first;
  const placed = chosen.map((page, i) =>
    page
      .map((put) => ({
        index: put.index,
        place: placementOf(put, turned[put.index], room, i < begun.length ? 2 : page.length, gap),
      }))
      .sort((a, b) => a.index - b.index),
  );
  return {
    added: placed.slice(0, begun.length),
    pages: placed.slice(begun.length).sort((a, b) => a[0].index - b[0].index),
    tooLarge: outlines.map((_, i) => i).filter((i) => !fits[i]),
  };
}

/** Outlines that fit on no page of that size, whichever way they are turned, by index. O(points · turns). */
export function findTooLarge(
  outlines: readonly Float64Array[],
  pageWidth: number,
  pageHeight: number,
  gap: number,
  keepsGrain = false,
): number[] {
  const turns = keepsGrain ? ALONG_GRAIN : TURNS;
  const room = { width: pageWidth - 2 * gap, height: pageHeight - 2 * gap };
  return outlines.flatMap((outline, i) =>
    fitsIn(createTurns(outline, gap, turns), turns.length, room) ? [] : [i],
  );
}

function fitsIn(shapeAt: ShapeAt, turns: number, { width, height }: Room): boolean {
  for (let turn = 0; turn < turns; turn++)
    if (shapeAt(turn).width <= width && shapeAt(turn).height <= height) return true;
  return false;
}

type ShapeAt = (turn: number) => Shape;

/** Shapes of one outline by turn, made when first asked for. */
function createTurns(outline: Float64Array, gap: number, turns: readonly number[]): ShapeAt {
  const shapes: Shape[] = [];
  return (turn) => {
    shapes[turn] ??= rowsOf(placePoints(outline, { dx: 0, dy: 0, angle: radians(turns[turn]) }), gap);
    return shapes[turn];
  };
}

interface Put {
  readonly index: number;
  readonly turn: number;
  readonly x: number;
  readonly y: number;
}

interface Room {
  readonly width: number;
  readonly height: number;
}

function fillPages(
  order: readonly number[],
  turned: readonly ShapeAt[],
  turns: number,
  room: Room,
  begun: readonly SheetRows[],
): Put[][] {
  const pages: Put[][] = begun.map(() => []);
  const sheets: SheetRows[] = begun.map((sheet) => sheet.map((row) => [...(row ?? [])]));
  for (const index of order) {
    const found =
      findPage(turned[index], turns, sheets, room) ?? findPage(turned[index], turns, [...sheets, []], room);
    if (!found) continue;
    const { page, turn, x, row } = found;
    sheets[page] ??= [];
    pages[page] ??= [];
    putShape(turned[index](turn), x, row, sheets[page]);
    pages[page].push({ index, turn, x, y: row * ROW });
  }
  return pages;
}

function findPage(
  shapeAt: ShapeAt,
  turns: number,
  sheets: readonly SheetRows[],
  room: Room,
): { page: number; turn: number; x: number; row: number } | null {
  for (let turn = 0; turn < turns; turn++) {
    const shape = shapeAt(turn);
    for (const [page, sheet] of sheets.entries()) {
      for (let row = 0; row * ROW + shape.height <= room.height; row++) {
        const x = findLeft(shape, row, sheet, room.width);
        if (x !== null) return { page, turn, x, row };
      }
    }
  }
  return null;
}

/** A piece alone on its page lies in the middle. */
function placementOf(
  { turn, x, y }: Put,
  shapeAt: ShapeAt,
  room: Room,
  count: number,
  gap: number,
): Placement {
  const { minX, minY, width, height } = shapeAt(turn);
  const [left, top] = count === 1 ? [(room.width - width) / 2, (room.height - height) / 2] : [x, y];
  return { dx: gap + left - minX, dy: gap + top - minY, angle: radians(TURNS[turn]) };
}

function radians(degrees: number): number {
  return (degrees / 180) * Math.PI;
}

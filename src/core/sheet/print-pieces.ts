import { failure, type Phrase, type Result, success, verbatim, withUsual } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { arrangePieces, type Piece } from '../pattern/index.ts';
import { arrangeForTiles } from './arrange-for-tiles.ts';
import { chooseDrawn, type DrawnChoice } from './choose-drawn.ts';
import { correctPage, type PrintCorrection } from './correct-print.ts';
import { drawCautions } from './draw-cautions.ts';
import { drawCover } from './draw-cover.ts';
import { drawKey } from './draw-key.ts';
import { drawNumbers } from './draw-numbers.ts';
import { phrase } from './phrases.ts';
import { FOOTER, planTiles, type TileGrid, type TileOptions } from './plan-tiles.ts';
import { PRINT_OPTIONS } from './sheet-options.ts';
import { tileOnGrid } from './tile-drawing.ts';
import type { CellWords, PrintInfo, TiledDrawing } from './types.ts';

export interface PrintOptions extends TileOptions, Partial<DrawnChoice> {
  readonly correction?: PrintCorrection;
}

export interface PrintJob {
  /** Cover, key, cautions, then the pages of pattern, in the order to print them. */
  readonly pages: readonly Drawing[];
  /** The pages of pattern before correction, and how they join. */
  readonly tiled: TiledDrawing;
  /** What was cut into pages. */
  readonly drawing: Drawing;
}

/** Everything to print the pieces at home or on a roll. Fails when the paper cannot hold its margins or a piece. */
export function printPieces(
  pieces: readonly Piece[],
  info: PrintInfo,
  options: PrintOptions = {},
): Result<PrintJob> {
  const planned = planTiles(options);
  if (!planned.ok) return planned;
  const { correction = { x: 1, y: 1 } } = options;
  const { say } = info;

  // 1. What needs a drawing.
  const { drawn, told, serves } = chooseDrawn(pieces, info, withUsual(PRINT_OPTIONS, options));

  // 2. Lay out for the paper: as long as needed on a roll, cell by cell on sheets.
  const laid = planned.value.isRoll
    ? layOnRoll(drawn, planned.value, info)
    : success({
        ...arrangeForTiles(drawn, planned.value, info.project, say, FILLED),
        grid: planned.value,
      });
  if (!laid.ok) return laid;
  const { drawing, words, grid } = laid.value;

  // 3. Cut into pages.
  const nameByNumber = (number: string): string => say(phrase('page.name', { number }));
  const tiled = tileOnGrid(drawing, grid, { ...words, nameByNumber });
  const pagesOf = new Map(drawn.map(({ id }) => [id, pagesOfPiece(id, tiled)]));

  // 4. Cover, key, cautions and numbers.
  const height = grid.isRoll ? 297 : grid.pageHeight;
  const nameOfDrawn = (id: string): Phrase => {
    const piece = drawn.find((one) => serves.get(one.id)?.includes(id));
    return piece?.name ?? verbatim(id);
  };
  const pages = [
    drawCover(tiled, info, height, correction),
    ...drawKey(tiled, drawing, drawn, told.length, pagesOf, info, height),
    ...drawCautions(grid, info, height),
    ...drawNumbers(told, nameOfDrawn, grid, info, height),
    ...tiled.pages,
  ];
  return success({ pages: pages.map((page) => correctPage(page, correction)), tiled, drawing });
}

/** Small pieces lie also on the pages of large ones. */
const FILLED = { fillsBlocks: true } as const;

interface Laid {
  readonly drawing: Drawing;
  readonly words: CellWords;
  readonly grid: TileGrid;
}

/** How much longer pages of a roll are than their share of what one endless page would need: room for whole pieces. */
const SPARE_LENGTH = 1.06;

/** One long page where that can be; a longer layout is laid out on several, the pieces whole. */
function layOnRoll(
  pieces: readonly Piece[],
  grid: TileGrid,
  { project: title, say }: PrintInfo,
): Result<Laid> {
  const options = { sheetWidth: grid.cellWidth, gap: 5, title, turnsWide: true, say };
  const arranged = arrangePieces(pieces, options);
  if (!arranged.ok) return failure(arranged.issues.map((issue) => ({ ...issue, path: 'paper' })));
  const drawing = arranged.value;
  const ofLength = (cellHeight: number): TileGrid => {
    return { ...grid, cellHeight, pageHeight: cellHeight + grid.overlap + FOOTER + 2 * grid.margin };
  };
  if (drawing.height <= grid.cellHeight)
    return success({ drawing, words: { say }, grid: ofLength(drawing.height) });
  const share = drawing.height / Math.ceil(drawing.height / grid.cellHeight);
  const pages = ofLength(Math.min(grid.cellHeight, share * SPARE_LENGTH));
  return success({ ...arrangeForTiles(pieces, pages, title, say, FILLED), grid: pages });
}

/** Names of the pages on which a line of the piece is drawn. */
function pagesOfPiece(id: string, { tiles, pages }: TiledDrawing): string[] {
  return tiles
    .filter((_, i) =>
      pages[i].layers.some(({ items }) => items.some((item) => item.id?.startsWith(`${id}/`) === true)),
    )
    .map(({ name }) => name);
}

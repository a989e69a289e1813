import type { Say } from '../base/index.ts';
import { type Drawing, type Placement, pageFromUpright } from '../drawing/index.ts';
import { drawPieces, type Piece, packPages } from '../pattern/index.ts';
import { moveTextsOffJoints } from './move-texts-off-joints.ts';
import { PIECE_GAP, placeOnGrid } from './place-on-grid.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { CellWords } from './types.ts';

/** Cells side by side, so that the map of all pages stays readable. */
const WIDEST = 20;

/** Pieces laid out so that page borders do least harm. */
export interface TiledArrangement {
  readonly drawing: Drawing;
  /** Names of the pieces in a cell, and its block: 0 for pages of whole pieces, then one block per large piece. */
  readonly words: Required<CellWords>;
}

/**
 * Lays pieces out for a grid of pages: pieces that fit on one page share pages whole; every larger one gets its own block of
 * cells, so that only pages of one piece are joined. What is cut from cloth as it lies keeps its grain upright. Blocks stand in rows,
 * twenty cells wide. O(pieces · places tried).
 */
export function arrangeForTiles(
  pieces: readonly Piece[],
  grid: TileGrid,
  title: string,
  say: Say,
  keepsGrain = false,
): TiledArrangement {
  const outlines = pieces.map((piece) => pageFromUpright(piece.cutLine, 0, 0));
  const packed = packPages(outlines, grid.cellWidth, grid.cellHeight, PIECE_GAP, keepsGrain);
  const whole = packed.pages.map((members): Block => ({ columns: 1, rows: 1, members }));
  const blocks = [...whole, ...blocksOfLargePieces(pieces, packed.tooLarge, grid, keepsGrain)];
  const placements: Placement[] = pieces.map(() => ({ dx: 0, dy: 0 }));
  const drawn = pieces.slice();
  const cells = new Map<string, { readonly block: number; readonly names: readonly string[] }>();
  const widest = Math.max(WIDEST, ...blocks.map((block) => block.columns));
  let [column, row, rows, columns] = [0, 0, 0, 1];
  for (const [i, block] of blocks.entries()) {
    // Whole pages and large pieces start rows of their own.
    if (column + block.columns > widest || (i === whole.length && i > 0)) [column, row] = [0, rows];
    for (const { index, place, piece = pieces[index] } of block.members) {
      drawn[index] = piece;
      const { dx, dy, angle = 0 } = place;
      placements[index] = { dx: dx + column * grid.cellWidth, dy: dy + row * grid.cellHeight, angle };
    }
    const names = block.members.map(({ index }) => say(pieces[index].name));
    const number = i < whole.length ? 0 : i - whole.length + (whole.length > 0 ? 1 : 0);
    for (let c = 0; c < block.columns; c++)
      for (let r = 0; r < block.rows; r++) cells.set(`${column + c},${row + r}`, { block: number, names });
    column += block.columns;
    rows = Math.max(rows, row + block.rows);
    columns = Math.max(columns, column);
  }
  const drawing: Drawing = {
    width: columns * grid.cellWidth,
    height: Math.max(1, rows) * grid.cellHeight,
    title,
    layers: drawPieces(drawn, placements),
  };
  const words: Required<CellWords> = {
    say,
    captionOf: (c, r) => cells.get(`${c},${r}`)?.names.join(', ') ?? '',
    blockOf: (c, r) => cells.get(`${c},${r}`)?.block ?? 0,
  };
  return { drawing, words };
}

interface Block {
  readonly columns: number;
  readonly rows: number;
  readonly members: readonly { readonly index: number; readonly place: Placement; readonly piece?: Piece }[];
}

function blocksOfLargePieces(
  pieces: readonly Piece[],
  large: readonly number[],
  grid: TileGrid,
  keepsGrain: boolean,
): Block[] {
  return large.map((index): Block => {
    const place = placeOnGrid(pieces[index], grid, keepsGrain);
    const { columns, rows, placement } = place;
    const cleared = moveTextsOffJoints(pieces[index], place, grid);
    return { columns, rows, members: [{ index, place: placement, piece: cleared }] };
  });
}

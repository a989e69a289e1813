import {
  type Bounds,
  boundsOfPoints,
  type Drawing,
  type Placement,
  pageFromUpright,
} from '../drawing/index.ts';
import { drawPieces, type Piece, packOutlines } from '../pattern/index.ts';
import { moveTextsOffJoints } from './move-texts-off-joints.ts';
import { PIECE_GAP, placeOnGrid } from './place-on-grid.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { CellWords } from './types.ts';

/** Orders tried for every piece more on a page; the packing is asked once per piece and page. */
const PAGE_ATTEMPTS = 4;
/** Cells side by side, so that the map of all pages stays readable. */
const WIDEST = 14;

/** Pieces laid out so that page borders do least harm. */
export interface TiledArrangement {
  readonly drawing: Drawing;
  /** Names of the pieces in a cell, and its block: 0 for pages of whole pieces, then one block per large piece. */
  readonly words: Required<CellWords>;
}

/**
 * Lays pieces out for a grid of pages: pieces that fit on one page share pages whole; every larger one gets its own block of
 * cells, so that only pages of one piece are joined. Blocks stand in rows, fourteen cells wide. O(pieces · places tried).
 */
export function arrangeForTiles(pieces: readonly Piece[], grid: TileGrid, title: string): TiledArrangement {
  const whole = packWholePieces(pieces, grid);
  const blocks = [...whole, ...blocksOfLargePieces(pieces, grid)];
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
    const names = block.members.map(({ index }) => pieces[index].name);
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

function fitsWhole(piece: Piece, { cellWidth, cellHeight }: TileGrid): boolean {
  const { minX, minY, maxX, maxY } = boundsOfPoints([piece.cutLine]) as Bounds;
  return maxX - minX + 2 * PIECE_GAP <= cellWidth && maxY - minY + 2 * PIECE_GAP <= cellHeight;
}

function blocksOfLargePieces(pieces: readonly Piece[], grid: TileGrid): Block[] {
  return pieces.flatMap((piece, index): Block[] => {
    if (fitsWhole(piece, grid)) return [];
    const place = placeOnGrid(piece, grid);
    const { columns, rows, placement } = place;
    const cleared = moveTextsOffJoints(piece, place, grid);
    return [{ columns, rows, members: [{ index, place: placement, piece: cleared }] }];
  });
}

/** Fills one page after another; the order of the pieces is kept, so that a body half stays together. */
function packWholePieces(pieces: readonly Piece[], grid: TileGrid): Block[] {
  const outlines = pieces.map((piece) => pageFromUpright(piece.cutLine, 0, 0));
  let left = pieces.map((_, i) => i).filter((i) => fitsWhole(pieces[i], grid));
  const blocks: Block[] = [];
  while (left.length > 0) {
    const page: number[] = [];
    let places: readonly Placement[] = [];
    for (const index of left) {
      const trial = packOutlines(
        [...page, index].map((i) => outlines[i]),
        grid.cellWidth,
        PIECE_GAP,
        PAGE_ATTEMPTS,
      );
      if ('tooWide' in trial || trial.height > grid.cellHeight) continue;
      page.push(index);
      places = trial.offsets;
    }
    // The packing rounds up to its rows, which can be a little more than the page: then the piece has it alone.
    if (page.length === 0) {
      const [index] = left;
      const { minX, minY, maxX, maxY } = boundsOfPoints([outlines[index]]) as Bounds;
      page.push(index);
      places = [{ dx: (grid.cellWidth - minX - maxX) / 2, dy: (grid.cellHeight - minY - maxY) / 2 }];
    }
    blocks.push({ columns: 1, rows: 1, members: page.map((index, k) => ({ index, place: places[k] })) });
    left = left.filter((index) => !page.includes(index));
  }
  return blocks;
}

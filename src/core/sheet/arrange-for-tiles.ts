import {
  type Bounds,
  boundsOfPoints,
  type Drawing,
  type Placement,
  pageFromUpright,
} from '../drawing/index.ts';
import { drawPieces, type Piece, packOutlines } from '../pattern/index.ts';
import { PIECE_GAP, placeOnGrid } from './place-on-grid.ts';
import type { TileGrid } from './plan-tiles.ts';

/** Pieces laid out so that page borders do least harm. */
export interface TiledArrangement {
  readonly drawing: Drawing;
  /** Ids of the pieces in a cell, by `column,row`. */
  readonly piecesAt: ReadonlyMap<string, readonly string[]>;
}

/**
 * Lays pieces out for a grid of pages: pieces that fit on one page share pages whole; every larger one gets its own block of
 * cells, so that only pages of one piece are joined. Blocks stand side by side. O(pieces · places tried).
 */
export function arrangeForTiles(pieces: readonly Piece[], grid: TileGrid, title: string): TiledArrangement {
  const blocks = [...packWholePieces(pieces, grid), ...blocksOfLargePieces(pieces, grid)];
  const placements: Placement[] = pieces.map(() => ({ dx: 0, dy: 0 }));
  const piecesAt = new Map<string, string[]>();
  const rows = Math.max(1, ...blocks.map((block) => block.rows));
  let column = 0;
  let row = 0;
  let width = 0;
  for (const block of blocks) {
    if (row + block.rows > rows || block.columns > 1) {
      if (row > 0) column += width;
      row = 0;
      width = 0;
    }
    for (const { index, place } of block.members) {
      const { dx, dy, angle = 0 } = place;
      placements[index] = { dx: dx + column * grid.cellWidth, dy: dy + row * grid.cellHeight, angle };
      for (let c = 0; c < block.columns; c++) {
        for (let r = 0; r < block.rows; r++) {
          const key = `${column + c},${row + r}`;
          piecesAt.set(key, [...(piecesAt.get(key) ?? []), pieces[index].id]);
        }
      }
    }
    row += block.rows;
    width = Math.max(width, block.columns);
  }
  const drawing: Drawing = {
    width: (column + width) * grid.cellWidth,
    height: rows * grid.cellHeight,
    title,
    layers: drawPieces(pieces, placements),
  };
  return { drawing, piecesAt };
}

interface Block {
  readonly columns: number;
  readonly rows: number;
  readonly members: readonly { readonly index: number; readonly place: Placement }[];
}

function fitsWhole(piece: Piece, { cellWidth, cellHeight }: TileGrid): boolean {
  const { minX, minY, maxX, maxY } = boundsOfPoints([piece.cutLine]) as Bounds;
  return maxX - minX + 2 * PIECE_GAP <= cellWidth && maxY - minY + 2 * PIECE_GAP <= cellHeight;
}

function blocksOfLargePieces(pieces: readonly Piece[], grid: TileGrid): Block[] {
  return pieces.flatMap((piece, index): Block[] => {
    if (fitsWhole(piece, grid)) return [];
    const { columns, rows, placement } = placeOnGrid(piece, grid);
    return [{ columns, rows, members: [{ index, place: placement }] }];
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

import type { Say } from '../base/index.ts';
import { type Drawing, type Placement, pageFromUpright, placePoints } from '../drawing/index.ts';
import {
  drawPieces,
  findTooLarge,
  type PackedPage,
  type Piece,
  packPages,
  type SheetRows,
} from '../pattern/index.ts';
import type { Rectangle } from './clip-polyline.ts';
import { moveTextsOffJoints } from './move-texts-off-joints.ts';
import { type BlockPlace, PIECE_GAP, placeOnGrid } from './place-on-grid.ts';
import type { TileGrid } from './plan-tiles.ts';
import { rowsTaken, takeOfRows } from './rows-taken.ts';
import type { CellWords } from './types.ts';

/** Cells side by side, so that the map of all pages stays readable. */
const WIDEST = 20;
/** Kept free at every border inside a block for the two diamonds and for the words on the strip, mm: from the middle along it, and across. */
const DIAMOND = { along: 9, across: 12 };
const STRIP_WORDS = { along: 36, across: 6 };

/** Pieces laid out so that page borders do least harm. */
export interface TiledArrangement {
  readonly drawing: Drawing;
  /** Names of the pieces in a cell, and its block: 0 for pages of whole pieces, then one block per large piece. */
  readonly words: Required<Pick<CellWords, 'say' | 'captionOf' | 'blockOf'>>;
}

export interface TileArrangeOptions {
  /** Keep the grain upright, for what is cut from cloth as it lies. */
  readonly keepsGrain?: boolean;
  /** Lay small pieces also beside large ones. */
  readonly fillsBlocks?: boolean;
}

/**
 * Lays pieces out for a grid of pages: every piece that fits on no page gets its own block of cells, so that only pages of one piece are
 * joined; those that fit on one page share pages whole, their own or, where asked, what the blocks leave free. Blocks stand in rows, twenty
 * cells wide. O(pieces · places tried).
 */
export function arrangeForTiles(
  pieces: readonly Piece[],
  grid: TileGrid,
  title: string,
  say: Say,
  { keepsGrain = false, fillsBlocks = false }: TileArrangeOptions = {},
): TiledArrangement {
  const outlines = pieces.map((piece) => pageFromUpright(piece.cutLine, 0, 0));
  const { cellWidth, cellHeight } = grid;
  const tooLarge = findTooLarge(outlines, cellWidth, cellHeight, PIECE_GAP, keepsGrain);
  const large = tooLarge.map((index) => placeLarge(pieces[index], index, grid, keepsGrain));
  const cellsOfLarge = fillsBlocks ? large.flatMap((block) => begunCells(block, grid)) : [];
  const begun = cellsOfLarge.map(({ taken }) => taken);
  const packed = packPages(outlines, cellWidth, cellHeight, PIECE_GAP, keepsGrain, begun);
  const whole = packed.pages.map(
    (members): Block => ({ columns: 1, rows: 1, members: inCell(members, 0, 0) }),
  );
  const added = new Map<Block, Member[]>();
  for (const [i, { block, column, row }] of cellsOfLarge.entries())
    added.set(block, [...(added.get(block) ?? []), ...inCell(packed.added[i], column, row)]);
  const blocks = [...whole, ...large];

  const placements: Placement[] = pieces.map(() => ({ dx: 0, dy: 0 }));
  const drawn = pieces.slice();
  const cells = new Map<string, { readonly block: number; readonly names: readonly string[] }>();
  const widest = Math.max(WIDEST, ...blocks.map((block) => block.columns));
  let [column, row, rows, columns] = [0, 0, 0, 1];
  for (const [i, block] of blocks.entries()) {
    // Whole pages and large pieces start rows of their own.
    if (column + block.columns > widest || (i === whole.length && i > 0)) [column, row] = [0, rows];
    const members = [...block.members, ...(added.get(block) ?? [])];
    for (const { index, place, cell, piece = pieces[index] } of members) {
      drawn[index] = piece;
      const { dx, dy, angle = 0 } = place;
      const [left, top] = [column + (cell?.column ?? 0), row + (cell?.row ?? 0)];
      placements[index] = { dx: dx + left * grid.cellWidth, dy: dy + top * grid.cellHeight, angle };
    }
    const number = i < whole.length ? 0 : i - whole.length + (whole.length > 0 ? 1 : 0);
    for (let c = 0; c < block.columns; c++) {
      for (let r = 0; r < block.rows; r++) {
        const here = members.filter(({ cell }) => !cell || (cell.column === c && cell.row === r));
        const names = here.map(({ index }) => say(pieces[index].name));
        cells.set(`${column + c},${row + r}`, { block: number, names });
      }
    }
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
  const words = {
    say,
    captionOf: (c: number, r: number) => cells.get(`${c},${r}`)?.names.join(', ') ?? '',
    blockOf: (c: number, r: number) => cells.get(`${c},${r}`)?.block ?? 0,
  };
  return { drawing, words };
}

interface Block {
  readonly columns: number;
  readonly rows: number;
  readonly members: readonly Member[];
}

interface Member {
  readonly index: number;
  readonly place: Placement;
  /** The one cell of the block that holds it, from whose corner its place counts; absent for what the block was made for. */
  readonly cell?: { readonly column: number; readonly row: number };
  readonly piece?: Piece;
}

function inCell(page: PackedPage, column: number, row: number): Member[] {
  return page.map(({ index, place }) => ({ index, place, cell: { column, row } }));
}

function placeLarge(piece: Piece, index: number, grid: TileGrid, keepsGrain: boolean): Block {
  const place: BlockPlace = placeOnGrid(piece, grid, keepsGrain);
  const { columns, rows, placement } = place;
  return {
    columns,
    rows,
    members: [{ index, place: placement, piece: moveTextsOffJoints(piece, place, grid, !keepsGrain) }],
  };
}

interface BegunCell {
  readonly block: Block;
  readonly column: number;
  readonly row: number;
  readonly taken: SheetRows;
}

/** The pages of a large piece with what it takes of them, and the places where they are joined. */
function begunCells(block: Block, grid: TileGrid): BegunCell[] {
  const [{ piece, place }] = block.members;
  if (!piece) return [];
  const outline = placePoints(pageFromUpright(piece.cutLine, 0, 0), place);
  const cells: BegunCell[] = [];
  for (let column = 0; column < block.columns; column++) {
    for (let row = 0; row < block.rows; row++) {
      const taken = rowsTaken(outline, cellAt(column, row, grid), PIECE_GAP);
      if (taken.some((stretches) => stretches.length > 0)) cells.push({ block, column, row, taken });
    }
  }
  const isUsed = (column: number, row: number): boolean =>
    cells.some((cell) => cell.column === column && cell.row === row);
  for (const { column, row, taken } of cells) {
    const cell = cellAt(column, row, grid);
    for (const box of joinPlaces(cell, {
      left: isUsed(column - 1, row),
      right: isUsed(column + 1, row),
      above: isUsed(column, row - 1),
      below: isUsed(column, row + 1),
    }))
      takeOfRows(taken, box, cell, PIECE_GAP);
  }
  return cells;
}

function cellAt(column: number, row: number, { cellWidth, cellHeight }: TileGrid): Rectangle {
  const [minX, minY] = [column * cellWidth, row * cellHeight];
  return { minX, minY, maxX: minX + cellWidth, maxY: minY + cellHeight };
}

/** Where diamonds and the words beside them will stand, at the shares of the border at which they are wanted. */
function joinPlaces(
  { minX, minY, maxX, maxY }: Rectangle,
  has: { readonly left: boolean; readonly right: boolean; readonly above: boolean; readonly below: boolean },
): Rectangle[] {
  const spots = [
    { share: 0.22, ...DIAMOND },
    { share: 0.78, ...DIAMOND },
    { share: 0.5, ...STRIP_WORDS },
  ];
  return spots.flatMap(({ share, along, across }): Rectangle[] => {
    const [x, y] = [minX + share * (maxX - minX), minY + share * (maxY - minY)];
    const upright = { minY: y - along, maxY: y + along };
    const level = { minX: x - along, maxX: x + along };
    return [
      ...(has.left ? [{ ...upright, minX, maxX: minX + across }] : []),
      ...(has.right ? [{ ...upright, minX: maxX - across, maxX }] : []),
      ...(has.above ? [{ ...level, minY, maxY: minY + across }] : []),
      ...(has.below ? [{ ...level, minY: maxY - across, maxY }] : []),
    ];
  });
}

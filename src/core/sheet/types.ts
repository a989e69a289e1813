import type { DisplayUnit, Phrase, Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Rectangle } from './clip-polyline.ts';
import type { TileGrid } from './plan-tiles.ts';

/** One page of a tiled drawing. */
export interface Tile {
  /** Its number; where pages have none, the letter of its column (or block) and a number: `B3`. */
  readonly name: string;
  /** How the page is spoken of, which is read one way only however the paper lies: `page 6`. */
  readonly words: string;
  readonly column: number;
  readonly row: number;
  /** The part of the drawing this page answers for, mm in the drawing. */
  readonly cell: Rectangle;
  /** The same grown by the strips it shows of its neighbours. */
  readonly shown: Rectangle;
  /** Pages that are joined to each other have the same number. */
  readonly group: number;
  /** What is on it, in words. */
  readonly caption: string;
}

/** What is said about a cell from outside the drawing, and the words for all that is written on pages. */
export interface CellWords {
  readonly say: Say;
  /** What is on it, in words. */
  readonly captionOf?: (column: number, row: number) => string;
  /** Number of the block of cells it belongs to: pages are then named and ordered by block, A1, A2 … B1 … */
  readonly blockOf?: (column: number, row: number) => number;
  /** Pages are named by their number, so that none is called as a notch is, and are spoken of like this. */
  readonly nameByNumber?: (number: string) => string;
}

/** A border between two cells that lines of the drawing cross, so that the two pages must be joined. */
export interface Joint {
  /** From 1; printed on both pages. */
  readonly number: number;
  /** Index of the page on the left or above. */
  readonly first: number;
  /** Index of the page on the right or below, which is laid on top. */
  readonly second: number;
  /** True when the pages lie side by side. */
  readonly isUpright: boolean;
}

/** A drawing divided into cells; pages without anything on them are left out. */
export interface Division {
  readonly grid: TileGrid;
  readonly columns: number;
  readonly rows: number;
  readonly tiles: readonly Tile[];
  readonly joints: readonly Joint[];
}

export interface TiledDrawing extends Division {
  /** Parallel to `tiles`, each as large as the paper. */
  readonly pages: readonly Drawing[];
}

/** Whose pieces are printed, when, and in which words. */
export interface PrintInfo {
  readonly say: Say;
  readonly project: string;
  readonly body: string;
  readonly date: string;
  /** In which lengths are told that are drawn nowhere; centimetres as a rule. */
  readonly unit?: DisplayUnit;
  /** What must be known before anything is printed or cut, ahead of all else on the first page. */
  readonly first?: readonly Phrase[];
  /** Where the work with the pieces can hurt, printed on a page of their own. */
  readonly cautions?: readonly { readonly title: Phrase; readonly text: Phrase }[];
}

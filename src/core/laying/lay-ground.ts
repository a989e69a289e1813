import { withUsual } from '../base/index.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import type { GroundSheet, LayGround, Stock, StockPiece } from './types.ts';
import type { Use } from './uses.ts';

/** Whole sheets offered at most: more than any form takes. */
const MOST_SHEETS = 12;

/** What the pieces of a use are laid on: a roll, as many whole sheets as needed, or what one has. */
export function layGround(use: Use, stock: Stock): LayGround {
  const options = withUsual(LAYING_OPTIONS, stock);
  const width = options.stockWidth ?? use.width;
  const length = options.stockLength ?? use.length;
  const isFolded = use.isCloth && options.isFolded;
  const selvedge = use.isCloth ? options.selvedge : 0;
  const lying = isFolded ? width / 2 : width;
  const ground = {
    width: lying,
    usableFrom: selvedge,
    // The fold can be cut up to.
    usableWidth: lying - (isFolded ? 1 : 2) * selvedge,
    isFolded,
    flaws: (stock.flaws ?? []).map(flatten),
  };
  if (stock.pieces && stock.pieces.length > 0)
    return { ...ground, kind: 'sheets', sheets: stock.pieces.map(sheetOf) };
  if (length === undefined) return { ...ground, kind: 'roll', sheets: [] };
  const outline = rectangle(length, ground.usableFrom, ground.usableWidth);
  // A length of cloth is one; boards are sold by the sheet.
  const count = use.isCloth ? 1 : MOST_SHEETS;
  const sheet = { outline, flaws: ground.flaws, folds: [] };
  return { ...ground, kind: 'sheets', sheets: Array.from({ length: count }, () => sheet) };
}

function sheetOf({ outline, flaws = [], folds = [] }: StockPiece): GroundSheet {
  return { outline: flatten(outline), flaws: flaws.map(flatten), folds: folds.map(flatten) };
}

function flatten(points: readonly (readonly [number, number])[]): Float64Array {
  return Float64Array.from(points.flat());
}

function rectangle(length: number, from: number, width: number): Float64Array {
  return Float64Array.of(0, from, length, from, length, from + width, 0, from + width);
}

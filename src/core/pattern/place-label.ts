import { measureText, TEXT_ASCENT, TEXT_DESCENT } from '../drawing/index.ts';
import { type CellGrid, findFreeRectangle, measureFreeRoom } from './free-space.ts';
import type { PieceText } from './types.ts';
import { BREVITIES, type Brevity, type Wording } from './word-label.ts';

const SIZES = [6, 5, 4.5, 4, 3.5, 3, 2.5];
/** Longer labels seldom lie on one printed page, mm: taken only where nothing else fits. */
const LONGEST = 120;
/** The piece's name is this much larger than the rest. */
const TITLE_SCALE = 1.4;
const LINE_HEIGHT = 1.3;
/** From this font size down a label may be as long as it needs, mm. */
const SMALLEST_SHORTENED = 4;

export interface PlacedLabel {
  readonly texts: readonly PieceText[];
  readonly rank: LabelRank;
}

/** How good a label is: complete beats short beats the name alone, then the font size in mm counts. */
export interface LabelRank {
  readonly brevity: Brevity;
  readonly size: number;
}

/** True when `a` is the better label; no label at all is the worst. */
function isBetterLabel(a: LabelRank, b: LabelRank | null): boolean {
  if (b === null) return true;
  return a.brevity === b.brevity ? a.size > b.size : a.brevity < b.brevity;
}

/**
 * The largest label that fits into free cells, upright or turned along the piece, nearest to (x, y). Wordings
 * are tried in order at each size, short ones only when no complete one fits at any size. Null when nothing
 * legible fits, or nothing better than `toBeat`. Cost: O(cells) per size, wording and direction.
 */
export function placeLabel(
  grid: CellGrid,
  wordings: readonly Wording[],
  x: number,
  y: number,
  toBeat: LabelRank | null = null,
): PlacedLabel | null {
  const room = measureFreeRoom(grid);
  for (const brevity of BREVITIES) {
    for (const size of SIZES) {
      const rank = { brevity, size };
      if (!isBetterLabel(rank, toBeat)) break;
      for (const wording of wordings.filter((each) => each.brevity === brevity)) {
        const { width, height } = measureBlock(wording, size);
        if (Math.max(width, height) > LONGEST && size > SMALLEST_SHORTENED) continue;
        for (const isTurned of [false, true]) {
          const [across, up] = isTurned ? [height, width] : [width, height];
          const place = findFreeRectangle(grid, room, across, up, x, y);
          if (place) return { texts: writeRows(wording, size, place, isTurned, width, height), rank };
        }
      }
    }
  }
  return null;
}

function sizeOfRow(row: number, nameRows: number, size: number): number {
  return row < nameRows ? size * TITLE_SCALE : size;
}

function measureBlock({ rows, nameRows }: Wording, size: number): { width: number; height: number } {
  let width = 0;
  let height = 0;
  rows.forEach((row, i) => {
    width = Math.max(width, measureText(row, sizeOfRow(i, nameRows, size)));
    height +=
      sizeOfRow(i, nameRows, size) * (i === rows.length - 1 ? TEXT_ASCENT + TEXT_DESCENT : LINE_HEIGHT);
  });
  return { width, height };
}

function writeRows(
  { rows, nameRows }: Wording,
  size: number,
  centre: { x: number; y: number },
  isTurned: boolean,
  width: number,
  height: number,
): PieceText[] {
  let top = height / 2;
  return rows.map((text, i) => {
    const rowSize = sizeOfRow(i, nameRows, size);
    const baseline = top - TEXT_ASCENT * rowSize;
    top -= rowSize * LINE_HEIGHT;
    const start = -width / 2;
    return {
      x: centre.x + (isTurned ? -baseline : start),
      y: centre.y + (isTurned ? start : baseline),
      text,
      size: rowSize,
      anchor: 'start',
      angle: isTurned ? Math.PI / 2 : 0,
    };
  });
}

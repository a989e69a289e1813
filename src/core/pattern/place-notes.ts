import { foldText, measureText, TEXT_ASCENT, TEXT_DESCENT } from '../drawing/index.ts';
import { type CellGrid, findFreeRectangle, measureFreeRoom } from './free-space.ts';
import type { PieceText } from './types.ts';

/** Sizes tried, mm: smaller is not read at a cutting table. */
const SIZES = [4.5, 4, 3.5, 3];
/** Widths a paragraph is folded to, mm: those that lie on one printed page first. */
const WIDTHS = [150, 120, 175, 100, 80];
const LINE_HEIGHT = 1.35;

/**
 * Rows of text in a free rectangle, as large as fits, nearest to (x, y); null when they find no room. Cost: O(cells) per size and width.
 */
export function placeNotes(
  grid: CellGrid,
  notes: readonly string[],
  x: number,
  y: number,
): readonly PieceText[] | null {
  const free = measureFreeRoom(grid);
  for (const size of SIZES) {
    for (const room of WIDTHS) {
      const rows = notes.flatMap((note) => foldText(note, size, room));
      const width = Math.max(...rows.map((row) => measureText(row, size)));
      const height = ((rows.length - 1) * LINE_HEIGHT + TEXT_ASCENT + TEXT_DESCENT) * size;
      const place = findFreeRectangle(grid, free, width, height, x, y);
      if (!place) continue;
      const top = place.y + height / 2 - TEXT_ASCENT * size;
      return rows.map((text, k) => ({
        x: place.x - width / 2,
        y: top - k * LINE_HEIGHT * size,
        text,
        size,
        anchor: 'start',
        angle: 0,
        isNote: true,
      }));
    }
  }
  return null;
}

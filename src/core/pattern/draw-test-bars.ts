import { mmPerInch, type Say } from '../base/index.ts';
import { type DrawingItem, makePath, makeRectangle, makeText } from '../drawing/index.ts';
import { phrase } from './phrases.ts';

const SQUARE = 100;
const FOUR_INCHES = 4 * mmPerInch;
/** Room from one bar to the next, mm. */
const STEP = 14;
const TICK = 6;
/** Side of the square area all of it takes. */
export const TEST_BARS_SIZE = FOUR_INCHES + 2 * STEP + 8;

export interface TestBars {
  readonly marks: readonly DrawingItem[];
  readonly texts: readonly DrawingItem[];
}

/**
 * Bars of 100 mm and 4 in along both axes and a 100 mm square, with the size the whole drawing must come out at.
 * (x, y) is the top left corner of the area taken, `TEST_BARS_SIZE` square. mm, page coordinates.
 */
export function drawTestBars(
  x: number,
  y: number,
  sheetWidth: number,
  sheetHeight: number,
  say: Say,
): TestBars {
  const left = x + 2;
  const top = y + 2;
  const below = top + FOUR_INCHES;
  const beside = left + FOUR_INCHES;
  const lines = say(phrase('test-bars.how', { width: sheetWidth, height: sheetHeight })).split('\n');
  return {
    marks: [
      makeRectangle(left, top, SQUARE, SQUARE, { id: 'test/square-100' }),
      ...bar('test/bar-100-x', left, below + STEP - TICK, SQUARE, false),
      ...bar('test/bar-4in-x', left, below + 2 * STEP - TICK, FOUR_INCHES, false),
      ...bar('test/bar-100-y', beside + STEP - TICK, top, SQUARE, true),
      ...bar('test/bar-4in-y', beside + 2 * STEP - TICK, top, FOUR_INCHES, true),
    ],
    texts: [
      ...lines.map((text, i) => makeText(left + 4, top + 14 + i * 8, text, 5)),
      makeText(left + 4, below + STEP - TICK - 1.2, '100 mm', 4),
      makeText(left + 4, below + 2 * STEP - TICK - 1.2, '4 in', 4),
      makeText(beside + STEP - TICK - 1.2, top + 24, '100 mm', 4, { angle: -Math.PI / 2 }),
      makeText(beside + 2 * STEP - TICK - 1.2, top + 24, '4 in', 4, { angle: -Math.PI / 2 }),
    ],
  };
}

/** The bar itself under the id, its two end ticks under `…/tick-1` and `…/tick-2`. */
function bar(id: string, x: number, y: number, length: number, isVertical: boolean): DrawingItem[] {
  const half = TICK / 2;
  const end = isVertical ? [x, y + length] : [x + length, y];
  const tick = (px: number, py: number): number[] =>
    isVertical ? [px - half, py, px + half, py] : [px, py - half, px, py + half];
  return [
    makePath([x, y, end[0], end[1]], { id }),
    makePath(tick(x, y), { id: `${id}/tick-1` }),
    makePath(tick(end[0], end[1]), { id: `${id}/tick-2` }),
  ];
}

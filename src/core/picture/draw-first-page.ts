import type { Say } from '../base/index.ts';
import { type Drawing, makePath, makeRectangle } from '../drawing/index.ts';
import { drawMeasure } from './draw-measure.ts';
import { finishDrawing } from './finish-drawing.ts';
import { lineStyle, TINTS } from './line-styles.ts';

/** What is measured on the first printed page: two bars and a square, mm. */
export interface FirstPage {
  readonly across: number;
  readonly up: number;
  readonly square: number;
}

const SCALE = 1 / 4;
/** The page is so much wider than the bar across and higher than the bar up it, mm; places on it, mm of paper. */
const BESIDE = 30;
const OVER = 97;
const MARGIN = 3;
const BAR_TOP = 12;
const SQUARE_TOP = 17;
const LINES_APART = 3;

/** The first page with its bars and its square, and words hinted at below. A quarter of true size, mm of paper. */
export function drawFirstPage({ across, up, square }: FirstPage, title: string, say: Say): Drawing {
  const [width, height] = [SCALE * (across + BESIDE), SCALE * (up + OVER)];
  const page = makeRectangle(0, 0, width, height, { style: { ...lineStyle('outline'), fill: TINTS.paper } });
  const [long, high, side] = [SCALE * across, SCALE * up, SCALE * square];
  const right = width - MARGIN;
  const words = SQUARE_TOP + side + LINES_APART;
  const count = Math.max(0, Math.floor((height - MARGIN - words) / LINES_APART));
  return finishDrawing(
    title,
    [page],
    [
      ...drawMeasure(MARGIN, BAR_TOP - 3, long, 'across', across, say),
      ...drawMeasure(right, BAR_TOP, high, 'up', up, say),
      makeRectangle(MARGIN, SQUARE_TOP, side, side, { style: lineStyle('bold') }),
      ...drawMeasure(MARGIN, SQUARE_TOP + side / 2, side, 'across', square, say),
      ...Array.from({ length: count }, (_, k) => {
        const y = words + (k + 0.5) * LINES_APART;
        return makePath([MARGIN, y, right - (k % 3 === 2 ? 16 : 8), y], { style: lineStyle('thin') });
      }),
    ],
  );
}

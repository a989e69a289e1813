import type { Say } from '../base/index.ts';
import { type Drawing, makePath, makeRectangle } from '../drawing/index.ts';
import { drawMeasure } from './draw-measure.ts';
import { finishDrawing } from './finish-drawing.ts';
import { lineStyle, TINTS } from './line-styles.ts';

/** A twelfth of true size; the oblong's sides as shares of the square's, and the square's place on it. */
const SCALE = 1 / 12;
const OBLONG = { width: 2.1, height: 1.45 } as const;
const CORNER = { x: 0.3, y: 0.2 } as const;

/** An oblong of cloth, the square that was drawn on it before it was fused, and both ways to measure. mm of paper. */
export function drawClothSquare(side: number, title: string, say: Say): Drawing {
  const s = SCALE * side;
  const [x, y] = [CORNER.x * s, CORNER.y * s];
  const cloth = makeRectangle(0, 0, OBLONG.width * s, OBLONG.height * s, {
    style: { ...lineStyle('outline'), fill: TINTS.wrong },
  });
  const square = makePath([x, y, x + s, y, x + s, y + s, x, y + s], {
    closed: true,
    style: lineStyle('bold'),
  });
  const both = [
    ...drawMeasure(x, y + 0.8 * s, s, 'across', side, say, 0.6),
    ...drawMeasure(x + 0.2 * s, y, s, 'up', side, say, 0.4),
  ];
  return finishDrawing(title, [cloth], [square, ...both]);
}

import type { DrawingStyle } from '../drawing/index.ts';

/** Widths of lines, mm of paper: helping lines, seams, edges and outlines, what is sewn now. */
export const STROKES = { thin: 0.2, seam: 0.3, outline: 0.55, bold: 1 } as const;

/** Greys, the only colours beside black: cloth's right side, webs and ties (both sides), cloth's wrong side. */
export const TINTS = { paper: '#ffffff', right: '#f3f3f3', web: '#dcdcdc', wrong: '#bdbdbd' } as const;

/** 8 pt are 2.82 mm: nothing is smaller. */
export const LETTER_SIZE = 3.4;
export const WORD_SIZE = 2.9;

export type LineWidth = keyof typeof STROKES;
const BLACK = '#000000';

/** How the layers of a picture are drawn; lines of a layer need not say it again. */
export const PICTURE_LAYERS = {
  thin: { stroke: BLACK, strokeWidth: STROKES.thin },
  seam: { stroke: BLACK, strokeWidth: STROKES.seam },
  outline: { stroke: BLACK, strokeWidth: STROKES.outline },
  bold: { stroke: BLACK, strokeWidth: STROKES.bold },
} as const satisfies Readonly<Record<LineWidth, DrawingStyle>>;

/** A black line. */
export function lineStyle(width: LineWidth, dash?: readonly number[]): DrawingStyle {
  return { ...PICTURE_LAYERS[width], ...(dash && { dash }) };
}

/** A tint with no line round it, in a layer that draws none. */
export function tintStyle(tint: keyof typeof TINTS): DrawingStyle {
  return { fill: TINTS[tint] };
}

/** Level lines; ghosts. */
export const LEVEL_DASH = [1.4, 0.9] as const;
export const GHOST_DASH = [0.35, 0.8] as const;

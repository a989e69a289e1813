import type { DrawingStyle } from '../drawing/index.ts';

/** Widths of lines, mm of paper: helping lines, seams, edges and outlines, what is sewn now. */
export const STROKES = { thin: 0.2, seam: 0.3, outline: 0.55, bold: 1 } as const;

/** Greys, the only colours beside black: cloth's right side, webs and ties (both sides), cloth's wrong side. */
export const TINTS = { paper: '#ffffff', right: '#f3f3f3', web: '#dcdcdc', wrong: '#bdbdbd' } as const;

/** 8 pt are 2.82 mm: nothing is smaller. */
export const LETTER_SIZE = 3.4;
export const WORD_SIZE = 2.9;

/** A black line. */
export function lineStyle(width: keyof typeof STROKES, dash?: readonly number[]): DrawingStyle {
  return { stroke: '#000000', strokeWidth: STROKES[width], ...(dash && { dash }) };
}

/** A tint with no line round it. */
export function tintStyle(tint: keyof typeof TINTS): DrawingStyle {
  return { fill: TINTS[tint], stroke: 'none' };
}

/** Level lines; ghosts. */
export const LEVEL_DASH = [1.4, 0.9] as const;
export const GHOST_DASH = [0.35, 0.8] as const;

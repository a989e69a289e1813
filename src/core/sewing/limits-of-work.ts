import type { Method, Tool } from './types.ts';

/** A mouth goes so many times round its pack, to sew there and to draw out (common practice, no source). */
export const SEW_RATIO = 2;
export const DRAW_RATIO = 1.5;
/** From a seam to a free edge under the arm of a machine, the cloth flat, and rolled, mm (common practice, no source). */
export const LAP_FLAT = 150;
export const LAP_ROLLED = 450;
/** A head passes, mm: 570 round (see the tests for the surveys) and 20 of ease. */
export const HEAD_GIRTH = 590;
/** Foam is pressed together through an opening of so much of its girth (common practice, no source). */
export const FOAM_SHARE = 0.75;
/** Girth of an opening through which something inside can still be held by the fingers, mm. */
export const FINGERS_GIRTH = 240;

/** What passes which girth, and how far in it reaches, mm (common practice, no source). */
export const TOOLS: Readonly<Record<Tool, { readonly girth: number; readonly reach: number }>> = {
  fingers: { girth: FINGERS_GIRTH, reach: 100 },
  hand: { girth: 300, reach: 200 },
  arm: { girth: 360, reach: 600 },
  stick: { girth: 60, reach: 450 },
};

/**
 * Least allowance each way of joining wants, mm (common practice, no source): a flap is held under the needle alone, a laddered edge
 * is turned in and pulled; what is turned in over a plate and sewn to its cover can do with less.
 */
export const LEAST_ALLOWANCE: Readonly<Record<Method, number>> = {
  plain: 6,
  packed: 10,
  lap: 6,
  flap: 20,
  ladder: 20,
  hand: 10,
};

import type { Say } from '../base/index.ts';
import { type DrawingItem, makeText } from '../drawing/index.ts';
import { drawArrow } from './draw-arrows.ts';
import { WORD_SIZE } from './line-styles.ts';
import { phrase } from './phrases.ts';

/** Between an arrow's line and the words over it, mm of paper. */
const OVER = 1;

/**
 * An arrow with a head at both ends from a place to the right or down the page, and the length it stands for beside a share of it.
 * `way`: across the page or up it. mm of paper; `length` mm.
 */
export function drawMeasure(
  x: number,
  y: number,
  long: number,
  way: 'across' | 'up',
  length: number,
  say: Say,
  share = 0.5,
): DrawingItem[] {
  const isAcross = way === 'across';
  const at = (share: number): [number, number] => (isAcross ? [x + share * long, y] : [x, y + share * long]);
  const [wx, wy] = at(share);
  const [tx, ty] = isAcross ? [wx, wy - OVER] : [wx - OVER, wy];
  const text = makeText(tx, ty, say(phrase('picture.length', { length })), WORD_SIZE, {
    anchor: 'middle',
    colour: '#000000',
    ...(isAcross ? {} : { angle: -Math.PI / 2 }),
  });
  return [...drawArrow(...at(0.5), ...at(0)), ...drawArrow(...at(0.5), ...at(1)), text];
}

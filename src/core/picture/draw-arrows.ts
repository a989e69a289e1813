import type { Say } from '../base/index.ts';
import { type DrawingItem, makePath, makeText } from '../drawing/index.ts';
import { lineStyle, WORD_SIZE } from './line-styles.ts';
import type { Projector } from './project-camera.ts';
import type { SceneArrow } from './types.ts';

/** Length and half the width of a head, mm of paper. */
const HEAD = 2.6;
const HALF_HEAD = 1.1;
const SAMPLES = 24;

/** Arrows over the form: they hide nothing and nothing hides them. Words stand beyond the tail. */
export function drawArrows(arrows: readonly SceneArrow[], { project }: Projector, say: Say): DrawingItem[] {
  return arrows.flatMap(({ from, to, bend = 0, words }) => {
    const [ax, ay] = project(from);
    const [bx, by] = project(to);
    const text = words === undefined ? [] : wordsAt(say(words), ax, ay, bx, by);
    return [...drawArrow(ax, ay, bx, by, bend), ...text];
  });
}

/** An arrow on the page, bent to the right of its way by a share of its length. mm of paper. */
export function drawArrow(ax: number, ay: number, bx: number, by: number, bend = 0): DrawingItem[] {
  const [dx, dy] = [bx - ax, by - ay];
  const [cx, cy] = [(ax + bx) / 2 - 2 * bend * dy, (ay + by) / 2 + 2 * bend * dx];
  const count = bend === 0 ? 1 : SAMPLES;
  const at = (t: number): [number, number] => [
    (1 - t) ** 2 * ax + 2 * t * (1 - t) * cx + t * t * bx,
    (1 - t) ** 2 * ay + 2 * t * (1 - t) * cy + t * t * by,
  ];
  const length = Math.hypot(bx - cx, by - cy);
  const [ex, ey] = length > 0 ? [(bx - cx) / length, (by - cy) / length] : [1, 0];
  const neck = [bx - HEAD * ex, by - HEAD * ey];
  // The shaft ends inside the head, whose tip would else be blunt.
  const most = 1 - (0.6 * HEAD) / Math.max(Math.hypot(dx, dy), HEAD);
  const shaft = Array.from({ length: count + 1 }, (_, k) => at((most * k) / count)).flat();
  const head = [
    ...[bx, by],
    ...[neck[0] - HALF_HEAD * ey, neck[1] + HALF_HEAD * ex],
    ...[neck[0] + HALF_HEAD * ey, neck[1] - HALF_HEAD * ex],
  ];
  return [
    makePath(shaft, { style: lineStyle('outline') }),
    makePath(head, { closed: true, style: { fill: '#000000', stroke: 'none' } }),
  ];
}

function wordsAt(text: string, ax: number, ay: number, bx: number, by: number): DrawingItem[] {
  const length = Math.max(Math.hypot(bx - ax, by - ay), 1e-9);
  const [ux, uy] = [(ax - bx) / length, (ay - by) / length];
  const anchor = ux > 0.5 ? 'start' : ux < -0.5 ? 'end' : 'middle';
  const y = ay + uy * 1.6 + (uy > 0.5 ? 0.8 : uy < -0.5 ? 0 : 0.36) * WORD_SIZE;
  return [makeText(ax + ux * 1.6, y, text, WORD_SIZE, { anchor, colour: '#000000' })];
}

import type { DrawingItem } from '../drawing/index.ts';

/** Chords of the swing round a corner stay this near to their circle, mm. */
const SAGITTA = 0.005;
/** Where a line turns by less, the blade follows by itself and no swing is drawn. */
const SMALLEST_TURN = 0.02;

/**
 * The way of a dragged knife's axis, so that its tip cuts the path: the tip trails the axis by `offset` mm, so the axis runs
 * that far ahead along the direction of the cut, and swings round each corner on a circle about it while the tip stays there.
 * A closed cut goes on past its start by `overcut` mm and comes back as an open line. Texts and, with both lengths zero,
 * paths come back as they are. The knife is taken to point along the first stretch when it goes in. O(points).
 */
export function trailBlade(item: DrawingItem, offset: number, overcut: number): DrawingItem {
  if (item.kind === 'text' || (offset === 0 && overcut === 0)) return item;
  const tips = tipsOf(item.points, item.closed, overcut);
  if (tips.length < 4 || offset === 0) return { ...item, points: tips, closed: false };
  const axis: number[] = [];
  let before = Number.NaN;
  for (let i = 0; i + 3 < tips.length; i += 2) {
    const [x, y] = [tips[i], tips[i + 1]];
    const angle = Math.atan2(tips[i + 3] - y, tips[i + 2] - x);
    const turn = Number.isNaN(before) ? 0 : Math.atan2(Math.sin(angle - before), Math.cos(angle - before));
    if (Math.abs(turn) > SMALLEST_TURN) swing(axis, x, y, before, turn, offset);
    axis.push(x + offset * Math.cos(angle), y + offset * Math.sin(angle));
    axis.push(tips[i + 2] + offset * Math.cos(angle), tips[i + 3] + offset * Math.sin(angle));
    before = angle;
  }
  return { ...item, points: Float64Array.from(axis), closed: false };
}

/** Points between the ends of the arc about (x, y) from the angle `from` over `turn`. */
function swing(axis: number[], x: number, y: number, from: number, turn: number, radius: number): void {
  const largest = 2 * Math.acos(Math.max(0, 1 - SAGITTA / radius));
  const steps = Math.ceil(Math.abs(turn) / largest);
  for (let k = 1; k < steps; k++) {
    const angle = from + (turn * k) / steps;
    axis.push(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
  }
}

/** The line the tip is to follow, without repeated points; a closed one runs on over its start. */
function tipsOf(points: Float64Array, closed: boolean, overcut: number): Float64Array {
  const tips: number[] = [];
  const put = (x: number, y: number): void => {
    const end = tips.length;
    if (end === 0 || Math.hypot(tips[end - 2] - x, tips[end - 1] - y) > 1e-9) tips.push(x, y);
  };
  for (let i = 0; i < points.length; i += 2) put(points[i], points[i + 1]);
  if (!closed || points.length < 6) return Float64Array.from(tips);
  put(points[0], points[1]);
  let left = overcut;
  for (let i = 2; i < points.length && left > 0; i += 2) {
    const [ax, ay, bx, by] = [points[i - 2], points[i - 1], points[i], points[i + 1]];
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) continue;
    const part = Math.min(1, left / length);
    put(ax + part * (bx - ax), ay + part * (by - ay));
    left -= length;
  }
  return Float64Array.from(tips);
}

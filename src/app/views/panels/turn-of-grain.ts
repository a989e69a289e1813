import { clamp } from '../../../core/math/index.ts';
import { GRAIN_TURN } from '../../../core/pattern/index.ts';
import type { Numbers, Words } from '../../../language/index.ts';

/** Turns of a grain in degrees from upright, positive to the left as the piece is seen. */

/** A dragged turn this near to upright, to the bias or to crosswise jumps there, degrees. */
const CATCH = 4;
const CATCHES = [-90, -45, 0, 45, 90];
const STEP = 15;
export const MOST_TURN = degreesOf(GRAIN_TURN.max);

/** The turn a pointer means that stands `dx` to the right of the dial's middle and `dy` below it. */
export function turnTowards(dx: number, dy: number, isStepped: boolean): number {
  const deg = (Math.atan2(-dx, -dy) * 180) / Math.PI;
  // Half a turn round a grain is the same grain.
  const turn = deg > MOST_TURN ? deg - 180 : deg < -MOST_TURN ? deg + 180 : deg;
  if (isStepped) return STEP * Math.round(turn / STEP) || 0;
  return CATCHES.find((at) => Math.abs(turn - at) < CATCH) ?? (Math.round(turn) || 0);
}

/** What an arrow key makes of a turn; null when the key means something else. */
export function turnByKey(turn: number, key: string, isStepped: boolean): number | null {
  const step = isStepped ? STEP : 1;
  const by = { ArrowLeft: step, ArrowUp: step, ArrowRight: -step, ArrowDown: -step }[key];
  if (key === 'Home') return 0;
  return by === undefined ? null : clamp(turn + by, -MOST_TURN, MOST_TURN);
}

export function sayTurn(deg: number, words: Words['grain'], numbers: Pick<Numbers, 'plain'>): string {
  const size = Number(Math.abs(deg).toFixed(1));
  if (size === 0) return words.saysUpright;
  if (size === MOST_TURN) return words.saysCrosswise;
  return (deg > 0 ? words.toTheLeft : words.toTheRight)(numbers.plain(size, 1));
}

export function radiansOf(deg: number): number {
  return (deg / 180) * Math.PI;
}

export function degreesOf(radians: number): number {
  return (radians / Math.PI) * 180;
}

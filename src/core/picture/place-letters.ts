import { type DrawingItem, makePath, makeText } from '../drawing/index.ts';
import type { Bounds } from '../math/index.ts';
import { LETTER_SIZE, STROKES } from './line-styles.ts';

/** A letter and the place it is about, mm of paper. */
export interface LetteredPlace {
  readonly letter: string;
  readonly x: number;
  readonly y: number;
}

/** From the picture to the leader's end, from there to the letter, between two letters of a column, radius of the dot. mm of paper. */
const BESIDE = 3;
const TO_LETTER = 1;
const APART = 4.4;
const DOT = 0.45;

/**
 * Letters in a column left and one right of the picture, each at the height of its place as far as the others let it, with a
 * leader that ends in a dot. Sorted by height, so that no two leaders of a column cross. O(n log n).
 */
export function placeLetters(places: readonly LetteredPlace[], around: Bounds): DrawingItem[] {
  const middle = (around.minX + around.maxX) / 2;
  return (['left', 'right'] as const).flatMap((side) => {
    const own = places
      .filter(({ x }) => (side === 'left' ? x < middle : x >= middle))
      .toSorted((a, b) => a.y - b.y || a.x - b.x);
    const heights = spread(own.map(({ y }) => y));
    const sign = side === 'left' ? -1 : 1;
    const end = side === 'left' ? around.minX - BESIDE : around.maxX + BESIDE;
    return own.flatMap(({ letter, x, y }, i) => [
      makePath([x, y, end, heights[i]], { style: { stroke: '#000000', strokeWidth: STROKES.thin } }),
      dotAt(x, y),
      makeText(end + sign * TO_LETTER, heights[i] + 0.36 * LETTER_SIZE, letter, LETTER_SIZE, {
        anchor: side === 'left' ? 'end' : 'start',
        colour: '#000000',
      }),
    ]);
  });
}

/** Sorted heights moved as little as pushing neighbours apart needs: groups that touch keep their common middle. */
function spread(wanted: readonly number[]): number[] {
  const groups: { first: number; count: number; sum: number }[] = [];
  wanted.forEach((height, i) => {
    let group = { first: i, count: 1, sum: height };
    for (
      let last = groups[groups.length - 1];
      last && topOf(group) < bottomOf(last) + APART;
      last = groups[groups.length - 1]
    ) {
      groups.pop();
      group = { first: last.first, count: last.count + group.count, sum: last.sum + group.sum };
    }
    groups.push(group);
  });
  return groups.flatMap((group) => Array.from({ length: group.count }, (_, k) => topOf(group) + k * APART));
}

function topOf({ count, sum }: { count: number; sum: number }): number {
  return sum / count - ((count - 1) * APART) / 2;
}

function bottomOf(group: { count: number; sum: number }): number {
  return topOf(group) + (group.count - 1) * APART;
}

function dotAt(x: number, y: number): DrawingItem {
  const points = Array.from({ length: 8 }, (_, k) => (2 * Math.PI * k) / 8);
  return makePath(
    points.flatMap((angle) => [x + DOT * Math.cos(angle), y + DOT * Math.sin(angle)]),
    { closed: true, style: { fill: '#000000', stroke: 'none' } },
  );
}

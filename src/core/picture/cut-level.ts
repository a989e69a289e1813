import type { Say } from '../base/index.ts';
import { type Drawing, type DrawingItem, makePath, makeText } from '../drawing/index.ts';
import type { DesignedBrace, InsideShape } from '../inside/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { finishDrawing } from './finish-drawing.ts';
import { thinLine } from './flatten-piece.ts';
import { LETTER_SIZE, lineStyle, TINTS, tintStyle, WORD_SIZE } from './line-styles.ts';
import { phrase } from './phrases.ts';

export interface SectionChoices {
  readonly title: string;
  readonly say: Say;
  /** Seams that are still open at this level. */
  readonly open?: readonly string[];
  /** Seams that are lettered; usual: all. */
  readonly lettered?: readonly string[];
  /** Where allowances of sewn seams are pressed: open as a rule, or both to one side. */
  readonly pressed?: 'open' | 'to-front' | 'to-back';
  /**
   * The rest of the form, rolled up and packed into the cell at that side; `middle`: both sides, each rolled onto the middle of the
   * front, between the webs. A scheme: it needs words beside it.
   */
  readonly roll?: 'right' | 'left' | 'middle';
}

const SIXTH = 1 / 6;
/** Seen from above, the front at the bottom: the wearer's right lies on the left. */
const toPage = (x: number, y: number): [number, number] => [-SIXTH * x, SIXTH * y];
/** Length of an allowance, and how far inside the shell it is drawn, mm of paper. */
const ALLOWANCE = 2.6;
const INSIDE = 0.9;
/** Half the gap of an open seam, mm of paper. */
const OPEN = 1.4;
/** Letters stand so far outside. */
const OUTSIDE = 4;
const LEVEL_NEAR = 30;

/**
 * The form cut level, from above: shell with its allowances pressed open (standing inwards where a seam is open), webs, ties
 * and straps, sleeve and pole. A sixth of true size, mm of paper. An unknown level gives an empty drawing.
 */
export function cutLevel(
  shell: SeamedShell,
  shape: InsideShape | undefined,
  level: string,
  choices: SectionChoices,
): Drawing {
  const { title, say, open = [], lettered, roll, pressed = 'open' } = choices;
  const loop = shell.levels.find(({ id }) => id === level)?.vertices ?? new Uint32Array();
  const { positions } = shell.mesh;
  const ring = Array.from(loop, (v) => toPage(positions[3 * v], positions[3 * v + 1]));
  if (ring.length < 3) return finishDrawing(title, [], []);
  const crossed = crossingsOf(shell, loop);
  const isOpen = (id: string): boolean => open.includes(id);
  const walls = wallsOf(
    ring,
    crossed.filter(({ id }) => isOpen(id)).map(({ index }) => index),
  );
  const lines = [
    ...walls.map((points) => {
      const closed = points.length === 2 * ring.length;
      const line = closed ? points : thinLine(Float64Array.from(points), false);
      return makePath(line, { closed, style: lineStyle('outline') });
    }),
    ...crossed.flatMap(({ id, letter, index }) => [
      ...(isOpen(id) ? turnedInAt(ring, index) : pressedAt(ring, index, pressed)),
      ...(lettered && !lettered.includes(id) ? [] : [letterAt(ring, index, letter)]),
    ]),
    ...frontMark(ring, say),
  ];
  const inside = [
    makePath(thinLine(Float64Array.from(ring.flat()), true), { closed: true, style: tintStyle('right') }),
    ...bracesAt(shape, heightOf(shell, loop), open),
    ...poleOf(shape),
    ...(roll ? rollIn(ring, roll, say) : []),
  ];
  return finishDrawing(title, inside, lines);
}

interface Crossing {
  readonly id: string;
  readonly letter: string;
  /** Into the loop. */
  readonly index: number;
}

function crossingsOf({ seams }: SeamedShell, loop: Uint32Array): Crossing[] {
  const indexOf = new Map(Array.from(loop, (vertex, index): [number, number] => [vertex, index]));
  return seams.flatMap(({ id, letter, isLevel, points }) => {
    const vertex = isLevel ? undefined : points.find((point) => indexOf.has(point));
    return vertex === undefined ? [] : [{ id, letter, index: indexOf.get(vertex) ?? 0 }];
  });
}

function heightOf({ mesh: { positions } }: SeamedShell, loop: Uint32Array): number {
  return loop.reduce((sum, v) => sum + positions[3 * v + 2], 0) / loop.length;
}

/** The loop, cut open at these points; whole without any. */
function wallsOf(ring: Page, cuts: readonly number[]): number[][] {
  if (cuts.length === 0) return [ring.flat()];
  const sorted = cuts.toSorted((a, b) => a - b);
  return sorted
    .map((from, k) => {
      const to = sorted[(k + 1) % sorted.length];
      const count = to > from ? to - from : to + ring.length - from;
      const points = Array.from({ length: count + 1 }, (_, i) => ring[(from + i) % ring.length]);
      return points.filter((point) => {
        return [from, to].every(
          (cut) => Math.hypot(point[0] - ring[cut][0], point[1] - ring[cut][1]) >= OPEN,
        );
      });
    })
    .map((points) => points.flat());
}

/** Along the loop and into it, unit vectors on the page. */
function frameAt(ring: Page, index: number): { along: number[]; into: number[] } {
  const count = ring.length;
  const [a, b] = [ring[(index + count - 2) % count], ring[(index + 2) % count]];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const [x, y] = ring[index];
  const [mx, my] = middleOf(ring);
  const sign = -along[1] * (mx - x) + along[0] * (my - y) >= 0 ? 1 : -1;
  return { along, into: [-sign * along[1], sign * along[0]] };
}

function middleOf(ring: Page): [number, number] {
  const sum = ring.reduce(([sx, sy], [x, y]) => [sx + x, sy + y], [0, 0]);
  return [sum[0] / ring.length, sum[1] / ring.length];
}

type Page = readonly (readonly number[])[];

/** A fine line through places given along the loop and into it from one of its points. */
function lineAt(ring: Page, index: number, places: readonly (readonly [number, number])[]): DrawingItem {
  const [x, y] = ring[index];
  const { along, into } = frameAt(ring, index);
  const points = places.flatMap(([a, i]) => [x + a * along[0] + i * into[0], y + a * along[1] + i * into[1]]);
  return makePath(points, { style: lineStyle('seam') });
}

/** The two edges of an open seam, each turned in. */
function turnedInAt(ring: Page, index: number): DrawingItem[] {
  return [OPEN, -OPEN].map((at) =>
    lineAt(ring, index, [
      [at, 0],
      [at, ALLOWANCE],
    ]),
  );
}

/** The two allowances of a sewn seam, inside the shell; to one side they lie on each other. */
function pressedAt(
  ring: Page,
  index: number,
  pressed: NonNullable<SectionChoices['pressed']>,
): DrawingItem[] {
  const { along } = frameAt(ring, index);
  // Down the page is to the front.
  const toFront = along[1] > 0 ? 1 : -1;
  const side = pressed === 'to-front' ? toFront : -toFront;
  const ways = pressed === 'open' ? [1, -1] : [side, side];
  return ways.map((way, k) => {
    const depth = pressed === 'open' ? INSIDE : INSIDE * (1 + 0.7 * k);
    return lineAt(ring, index, [
      [0, 0],
      [0.5 * way, depth],
      [ALLOWANCE * way, depth],
    ]);
  });
}

function letterAt(ring: Page, index: number, letter: string): DrawingItem {
  const { into } = frameAt(ring, index);
  const [x, y] = ring[index];
  return makeText(x - OUTSIDE * into[0], y - OUTSIDE * into[1] + 0.36 * LETTER_SIZE, letter, LETTER_SIZE, {
    anchor: 'middle',
    colour: '#000000',
  });
}

/** Each brace at the height, if it has a rung near it; none that is to be sewn to an open seam. */
function bracesAt(shape: InsideShape | undefined, z: number, open: readonly string[]): DrawingItem[] {
  return (shape?.braces ?? []).flatMap((brace) => {
    if (brace.from.seams.some(({ id }) => open.includes(id))) return [];
    const rung = nearestRung(brace, z);
    if (!rung) return [];
    const points = [...toPage(rung.from[0], rung.from[1]), ...toPage(rung.to[0], rung.to[1])];
    return [makePath(points, { style: lineStyle('outline', brace.kind === 'strap' ? [1.6, 1] : undefined) })];
  });
}

function nearestRung({ rungs }: DesignedBrace, z: number): DesignedBrace['rungs'][number] | undefined {
  const sorted = rungs.toSorted((a, b) => Math.abs(a.z - z) - Math.abs(b.z - z));
  return Math.abs((sorted[0]?.z ?? Infinity) - z) < LEVEL_NEAR ? sorted[0] : undefined;
}

function circle(x: number, y: number, radius: number, fill: string): DrawingItem {
  const ring = Array.from({ length: 32 }, (_, k) => (2 * Math.PI * k) / 32).flatMap((angle) => {
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  return makePath(ring, { closed: true, style: { ...lineStyle('seam'), fill } });
}

function poleOf(shape: InsideShape | undefined): DrawingItem[] {
  if (!shape) return [];
  const [x, y] = toPage(0, shape.pole.y);
  const radius = SIXTH * shape.pole.radius;
  return [circle(x, y, radius + 0.8, TINTS.web), circle(x, y, radius, TINTS.paper)];
}

const TURNS = 4;
const A_TURN = 16;
/** Radius of a roll as a share of the way from the middle to the side; of two of them. */
const ROLL_SHARE = 0.22;
const ROLLS_SHARE = 0.19;
/** Between two rolls, mm of paper. */
const ROLLS_APART = 1.6;

/** A spiral between the middle and one side or one on both sides of the front's middle, with words under the section. */
function rollIn(ring: Page, where: NonNullable<SectionChoices['roll']>, say: Say): DrawingItem[] {
  const [mx, my] = middleOf(ring);
  const xs = ring.map(([x]) => x);
  const half = (Math.max(...xs) - Math.min(...xs)) / 2;
  if (where !== 'middle') {
    const x = mx + (where === 'right' ? -0.62 : 0.62) * half;
    return [
      ...wordsUnder(ring, x, my, say(phrase('picture.roll'))),
      ...spiralAt(x, my, ROLL_SHARE * half, 1),
    ];
  }
  const front = Math.max(...ring.filter(([x]) => Math.abs(x - mx) < 0.3 * half).map(([, y]) => y));
  const radius = Math.min(ROLLS_SHARE * half, 0.45 * (front - my));
  const y = front - 1.3 * radius;
  const off = radius + ROLLS_APART / 2;
  return [
    ...wordsUnder(ring, mx - off, y, say(phrase('picture.rolls'))),
    ...[-1, 1].flatMap((side) => spiralAt(mx + side * off, y, radius, side)),
  ];
}

/** A rolled up cloth, seen from its end. */
function spiralAt(x: number, y: number, radius: number, way: number): DrawingItem[] {
  const spiral = Array.from({ length: A_TURN * TURNS + 1 }, (_, k) => {
    const [angle, r] = [(2 * Math.PI * k) / A_TURN, (radius * k) / (A_TURN * TURNS)];
    return [x + way * r * Math.cos(angle), y + r * Math.sin(angle)];
  });
  return [circle(x, y, radius, TINTS.wrong), makePath(spiral.flat(), { style: lineStyle('seam') })];
}

/** A leader from a place down to its words below the front's. */
function wordsUnder(ring: Page, x: number, y: number, text: string): DrawingItem[] {
  const words = underRing(ring);
  return [
    makePath([x, y, x, words + 2 + 1.3 * WORD_SIZE], { style: lineStyle('thin') }),
    makeText(x, words + 2.4 + 2.3 * WORD_SIZE, text, WORD_SIZE, { anchor: 'middle', colour: '#000000' }),
  ];
}

/** Where words begin under the section, past its letters. */
function underRing(ring: Page): number {
  return Math.max(...ring.map(([, y]) => y)) + OUTSIDE + 3;
}

/** A triangle that points to the front, and the word. */
function frontMark(ring: Page, say: Say): DrawingItem[] {
  const [x] = middleOf(ring);
  const y = underRing(ring);
  const word = say(phrase('picture.front'));
  return [
    makePath([x - 1.2, y, x + 1.2, y, x, y + 1.8], {
      closed: true,
      style: { fill: '#000000', stroke: 'none' },
    }),
    makeText(x, y + 2.4 + WORD_SIZE, word, WORD_SIZE, { anchor: 'middle', colour: '#000000' }),
  ];
}

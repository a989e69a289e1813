import { makeOval } from './make-oval.ts';
import { shiftOfStrap } from './place-braces.ts';
import type { BraceRung, DesignedBrace } from './types.ts';
import type { FlatStrip } from './unroll-strip.ts';

/** Half height of an opening for fill, mm, and of a slot that a strap passes. */
const OPENING_HALF = 27;
const PASSAGE_HALF = 32;
const WIDEST_HALF = 40;
/** Cloth kept beside an opening, mm, and from it to its reinforcing stitches. */
const OPENING_MARGIN = 18;
const REINFORCED = 5;
/** Cloth kept between two openings, mm: two rows of reinforcing stitches and as much between. */
export const LEAST_BETWEEN = 3 * REINFORCED;
/** Cloth kept between an opening and the seam or hem beside it, mm: the stitches and as much again. */
export const LEAST_BESIDE = 2 * REINFORCED;
/** Part of its height over which a brace may be open: it pulls across, from seam to seam, over the rest alone. Ours. */
export const MOST_OPEN = 0.6;
/** From an opening to the hemmed top and bottom, mm. */
const END_MARGIN = 14;
/** Room beside a strap in its slot, mm. */
const STRAP_ROOM = 12;

export interface WebOpening {
  readonly id: string;
  /** Counted from below. */
  readonly number: number;
  readonly outline: Float64Array;
  readonly reinforced: Float64Array;
  readonly low: number;
  readonly high: number;
  /** Where straps pass; absent from openings for fill. */
  readonly passage?: Passage;
}

/** A place where a strap passes, or several together: the level, and where on the way across the web, 0 at its left edge. */
export interface Passage {
  readonly levelId: string;
  readonly from: number;
  readonly to: number;
}

interface Wanted {
  readonly low: number;
  readonly high: number;
  readonly passage?: Passage;
  /** Of the web there, mm. */
  readonly width?: number;
}

/** Where straps cross a web. */
export function passagesOf(web: DesignedBrace, braces: readonly DesignedBrace[]): Passage[] {
  if (web.kind !== 'web') return [];
  return web.rungs.flatMap((rung): Passage[] => {
    const { levelId } = rung;
    if (levelId === undefined) return [];
    return braces.flatMap((brace): Passage[] => {
      if (brace.kind !== 'strap' || brace.side !== web.side) return [];
      const own = brace.rungs.find((one) => one.levelId === levelId);
      if (!own) return [];
      const share = shareOfCrossing(rung, own);
      return [{ levelId, from: share, to: share }];
    });
  });
}

/** How far along the web's rung the strap's rung crosses it, seen from above. */
function shareOfCrossing(web: BraceRung, strap: BraceRung): number {
  const [dx, dy] = [web.to[0] - web.from[0], web.to[1] - web.from[1]];
  const [ex, ey] = [strap.to[0] - strap.from[0], strap.to[1] - strap.from[1]];
  const [px, py] = [strap.from[0] - web.from[0], strap.from[1] - web.from[1]];
  return (px * ey - py * ex) / (dx * ey - dy * ex);
}

/** Slots where straps pass (one where two would meet), and openings for fill between any two levels far enough apart. */
export function placeOpenings(
  brace: DesignedBrace,
  strip: FlatStrip,
  passages: readonly Passage[],
): WebOpening[] {
  if (brace.kind === 'strap') return [];
  const { rungs } = brace;
  const heights = rungs.map((_, k) => 0.5 * (strip.left[2 * k + 1] + strip.right[2 * k + 1]));
  const [bottom, top] = [heights[0], heights[heights.length - 1]];
  const passing = rungs.flatMap(({ levelId, length }, k): Wanted[] =>
    passages
      .filter((one) => one.levelId === levelId)
      .map((passage) => {
        const y = heights[k] + shiftOfStrap(passage.levelId);
        const half = Math.min(PASSAGE_HALF, y - bottom - END_MARGIN, top - y - END_MARGIN);
        return { low: y - half, high: y + half, passage, width: length };
      }),
  );
  const passed = passing.reduce<Wanted[]>(joinNear, []);
  // Where a tie goes on over the uppermost level, into the nape, it is narrow, and the hand comes by on both sides.
  const last = brace.kind === 'tie' ? 0 : rungs.length - 1;
  const isStop = (k: number): boolean => rungs[k].levelId !== undefined || k === 0 || k === last;
  const stops = heights.filter((_, k) => isStop(k));
  const filling = leaveEnough(openingsForFill(stops, passed), passed, top - bottom);
  const openings = [...passed, ...filling].sort((a, b) => a.low - b.low);
  return openings.flatMap((wanted, i) => drawOpening(wanted, i + 1, strip, heights) ?? []);
}

/** Two slots with too little cloth between, both ways, become one, and that one with any other too near to it. */
function joinNear(joined: readonly Wanted[], next: Wanted): Wanted[] {
  const isNear = (one: Wanted): boolean =>
    Math.max(next.low - one.high, one.low - next.high) < LEAST_BETWEEN && gapAcross(one, next) < 0;
  const near = joined.find(isNear);
  if (!next.passage || !near?.passage) return [...joined, next];
  const [own, other] = [next.passage, near.passage];
  const passage = { ...own, from: Math.min(own.from, other.from), to: Math.max(own.to, other.to) };
  const [low, high] = [Math.min(next.low, near.low), Math.max(next.high, near.high)];
  return joinNear(
    joined.filter((one) => one !== near),
    { ...next, low, high, passage },
  );
}

/** Cloth left between two slots side by side, with the least wanted taken off, mm. */
function gapAcross(one: Wanted, other: Wanted): number {
  const [a, b] = [one.passage, other.passage];
  if (!a || !b) return 0;
  const apart = Math.max(a.from - b.to, b.from - a.to) * (one.width ?? 0);
  return apart - 2 * STRAP_ROOM - OPENING_MARGIN;
}

/** Between neighbouring levels, where no strap passes. */
function openingsForFill(stops: readonly number[], passed: readonly Wanted[]): Wanted[] {
  return stops.slice(1).flatMap((end, i): Wanted[] => {
    let [low, high] = [stops[i], end];
    for (const hole of passed) {
      if (hole.low <= low && hole.high > low) low = hole.high + 10;
      if (hole.high >= high && hole.low < high) high = hole.low - 10;
    }
    const room = high - low;
    const count = Math.max(0, Math.floor(room / (2 * OPENING_HALF + OPENING_MARGIN)));
    return Array.from({ length: count }, (_, c) => {
      const y = low + (room * (c + 0.5)) / count;
      return { low: y - OPENING_HALF, high: y + OPENING_HALF };
    });
  });
}

/** Openings for fill made less high where, with the slots, they would open the brace over too much of its height. */
function leaveEnough(filling: readonly Wanted[], passed: readonly Wanted[], height: number): Wanted[] {
  const slots = passed.reduce((sum, { low, high }) => sum + high - low, 0);
  const half = (MOST_OPEN * height - slots) / (2 * filling.length);
  if (half >= OPENING_HALF) return [...filling];
  return filling.map(({ low, high }) => {
    const y = 0.5 * (low + high);
    return { low: y - half, high: y + half };
  });
}

/** The opening as an oval in the middle of the web, or where straps pass; null where it has no room. */
function drawOpening(
  { low, high, passage }: Wanted,
  number: number,
  strip: FlatStrip,
  heights: readonly number[],
): WebOpening | null {
  const [y, half] = [0.5 * (low + high), 0.5 * (high - low)];
  const k = heights.findIndex((height) => height >= y);
  if (k <= 0 || half < 12) return null;
  const t = (y - heights[k - 1]) / (heights[k] - heights[k - 1]);
  const edge = (points: Float64Array): number => (1 - t) * points[2 * k - 2] + t * points[2 * k];
  const [left, right] = [edge(strip.left), edge(strip.right)];
  const width = right - left;
  // A strap stands upright in its opening, so a narrow slot does, and the web loses little.
  const usual = Math.min(WIDEST_HALF, 0.5 * width - OPENING_MARGIN);
  const x = left + (passage ? 0.5 * (passage.from + passage.to) : 0.5) * width;
  const halfWidth = passage ? STRAP_ROOM + 0.5 * (passage.to - passage.from) * width : usual;
  if (halfWidth < 12) return null;
  return {
    id: `opening-${number}`,
    number,
    outline: makeOval(x, y, halfWidth, half),
    reinforced: makeOval(x, y, halfWidth + REINFORCED, half + REINFORCED, true),
    low: low - REINFORCED,
    high: high + REINFORCED,
    ...(passage && { passage }),
  };
}

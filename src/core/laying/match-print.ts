import { type OptionsOf, withUsual } from '../base/index.ts';
import type { Meeting, Point } from './find-meetings.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import type { PrintGap } from './types.ts';

export type ClothPrint = OptionsOf<(typeof LAYING_OPTIONS)['print']>;

/** Where the middle of a motif is to lie on a piece: a point of it, in its own coordinates. */
export interface MotifPlace {
  readonly piece: string;
  readonly point: Point;
}

/**
 * Where a piece lies in the print: with its top to the far end, its origin is `along` and `across` from the middle of a motif, in the
 * cloth's axes. mm; only what is left after whole repeats counts. Without `across` it lies anywhere that way.
 */
export interface Phase {
  readonly along: number;
  readonly across?: number;
}

export interface MatchedPrint {
  /** By piece; those that no seam joins to a motif's place are absent and lie anywhere. */
  readonly phases: ReadonlyMap<string, Phase>;
  /** At the level where the print is to go on, all seams; and all other marks. */
  readonly met: readonly PrintGap[];
  readonly others: readonly PrintGap[];
}

/** How a print is carried over seams; undefined where it is not. */
export function wayOfMeeting(print: ClothPrint): 'byHeight' | 'bothWays' | undefined {
  const { kind, meets } = withUsual(LAYING_OPTIONS.print, print);
  if (kind === 'plain' || meets === 'no') return undefined;
  return meets ?? (kind === 'checks' ? 'bothWays' : 'byHeight');
}

/**
 * Carries a print from where its motif is to be over the seams, so that it goes on at the chosen level: each piece takes its phase
 * from one beside it, all that can at that level, then the others at other marks. One shift a piece can meet one mark; the seams that
 * close a ring, and all other marks, get what is left, and that is told. Breadth first from the motif's places, so that both halves
 * come round to the centre back alike. By height alone, a piece is free from side to side unless it shares a motif's place.
 * O(meetings · pieces).
 */
export function matchPrint(
  meetings: readonly Meeting[],
  places: readonly MotifPlace[],
  print: ClothPrint,
): MatchedPrint {
  const { level, shiftAcross, shiftUp } = withUsual(LAYING_OPTIONS.print, print);
  const isBothWays = wayOfMeeting(print) === 'bothWays';
  const phases = new Map<string, Phase>();
  // 1. Where motifs are placed: one lies `shift` from the point.
  for (const { piece, point } of places) {
    const [along, across] = clothOf(point);
    phases.set(piece, { along: -shiftUp - along, across: shiftAcross - across });
  }
  // 2. From piece to piece: at the level as far as that goes, then at other levels, then at the ends of seams.
  for (const worth of [2, 1, 0]) {
    const usable = meetings.filter((meeting) => worthOf(meeting, level) >= worth);
    const queue = [...phases.keys()];
    for (let at = queue.shift(); at !== undefined; at = queue.shift())
      for (const meeting of usable) {
        const other: 0 | 1 = meeting.pieces[0] === at ? 1 : 0;
        const next = meeting.pieces[other];
        if (meeting.pieces[1 - other] !== at || phases.has(next)) continue;
        const carried = carry(meeting, other, phases.get(at) as Phase);
        const isSide = isBothWays || sharesPlace(meeting, places);
        phases.set(next, isSide ? carried : { along: carried.along });
        queue.push(next);
      }
  }
  // 3. What comes together, and what does not.
  const gaps = meetings.flatMap((meeting) => gapAt(meeting, phases, print));
  const isAtLevel = ({ at }: PrintGap): boolean => at === level;
  return { phases, met: gaps.filter(isAtLevel), others: gaps.filter((gap) => !isAtLevel(gap)) };
}

/** A place this near to a mark is the mark, mm: the one lies on the mesh, the other on its smooth edge. */
const ON_MARK = 1;

/** A point of an upright piece in the axes of the cloth: its top to the far end, its wearer's side by the same turn. */
function clothOf([x, y]: Point): readonly [along: number, across: number] {
  return [y, -x];
}

/** True when a motif's place lies on the seam, at this mark. */
function sharesPlace({ pieces, points }: Meeting, places: readonly MotifPlace[]): boolean {
  return places.some(({ piece, point }) => {
    const side = pieces.indexOf(piece);
    return side >= 0 && Math.hypot(points[side][0] - point[0], points[side][1] - point[1]) < ON_MARK;
  });
}

function worthOf({ at }: Meeting, level: string): number {
  return at === level ? 2 : at === 'start' || at === 'end' ? 0 : 1;
}

/** The phase of a meeting's other piece, so that the print goes on there. */
function carry({ points }: Meeting, other: 0 | 1, { along, across }: Phase): Phase {
  const [from, to] = [clothOf(points[1 - other]), clothOf(points[other])];
  const carried = along + from[0] - to[0];
  return across === undefined ? { along: carried } : { along: carried, across: across + from[1] - to[1] };
}

function gapAt(
  { seam, at, pieces, points }: Meeting,
  phases: ReadonlyMap<string, Phase>,
  print: ClothPrint,
): PrintGap[] {
  const [a, b] = pieces.map((piece) => phases.get(piece));
  if (!a || !b) return [];
  const [p, q] = points.map(clothOf);
  const repeat = withUsual(LAYING_OPTIONS.print, print);
  const along = offRepeat(b.along + q[0] - a.along - p[0], repeat.along);
  const across =
    a.across === undefined || b.across === undefined
      ? 0
      : offRepeat(b.across + q[1] - a.across - p[1], repeat.across);
  return [{ seam, pieces, at, along, across }];
}

/** What is left of a length after whole repeats, from −½ to ½ of one; 0 where nothing repeats. */
export function offRepeat(length: number, repeat: number): number {
  return repeat > 0 ? length - repeat * Math.round(length / repeat) : 0;
}

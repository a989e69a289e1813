import type { Method } from './types.ts';

/**
 * Minutes of work of someone who sews at home, breaks and drying left out: our estimate, no source. Here by the metre,
 * the piece and the litre; `hours-of-step` has what steps take that have none of these.
 */
export const MINUTES = {
  /** A metre of seam: pinned, sewn in two rows, pressed; sewn through other layers, or by hand. */
  seam: { plain: 18, packed: 18, lap: 30, flap: 24, ladder: 65, hand: 60 } satisfies Record<Method, number>,
  /** Everything rolled up, put through and drawn out again. */
  packing: 25,
  /** A piece of cloth: laid, cut and marked; and a metre of its outline, or of a line basted through. */
  piece: 5,
  outline: 4,
  basted: 6,
  /** A piece of paper: found, stuck together and cut out. */
  pattern: 5,
  /** A brace hemmed and, of straps, its slot in the web stitched round and cut. */
  hem: 8,
  slot: 8,
  tab: 5,
  /** A plate of two layers: cut, glued, fitted; the metre of a rim bound and pricked; a cover laced on. */
  board: 25,
  rim: 30,
  cover: 30,
  /** What is cut of foam, supports tacked in, a magnet seated. */
  block: 60,
  support: 20,
  magnet: 8,
  /** An arm turned and its wrist set in; a pin cushion filled. */
  arm: 30,
  cushion: 40,
  /** A litre filled hard: about 5 hours a torso. */
  litre: 7,
  /** The cheap shell: a metre basted, and put on and judged. */
  tacked: 8,
  /** Reading a tape or a figure and writing it down. */
  check: 2,
} as const;

/** Heights of ends sewn to sleeve and shell, mm. */
export interface BraceWork {
  readonly onSleeve: number;
  readonly onShell: number;
  readonly isStrap: boolean;
}

/** The shell alone: its pieces cut out of paper and cloth, its seams sewn; all lengths mm. Hours. */
export function hoursOfShell(seamLengths: number, pieces: number, outlines: number): number {
  const { seam, pattern, piece, outline } = MINUTES;
  return ((seam.plain * seamLengths + outline * outlines) / 1000 + (pattern + piece) * pieces) / 60;
}

/** From cloth to both ends sewn on, hours. */
export function hoursOfBrace({ onSleeve, onShell, isStrap }: BraceWork): number {
  const { seam, pattern, piece, hem, slot, basted } = MINUTES;
  const ends = (onSleeve * seam.plain + onShell * (seam.lap + basted)) / 1000;
  return (pattern + piece + hem + ends + (isStrap ? slot : 0)) / 60;
}

import { type Cell, cellsOfRing, isOnArc } from './cells-of-ring.ts';
import type { LevelRing, WorkBrace, WorkInput } from './types.ts';

type IsJoined = (joint: string) => boolean;

/** Rolled cloth is about three times as thick as pressed (common practice, no source). */
const ROLLED = 3;

/**
 * Whether a seam of the shell can be sewn right sides together on empty cloth, and if not, how the rest goes into the cell beside it:
 * `mouth`, the least girth of that cell; `pack`, the girth of everything else rolled up. mm.
 */
export type SeamWay =
  | { readonly kind: 'plain' }
  | { readonly kind: 'packed'; readonly mouth: number; readonly pack: number };

/**
 * A seam that closes no ring is plain, and so is one that closes a ring without inner parts: the empty tube lies wrong side out.
 * Else the cell beside the seam is turned inside out round all other cloth. O(levels × (seams + braces)²).
 */
export function wayOfSeam(input: WorkInput, seam: string, isJoined: IsJoined): SeamWay {
  const sewn: IsJoined = (id) => id === seam || isJoined(id);
  const packed = input.rings.flatMap((ring) => {
    const foot = ring.seams[seam];
    if (!foot || !closesRing(ring, input.braces, seam, isJoined)) return [];
    const cell = cellsOfRing(ring, input.braces, isJoined).find(({ arcs }) =>
      arcs.some((arc) => isOnArc(arc, foot.at)),
    );
    if (!cell || cell.chords.length === 0) return [];
    return [mouthAndPack(input, ring, cell, sewn)];
  });
  return packed.length === 0 ? { kind: 'plain' } : largestPack(input.cloth, packed);
}

/**
 * The way out of a cell packed for a seam, once that is sewn and whatever was still joined from outside: the wider of the two cells
 * that meet in the seam, if the ties now divide it.
 */
export function wayOut(input: WorkInput, seams: readonly string[], isJoined: IsJoined): SeamWay {
  const packed = input.rings.flatMap((ring) => {
    const foot = seams.map((id) => ring.seams[id]).find(Boolean);
    if (!foot) return [];
    const beside = cellsOfRing(ring, input.braces, isJoined).filter(
      ({ arcs, chords }) => chords.length > 0 && arcs.some((arc) => touches(arc, foot.at, ring.girth)),
    );
    const ways = beside.map((cell) => mouthAndPack(input, ring, cell, isJoined));
    return ways.length === 0 ? [] : [ways.reduce((a, b) => (b.mouth > a.mouth ? b : a))];
  });
  return packed.length === 0 ? { kind: 'plain' } : largestPack(input.cloth, packed);
}

interface MouthAndPack {
  readonly mouth: number;
  /** Widths of all cloth to be rolled, one beside the other, mm. */
  readonly widths: number;
}

function largestPack(cloth: number, at: readonly MouthAndPack[]): SeamWay {
  const widths = Math.max(...at.map((one) => one.widths));
  return {
    kind: 'packed',
    mouth: Math.min(...at.map((one) => one.mouth)),
    pack: 2 * Math.sqrt(Math.PI * ROLLED * cloth * widths),
  };
}

/** A foot on the very seam lies on both its cells. */
function touches(arc: { readonly from: number; readonly to: number }, at: number, girth: number): boolean {
  const near = (a: number): boolean => Math.min(Math.abs(a - at), girth - Math.abs(a - at)) < 1;
  return isOnArc(arc, at) || near(arc.from) || near(arc.to);
}

/**
 * Turned inside out, a cell holds what hangs on its outside, and what hung in it comes to lie outside: the sleeve with its ties, where
 * one of these is sewn to a wall of the cell. Straps pass the slots of the walls, and count.
 */
function mouthAndPack(input: WorkInput, ring: LevelRing, cell: Cell, isJoined: IsJoined): MouthAndPack {
  const walls = new Set(cell.chords);
  const along = cell.arcs.reduce(
    (sum, { from, to }) => sum + (to >= from ? to - from : to - from + ring.girth),
    0,
  );
  const isOnWall = (joint: string): boolean => {
    const foot = ring.feet[joint];
    return isJoined(joint) && foot !== undefined && cell.arcs.some((arc) => isOnArc(arc, foot.at));
  };
  const hasSpine = input.braces.some(({ kind, from }) => kind === 'tie' && from.some(isOnWall));
  const isPacked = ({ id, kind, from, to }: WorkBrace): boolean =>
    !walls.has(id) && (kind === 'strap' || kind === 'web' || !hasSpine) && [...from, ...to].some(isJoined);
  const rest = input.braces.filter(isPacked).reduce((sum, { id }) => sum + (ring.widths[id] ?? 0), 0);
  const hasSleeve = !hasSpine && input.braces.some(({ isOnSleeve, to }) => isOnSleeve && to.some(isJoined));
  return {
    mouth: cell.girth - gatheredBy(input, ring, cell, isJoined),
    widths: ring.girth - along + rest + (hasSleeve ? (ring.widths.sleeve ?? 0) : 0),
  };
}

/** A strap joined at both ends holds the wall it is sewn to near the web it passes: the mouth is only what lies beside it. */
function gatheredBy(input: WorkInput, ring: LevelRing, cell: Cell, isJoined: IsJoined): number {
  const losses = input.braces.flatMap(({ id, kind, from, to, through }) => {
    if (kind !== 'strap' || !from.every(isJoined) || !to.every(isJoined)) return [];
    const foot = from.map((joint) => ring.feet[joint]).find(Boolean);
    if (!foot || !through || !cell.chords.includes(through)) return [];
    if (!cell.arcs.some((arc) => isOnArc(arc, foot.at))) return [];
    return [Math.max(0, cell.girth / 2 - Math.min(ring.widths[id] ?? 0, cell.girth / 2))];
  });
  return Math.max(0, ...losses);
}

/** Whether both sides of a seam hang together already at a level, through the ring or across it. */
function closesRing(
  ring: LevelRing,
  braces: readonly WorkBrace[],
  seam: string,
  isJoined: IsJoined,
): boolean {
  const cuts = Object.entries(ring.seams)
    .filter(([id]) => id === seam || !isJoined(id))
    .map(([, { at }]) => at)
    .sort((a, b) => a - b);
  if (cuts.length < 2) return true;
  const stretchOf = (at: number): number => {
    const k = cuts.findIndex((cut) => at <= cut);
    return Math.max(k, 0);
  };
  const links = braces.flatMap(({ from, to, isOnSleeve }): (readonly [number, number])[] => {
    const feetOf = (joints: readonly string[]): number[] =>
      joints.filter((id) => isJoined(id) && ring.feet[id]).map((id) => stretchOf(ring.feet[id].at));
    const [a] = feetOf(from);
    if (a === undefined) return [];
    if (isOnSleeve) return to.every(isJoined) ? [[a, cuts.length]] : [];
    const [b] = feetOf(to);
    return b === undefined ? [] : [[a, b]];
  });
  const { at } = ring.seams[seam];
  const before = stretchOf(at);
  const after = (before + 1) % cuts.length;
  return areLinked(before, after, links);
}

function areLinked(a: number, b: number, links: readonly (readonly [number, number])[]): boolean {
  const reached = new Set([a]);
  for (let grows = true; grows; ) {
    grows = false;
    for (const [x, y] of links) {
      if (reached.has(x) === reached.has(y)) continue;
      reached.add(x).add(y);
      grows = true;
    }
  }
  return reached.has(b);
}

/**
 * How far along the cloth a foot lies from the nearest free edge, the worst level, passing no foot whose part is joined at both ends;
 * Infinity where there is none. mm.
 */
export function wayToFreeEdge(input: WorkInput, joint: string, isJoined: IsJoined): number {
  const own = input.joints.find(({ id }) => id === joint);
  if (own?.toEdge !== undefined) return own.toEdge;
  const ways = input.rings.flatMap((ring) => {
    const foot = ring.feet[joint] ?? ring.seams[joint];
    return foot ? [wayAtLevel(ring, input.braces, foot.at, isJoined)] : [];
  });
  return ways.length === 0 ? 0 : Math.max(...ways);
}

function wayAtLevel(ring: LevelRing, braces: readonly WorkBrace[], at: number, isJoined: IsJoined): number {
  const free = Object.entries(ring.seams).flatMap(([id, foot]) => (isJoined(id) ? [] : [foot.at]));
  const walls = braces.flatMap(({ from, to, kind }) => {
    const isHeld = from.some(isJoined) && to.some(isJoined) && kind !== 'throat';
    return isHeld ? [...from, ...to].flatMap((id) => ring.feet[id]?.at ?? []) : [];
  });
  const ways = [1, -1].map((sign) => {
    const along = (other: number): number => {
      const way = sign * (other - at);
      return way < 0 ? way + ring.girth : way;
    };
    const edge = Math.min(Infinity, ...free.map(along));
    const wall = Math.min(Infinity, ...walls.map(along).filter((way) => way > 1));
    return edge <= wall ? edge : Infinity;
  });
  return Math.min(...ways);
}

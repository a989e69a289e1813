import type { Foot, LevelRing, WorkBrace } from './types.ts';

/** A region of a level's section: the stretches of the ring round it, and the inner parts. mm. */
export interface Cell {
  readonly arcs: readonly { readonly from: number; readonly to: number }[];
  readonly chords: readonly string[];
  readonly girth: number;
}

/** An inner part that goes from wall to wall, by the ids of its pieces. */
interface Chord {
  readonly ids: readonly string[];
  readonly ends: readonly [Foot, Foot];
  readonly length: number;
}

/**
 * The cells into which inner parts that are joined at both ends divide a level. Webs divide it, and the sleeve with both ties;
 * straps do not: they pass through slots, and slide there. Chords that cross each other are left as they come. O(chords²).
 */
export function cellsOfRing(
  ring: LevelRing,
  braces: readonly WorkBrace[],
  isJoined: (joint: string) => boolean,
): Cell[] {
  const chords = chordsOf(ring, braces, isJoined);
  if (chords.length === 0) return [{ arcs: [{ from: 0, to: ring.girth }], chords: [], girth: ring.girth }];
  const ends = chords
    .flatMap((chord, k) => chord.ends.map(({ at }, end) => ({ at, chord: k, end })))
    .sort((a, b) => a.at - b.at);
  const left = new Set(ends.keys());
  const cells: Cell[] = [];
  for (const first of ends.keys()) {
    if (!left.has(first)) continue;
    const arcs: { from: number; to: number }[] = [];
    const round: string[] = [];
    let girth = 0;
    // Along the ring to the next foot, over the part that stands there, and on from its other foot.
    for (let i = first; left.has(i); ) {
      left.delete(i);
      const next = (i + 1) % ends.length;
      const [from, to] = [ends[i].at, ends[next].at];
      arcs.push({ from, to });
      girth += to >= from && next !== 0 ? to - from : to - from + ring.girth;
      const { chord, end } = ends[next];
      round.push(...chords[chord].ids);
      girth += chords[chord].length;
      i = ends.findIndex((other) => other.chord === chord && other.end === 1 - end);
    }
    cells.push({ arcs, chords: round, girth });
  }
  return cells;
}

/** Whether a place of the ring lies in a stretch of it. */
export function isOnArc({ from, to }: { readonly from: number; readonly to: number }, at: number): boolean {
  return from < to ? at >= from && at <= to : at >= from || at <= to;
}

function chordsOf(
  ring: LevelRing,
  braces: readonly WorkBrace[],
  isJoined: (joint: string) => boolean,
): Chord[] {
  const footOf = (joints: readonly string[]): Foot | undefined =>
    joints.filter((id) => isJoined(id) && ring.feet[id]).map((id) => ring.feet[id])[0];
  const webs = braces.flatMap(({ id, kind, from, to }): Chord[] => {
    if (kind !== 'web') return [];
    const [a, b] = [footOf(from), footOf(to)];
    return a && b ? [{ ids: [id], ends: [a, b], length: ring.widths[id] ?? 0 }] : [];
  });
  const ties = braces.flatMap(({ id, kind, from, to }) => {
    const foot = footOf(from);
    return kind === 'tie' && foot && to.every(isJoined) ? [{ id, foot }] : [];
  });
  if (ties.length < 2) return webs;
  const length =
    ties.reduce((sum, { id }) => sum + (ring.widths[id] ?? 0), 0) + (ring.widths.sleeve ?? 0) / 2;
  return [...webs, { ids: ties.map(({ id }) => id), ends: [ties[0].foot, ties[1].foot], length }];
}

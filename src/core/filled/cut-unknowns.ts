import type { ShellPanel } from '../seams/index.ts';

/** Heights at which moves of the panels are told, mm of chart height. */
const KNOT_GAP = 60;
/** Heights at which changes of a brace's length are told, mm. */
const BRACE_GAP = 60;
/** A spline that reaches a panel by less than its last half gap says nothing of it. */
const REACH = 1.5 * KNOT_GAP;

/**
 * How the cut of a shell may change: a few smooth moves of its flat panels, and of the lengths of its braces. They are told in
 * chart heights and in shares of a panel's width, so that they mean the same on every mesh of the shell. On a body alike on both
 * sides both sides change alike.
 */
export interface CutUnknowns {
  /** Chart height of the middle of the first spline. */
  readonly bottom: number;
  /** Parallel to the panels: middle and half of the width a share is counted by, mm across the upright panel. */
  readonly frames: readonly PanelFrame[];
  readonly moves: readonly CutMove[];
}

interface PanelFrame {
  readonly middle: number;
  readonly half: number;
}

/** One unknown, mm. */
export type CutMove =
  /** Points of one panel, and of its mirror image, move across: all alike, or in proportion to their share of its width. */
  | { readonly kind: 'across'; readonly panel: number; readonly isWider: boolean; readonly spline: number }
  /** Points of all panels move along the body's height, by a wave of their chart angle: alike on both sides of every seam. */
  | { readonly kind: 'along'; readonly wave: Wave; readonly spline: number }
  /** Rungs of a brace, and of its mirror image, are longer about one height. */
  | { readonly kind: 'brace'; readonly ids: readonly string[]; readonly z: number; readonly gap: number };

type Wave = 'even' | 'front' | 'sides' | 'right';

const WAVES: Readonly<Record<Wave, (u: number) => number>> = {
  even: () => 1,
  front: Math.sin,
  sides: (u) => Math.cos(2 * u),
  right: Math.cos,
};

/** What of a brace is asked here. */
export interface BraceHeights {
  readonly id: string;
  readonly rungs: readonly { readonly z: number }[];
}

/** The unknowns of a shell, its flat panels lying upright, with its braces. O(points). */
export function cutUnknowns(
  panels: readonly ShellPanel[],
  upright: readonly Float64Array[],
  braces: readonly BraceHeights[],
): CutUnknowns {
  const isAlike = panels.some(({ mirrorOf }) => mirrorOf !== undefined);
  const heights = panels.map(({ chart }) => rangeOf(chart, 1));
  const low = Math.min(...heights.map(([least]) => least));
  const high = Math.max(...heights.map(([, most]) => most));
  const bottom = low - KNOT_GAP;
  const splines = Array.from({ length: Math.max(1, Math.round((high - low) / KNOT_GAP)) + 3 }, (_, s) => s);
  const across = panels.flatMap(({ mirrorOf, side }, panel) => {
    if (mirrorOf !== undefined) return [];
    const [least, most] = heights[panel];
    const reaching = splines.filter((s) => {
      const middle = bottom + s * KNOT_GAP;
      return middle >= least - REACH && middle <= most + REACH;
    });
    // What lies in the middle of a body alike on both sides can only grow wider.
    const kinds = isAlike && side === 'centre' ? [true] : [false, true];
    return kinds.flatMap((isWider) =>
      reaching.map((spline): CutMove => ({ kind: 'across', panel, isWider, spline })),
    );
  });
  const waves: readonly Wave[] = isAlike ? ['even', 'front', 'sides'] : ['even', 'front', 'sides', 'right'];
  const along = waves.flatMap((wave) => splines.map((spline): CutMove => ({ kind: 'along', wave, spline })));
  return {
    bottom,
    frames: upright.map((flat) => {
      const [least, most] = rangeOf(flat, 0);
      return { middle: (least + most) / 2, half: (most - least) / 2 };
    }),
    moves: [...across, ...along, ...braceMoves(braces, isAlike)],
  };
}

function braceMoves(braces: readonly BraceHeights[], isAlike: boolean): CutMove[] {
  const pairs = new Map<string, BraceHeights[]>();
  for (const brace of braces) {
    const name = isAlike ? brace.id.replace(/-(right|left)$/, '') : brace.id;
    pairs.set(name, [...(pairs.get(name) ?? []), brace]);
  }
  return [...pairs.values()].flatMap((pair) => {
    const { rungs } = pair[0];
    const [from, to] = [rungs[0].z, rungs[rungs.length - 1].z];
    const count = Math.max(1, Math.round((to - from) / BRACE_GAP));
    const gap = (to - from) / count;
    return Array.from({ length: gap > 0 ? count + 1 : 1 }, (_, k): CutMove => {
      return { kind: 'brace', ids: pair.map(({ id }) => id), z: from + k * gap, gap };
    });
  });
}

/** Least and most of every second number, from the first or the second on. */
function rangeOf(pairs: Float64Array, axis: 0 | 1): readonly [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = axis; i < pairs.length; i += 2) {
    least = Math.min(least, pairs[i]);
    most = Math.max(most, pairs[i]);
  }
  return [least, most];
}

/** The uniform cubic B-spline about its middle, over two gaps to either side. Source: de Boor (1978), ch. IX. */
function splineAt(gaps: number): number {
  const x = Math.abs(gaps);
  if (x >= 2) return 0;
  return x >= 1 ? (2 - x) ** 3 / 6 : 2 / 3 - x ** 2 + x ** 3 / 2;
}

/**
 * How the points of one flat panel (#V × 2, upright as on the body, seen from outside) move by amounts of the unknowns: #V × 2 mm.
 * A mirror image moves as its source does, turned over. O(#V × unknowns of the panel).
 */
export function movesOfPanel(
  { bottom, frames, moves }: CutUnknowns,
  panels: readonly ShellPanel[],
  upright: Float64Array,
  panel: number,
  amounts: ArrayLike<number>,
): Float64Array {
  const { chart, mirrorOf } = panels[panel];
  const source = mirrorOf === undefined ? panel : panels.findIndex(({ id }) => id === mirrorOf);
  const sign = source === panel ? 1 : -1;
  const { middle, half } = frames[panel];
  const out = new Float64Array(chart.length);
  moves.forEach((move, k) => {
    const amount = amounts[k];
    if (amount === 0 || move.kind === 'brace') return;
    if (move.kind === 'across' && move.panel !== source) return;
    for (let i = 0; i < chart.length; i += 2) {
      const shape = amount * splineAt((chart[i + 1] - bottom) / KNOT_GAP - move.spline);
      if (move.kind === 'along') out[i + 1] += shape * WAVES[move.wave](chart[i]);
      else out[i] += shape * (move.isWider ? (upright[i] - middle) / half : sign);
    }
  });
  return out;
}

/** By how much each rung of a brace is longer, mm. */
export function changesOfRungs(
  { moves }: CutUnknowns,
  { id, rungs }: BraceHeights,
  amounts: ArrayLike<number>,
): Float64Array {
  const out = new Float64Array(rungs.length);
  moves.forEach((move, k) => {
    if (move.kind !== 'brace' || amounts[k] === 0 || !move.ids.includes(id)) return;
    const { z, gap } = move;
    rungs.forEach((rung, r) => {
      out[r] += amounts[k] * (gap > 0 ? Math.max(0, 1 - Math.abs(rung.z - z) / gap) : 1);
    });
  });
  return out;
}

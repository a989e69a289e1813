import { finderOnMesh, type Mesh } from '../mesh/index.ts';
import type { Links, Places } from '../statics/index.ts';
import type { FilledShell, StrandedBrace } from './types.ts';

/** Shares of a corner below this are none: the rung lies on an edge or a point. */
const LEAST_WEIGHT = 1e-6;

/** Braces as strands of a shell, and what they are tied to. */
export interface Strands {
  readonly links: Links;
  readonly places: Places;
  /** n × 3: points on the pole, after the shell's own. */
  readonly onPole: Float64Array;
  readonly braces: FilledShell['braces'];
}

/**
 * One strand a rung, from its place on the shell to the pole or to another place, as long as it is cut; as stiff as the cloth
 * between half way to the rung below and above, along its threads. O(rungs).
 */
export function strandBraces(
  shell: Mesh,
  braces: readonly StrandedBrace[],
  stiffness: number,
  pointCount: number,
): Strands {
  const find = finderOnMesh(shell);
  const corners: number[] = [];
  const weights: number[] = [];
  const onPole: number[] = [];
  // Places are counted on from all points, so those on the pole are counted first.
  const poleCount = braces.reduce((sum, { isAcross, rungs }) => sum + (isAcross ? 0 : rungs.length), 0);
  const endOn = (at: readonly number[]): number => {
    const { triangle, weights: shares } = find(at);
    const kept = shares.map((share) => (share < LEAST_WEIGHT ? 0 : share));
    const sum = kept[0] + kept[1] + kept[2];
    corners.push(...shell.triangles.subarray(3 * triangle, 3 * triangle + 3));
    weights.push(...kept.map((share) => share / sum));
    return pointCount + poleCount + corners.length / 3 - 1;
  };
  const endAtPole = (at: readonly number[]): number => pointCount + onPole.push(...at) / 3 - 1;
  const ends: number[] = [];
  const lengths: number[] = [];
  const stiffnesses: number[] = [];
  const stranded = braces.map((brace) => {
    const heights = heightsOfRungs(brace);
    const first = lengths.length;
    brace.rungs.forEach(({ from, to, length }, k) => {
      ends.push(endOn(from), brace.isAcross ? endOn(to) : endAtPole(to));
      lengths.push(length);
      stiffnesses.push((stiffness * heights[k]) / length);
    });
    return { brace, first, heights };
  });
  return {
    links: {
      ends: Uint32Array.from(ends),
      lengths: Float64Array.from(lengths),
      stiffness: Float64Array.from(stiffnesses),
    },
    places: { corners: Uint32Array.from(corners), weights: Float64Array.from(weights) },
    onPole: Float64Array.from(onPole),
    braces: stranded,
  };
}

/** Of the cloth that each rung stands for, mm along the shell: half way to its neighbours. */
function heightsOfRungs({ rungs }: StrandedBrace): Float64Array {
  const gaps = rungs.slice(1).map(({ from }, k) => {
    const below = rungs[k].from;
    return Math.hypot(from[0] - below[0], from[1] - below[1], from[2] - below[2]);
  });
  return Float64Array.from(rungs, (_, k) => ((gaps[k - 1] ?? 0) + (gaps[k] ?? 0)) / 2);
}

import type { BodyShape } from './types.ts';

/**
 * One bump, numbers per bump: centre (u, z), reach towards smaller and larger u (radians), down and up (mm of z),
 * height, direction x, y, fullness above (0 = pointed, 2.2 = nearly flat on top), roundness sideways and below (0 = slopes,
 * 3 = nearly an ellipse), fullness below, how far it is kept out of the arm (1 = dies out before it), and swell (0 = slopes
 * away evenly below, 1 = stays full there and then turns in sharply, as to the fold of a heavy breast). Bumps live in
 * (u, z), not (u, v): above the chest v runs faster than z in front, and a bump in v ended there in a crease.
 */
export const BUMP_STRIDE = 14;

/** Numbers per bump in `reaches`: mean and half difference of 1/reach², and the squared blend width, in u and in z. */
export const REACH_STRIDE = 6;

/** Made once a shape, so that a point costs no division. */
export function measureReaches(bumps: Float64Array): Float64Array {
  const reaches = new Float64Array((bumps.length / BUMP_STRIDE) * REACH_STRIDE);
  for (let i = 0, k = 0; i < bumps.length; i += BUMP_STRIDE) {
    for (const at of [2, 4]) {
      const [below, above] = [bumps[i + at], bumps[i + at + 1]];
      const [low, high] = [1 / (below * below), 1 / (above * above)];
      reaches[k++] = 0.5 * (low + high);
      reaches[k++] = 0.5 * (high - low);
      reaches[k++] = (0.35 * Math.min(below, above)) ** 2;
    }
  }
  return reaches;
}

/** (t / reach)² with one reach below 0 and another above, joined smoothly (C∞ in t). */
export function reachSquared(t: number, reaches: Float64Array, k: number): number {
  const square = t * t;
  return square * (reaches[k] + (reaches[k + 1] * t) / Math.sqrt(square + reaches[k + 2]));
}

/** Breasts are the first two bumps, the right one first; lower ones than this, mm, have no side. */
export const LEAST_BREAST = 15;

/** The height of a bump, mm. */
export function heightOf({ bumps }: Pick<BodyShape, 'bumps'>, bump: number): number {
  return bumps[bump * BUMP_STRIDE + 6];
}

/** Breasts close together end nearer the centre line, or the two would add up to one across the hollow. Radians. */
export function reachToCentre(bustAngle: number): number {
  const room = 1.25 * Math.max(0.5 * Math.PI - bustAngle, 0.1);
  // A smooth minimum of 0.62 and the room there is.
  return (0.62 ** -6 + room ** -6) ** (-1 / 6);
}

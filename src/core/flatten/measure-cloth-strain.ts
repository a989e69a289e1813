import type { AxisLimits } from './cloth-limits.ts';
import type { Cloth } from './cloths.ts';
import type { StrainField } from './types.ts';

export type ClothAxis = 'warp' | 'weft' | 'bias';

/** Strain along the threads, per triangle, and how much of the cloth's limits it uses. */
export interface ClothStrain {
  /** #F stretch − 1 of a thread going from flat to body: positive must stretch, negative must shrink. */
  readonly warp: Float64Array;
  readonly weft: Float64Array;
  /** #F the greater, by share of its limit, of the strains of the two diagonals. */
  readonly bias: Float64Array;
  /** #F greatest strain over its limit: 1 is all the cloth takes. */
  readonly usage: Float64Array;
  /** #F which axis that is: 0 warp, 1 weft, 2 bias. */
  readonly axis: Uint8Array;
}

export const CLOTH_AXES: readonly ClothAxis[] = ['warp', 'weft', 'bias'];

/**
 * Strain of a flat piece in the axes of its cloth. `grainAngle`: direction of the warp in the flat piece, radians from
 * +x (π/2 = upwards on the body). A direction d at angle θ from the major one stretches by
 * √(λ1² cos²θ + λ2² sin²θ), λ = 1 + principal strain. O(#F). Flipped triangles give NaN.
 */
export function measureClothStrain(strain: StrainField, grainAngle: number, cloth: Cloth): ClothStrain {
  const count = strain.major.length;
  const warp = new Float64Array(count);
  const weft = new Float64Array(count);
  const bias = new Float64Array(count);
  const usage = new Float64Array(count);
  const axis = new Uint8Array(count);
  for (let f = 0; f < count; f++) {
    const a = (1 + strain.major[f]) ** 2;
    const b = (1 + strain.minor[f]) ** 2;
    // √(mean + half · cos 2θ): the four directions have 2θ = t, t + π, t ± π/2.
    const mean = 0.5 * (a + b);
    const t = 2 * (grainAngle - strain.direction[f]);
    const along = 0.5 * (a - b) * Math.cos(t);
    const across = 0.5 * (a - b) * Math.sin(t);
    warp[f] = Math.sqrt(mean + along) - 1;
    weft[f] = Math.sqrt(mean - along) - 1;
    const one = Math.sqrt(mean + across) - 1;
    const other = Math.sqrt(mean - across) - 1;
    bias[f] = shareOf(one, cloth.bias) >= shareOf(other, cloth.bias) ? one : other;
    const shares = [shareOf(warp[f], cloth.warp), shareOf(weft[f], cloth.weft), shareOf(bias[f], cloth.bias)];
    axis[f] = shares[0] >= shares[1] ? (shares[0] >= shares[2] ? 0 : 2) : shares[1] >= shares[2] ? 1 : 2;
    usage[f] = shares[axis[f]];
  }
  return { warp, weft, bias, usage, axis };
}

/** Part of its limit that a strain uses. */
export function shareOf(strain: number, limits: AxisLimits): number {
  return strain >= 0 ? strain / limits.stretch : -strain / limits.shrink;
}

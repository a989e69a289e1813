import type { Phrase } from '../base/index.ts';
import { type AxisLimits, CLOTH_LIMITS, type ClothId } from './cloth-limits.ts';
import { phrase } from './phrases.ts';

/** Limits along the threads and at 45° to them. */
export interface Cloth {
  readonly id: ClothId;
  readonly name: Phrase;
  /** Along the selvedge. */
  readonly warp: AxisLimits;
  readonly weft: AxisLimits;
  /** At 45° to both: there the weave shears, which costs little force. */
  readonly bias: AxisLimits;
}

/** Every cloth with known limits; the first is the usual one. */
export const CLOTHS: readonly Cloth[] = CLOTH_LIMITS.map((limits) => ({
  ...limits,
  name: phrase(`cloth.${limits.id}`),
}));

/** The cloth of that id, or undefined. */
export function findCloth(id: string): Cloth | undefined {
  return CLOTHS.find((cloth) => cloth.id === id);
}

import { TEST_TUBE_HEIGHT } from './test-tube.ts';
import { measuredGrowthOf, TEST_TUBE_GIRTH } from './test-tube-growth.ts';
import type { InsideOptions } from './types.ts';

/** Density of firm filling, kg/m³. */
export interface FillDensity {
  readonly low: number;
  readonly high: number;
  /** Nobody weighed it. */
  readonly isAssumed: boolean;
}

/** Firm filling (common practice, no source). */
export const ASSUMED_DENSITY: FillDensity = { low: 50, high: 80, isAssumed: true };
/** By how much one and the same hand stuffs more or less hard. Ours, no source. */
const HAND = 0.05;

/**
 * Density as the maker stuffs, by what the test tube's filling weighs: ρ = m/V, V = G² h/4π, G the girth of the stuffed tube without the
 * half cloth a tape lies outside of (as sewn, while nobody measured it). Assumed until the filling is weighed.
 */
export function densityOfFilling(options: InsideOptions): FillDensity {
  const { testTubeFill } = options;
  if (testTubeFill === undefined) return ASSUMED_DENSITY;
  const girth = TEST_TUBE_GIRTH * (1 + (measuredGrowthOf(options) ?? 0));
  const cubicMetres = (girth ** 2 * TEST_TUBE_HEIGHT) / (4 * Math.PI) / 1e9;
  const density = testTubeFill / cubicMetres;
  return { low: density * (1 - HAND), high: density * (1 + HAND), isAssumed: false };
}

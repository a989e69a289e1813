import { withUsual } from '../base/index.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { measuredGrowthOf, TEST_TUBE_DIAMETER } from './test-tube-growth.ts';
import type { InsideOptions } from './types.ts';

/** By how much a hoop of cloth grows per mm of its radius, p/(Et), 1/mm; measured on the test tube if it was. */
function growthPerRadius(options: InsideOptions): number {
  const { pressure, clothStiffness } = withUsual(INSIDE_OPTIONS, options);
  const measured = measuredGrowthOf(options);
  if (measured === undefined) return (0.001 * pressure) / clothStiffness;
  return measured / (1 + measured) / (TEST_TUBE_DIAMETER / 2);
}

/**
 * Growth of a girth (mm, before it is filled) under the filling, a fraction: R/(1 − R p/Et) − 1 for the mean radius R, by
 * Laplace's law T = pR and Hooke's for the hoop. p/Et comes from the maker's own test tube when measured: a wider form
 * of the same cloth grows more than the tube.
 */
export function growthOfGirth(girth: number, options: InsideOptions): number {
  return 1 / (1 - (growthPerRadius(options) * girth) / (2 * Math.PI)) - 1;
}

/** From the middle of the shell's cloth to the outside of all that lies over it, mm. */
export function outsideOfCloth(options: InsideOptions): number {
  const { clothThickness, coverThickness } = withUsual(INSIDE_OPTIONS, options);
  return clothThickness / 2 + coverThickness;
}

/**
 * How far inside the body the shell lies once filled, mm: by the layers over it, when the panels are cut smaller for them. What
 * is inside is made for that, each end on the shell so much shorter (exact where it meets the cloth squarely).
 */
export function depthOfShell(options: InsideOptions): number {
  return doesTakeOff(options) ? outsideOfCloth(options) : 0;
}

/** True when the panels are cut smaller for growth and layers: once either was typed in. */
export function doesTakeOff(options: InsideOptions): boolean {
  return measuredGrowthOf(options) !== undefined || withUsual(INSIDE_OPTIONS, options).coverThickness > 0;
}

/** All of the options that decides how much smaller the panels are cut; empty when they are not. */
export function takenOffBy(options: InsideOptions): readonly (number | undefined)[] {
  const { coverThickness, clothThickness } = options;
  return doesTakeOff(options) ? [measuredGrowthOf(options), coverThickness, clothThickness] : [];
}

/**
 * Girth to which the panels are cut so that a tape finds `girth` (mm) round the filled and covered form: 2π times the
 * layers less, and shrunk by what the filling will stretch it. Inverse of growing by `growthOfGirth`: grown G = H/(1 − kH)
 * gives H = G/(1 + kG), k = p/(2πEt). `girth` itself unless growth or a cover was typed in.
 */
export function cutGirth(girth: number, options: InsideOptions): number {
  if (!doesTakeOff(options)) return girth;
  const bare = girth - 2 * Math.PI * outsideOfCloth(options);
  const growth = measuredGrowthOf(options) === undefined ? 0 : growthPerRadius(options) / (2 * Math.PI);
  return bare / (1 + growth * bare);
}

import { withUsual } from '../base/index.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import type { InsideOptions } from './types.ts';

/**
 * How many inner parts: where panels are not cut for the filling the parts alone hold the shape, and all are taken.
 */
export function partsOfInside(options: InsideOptions): 'fewest' | 'all' {
  const { parts, recut } = withUsual(INSIDE_OPTIONS, options);
  return recut ? parts : 'all';
}

/** Whether plates that carry no magnets have covers; those of arms always do. */
export function hasPlateCovers(options: InsideOptions, hasArms: boolean): boolean {
  if (options.plateCovers !== undefined) return options.plateCovers === 'with';
  return hasArms || partsOfInside(options) === 'all';
}

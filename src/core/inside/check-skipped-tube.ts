import { type Issue, withUsual } from '../base/index.ts';
import { growthOfGirth } from './cloth-growth.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { phrase } from './phrases.ts';
import { measuredGrowthOf } from './test-tube-growth.ts';
import type { InsideOptions, LevelFinding } from './types.ts';

/**
 * Without a test tube the girths are foretold only as well as an unknown cloth lets them be: from one that grows half as much as the
 * usual one to one that grows twice as much. Warns with how far that is apart where it is most, mm (`test-tube-skipped`). Silent for
 * cloth that gives way, which `checkGrowth` names.
 */
export function checkSkippedTube(levels: readonly LevelFinding[], options: InsideOptions): Issue[] {
  if (measuredGrowthOf(options) !== undefined) return [];
  const { pressure } = withUsual(INSIDE_OPTIONS, options);
  const grown = (girth: number, times: number): number =>
    girth * growthOfGirth(girth, { ...options, pressure: pressure * times });
  const widths = levels.map(({ name, body: { girth } }) => ({
    level: name,
    width: grown(girth, 2) - grown(girth, 0.5),
  }));
  const widest = widths.reduce((most, one) => (one.width > most.width ? one : most), widths[0]);
  if (!widest || !(widest.width > 0)) return [];
  const message = phrase('test-tube.skipped', widest);
  return [
    { code: 'test-tube-skipped', path: 'testTube', message, severity: 'warning', measured: widest.width },
  ];
}

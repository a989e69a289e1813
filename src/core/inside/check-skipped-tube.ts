import { type Issue, type Phrase, withUsual } from '../base/index.ts';
import { growthOfGirth } from './cloth-growth.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { phrase } from './phrases.ts';
import { measuredGrowthOf } from './test-tube-growth.ts';
import type { InsideOptions, LevelFinding } from './types.ts';

/** By how much less and more than foretold a level's girth may come out, mm, both positive. */
export interface LevelSpread {
  readonly id: string;
  readonly level: Phrase;
  readonly less: number;
  readonly more: number;
}

/**
 * Without a test tube the girths are foretold only as well as an unknown cloth lets them be: from one that grows half as much as the
 * usual one to one that grows twice as much. By Laplace's law alone, as `growthOfGirth`; empty once a growth was measured.
 */
export function spreadWithoutTube(
  levels: readonly Pick<LevelFinding, 'id' | 'name' | 'body'>[],
  options: InsideOptions,
): readonly LevelSpread[] {
  if (measuredGrowthOf(options) !== undefined) return [];
  const { pressure } = withUsual(INSIDE_OPTIONS, options);
  const grown = (girth: number, times: number): number =>
    girth * growthOfGirth(girth, { ...options, pressure: pressure * times });
  return levels.map(({ id, name, body: { girth } }) => ({
    id,
    level: name,
    less: grown(girth, 1) - grown(girth, 0.5),
    more: grown(girth, 2) - grown(girth, 1),
  }));
}

/**
 * Warns where no test tube was measured, with how far that leaves the girth open where it does so most, mm (`test-tube-skipped`).
 * Silent for cloth that gives way, which `checkGrowth` names.
 */
export function checkSkippedTube(levels: readonly LevelFinding[], options: InsideOptions): Issue[] {
  const widths = spreadWithoutTube(levels, options).map(({ level, less, more }) => ({
    level,
    width: less + more,
  }));
  const widest = widths.reduce((most, one) => (one.width > most.width ? one : most), widths[0]);
  if (!widest || !(widest.width > 0)) return [];
  const message = phrase('test-tube.skipped', widest);
  return [
    { code: 'test-tube-skipped', path: 'testTube', message, severity: 'warning', measured: widest.width },
  ];
}

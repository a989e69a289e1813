import { type Issue, withUsual } from '../base/index.ts';
import type { FilledMeasures } from '../filled/index.ts';
import { INSIDE_OPTIONS, type InsideOptions, judgeLevels, nameOfPlace } from '../inside/index.ts';
import { phrase } from './phrases.ts';

/** A place further off than this is named whatever its level, mm: what a hand feels through a garment (ours). */
const FELT = 8;

/** Names levels of the filled form further off than wanted, and its worst place, with what to do about it. */
export function judgeFilled({ levels, distance }: FilledMeasures, options: InsideOptions): Issue[] {
  const held = levels.map(({ id, name, worst }) => {
    const { distance: deviation, where, at } = worst;
    return { id, name, held: { deviation, where, x: at[0], y: at[1] } };
  });
  const { wantedDeviation } = withUsual(INSIDE_OPTIONS, options);
  const issues = judgeLevels(held, wantedDeviation).map((issue) => ({ ...issue, code: 'filled-deviates' }));
  const { distance: off, over, where } = distance.worst;
  if (Math.abs(off) <= FELT) return issues;
  const level = levels.find(({ id }) => id === over);
  const message = phrase('filled.place-off', {
    by: Math.abs(off),
    way: off < 0 ? 'flatter' : 'fuller',
    at: nameOfPlace(where),
    ...(level && { over: level.name }),
    within: distance.within,
  });
  return [
    ...issues,
    { code: 'filled-place-off', path: '', message, severity: 'warning', measured: off, limit: FELT },
  ];
}

import type { Issue } from '../base/index.ts';
import type { FilledLevel, FilledMeasures } from '../filled/index.ts';
import { type InsideShape, nameOfPlace, type SectionSize } from '../inside/index.ts';
import { phrase } from './phrases.ts';

/** By how much a level may be off once filled, mm: as judged at the tape, where a girth may only be over (common practice, no source). */
const ALLOWED: Readonly<Record<keyof SectionSize, readonly [below: number, above: number]>> = {
  girth: [0, 5],
  width: [3, 3],
  depth: [3, 3],
};
/** A place further off than this is named whatever its level, mm: what a hand feels through a garment (ours). */
const FELT = 8;
/** Half of what a tape is read to, mm. */
const SLACK = 0.5;

/** A brace that pulls less holds nothing, N (ours: what a letter scale hardly tells). */
const IDLE = 0.5;

/**
 * Names sizes of levels that the filled form will miss, its worst place where it is felt, with what to do about it, and braces that
 * may as well be left out.
 */
export function judgeFilled(
  { levels, distance, pulls }: FilledMeasures,
  braces: InsideShape['braces'],
): Issue[] {
  return [...levels.flatMap(judgeLevel), ...judgeWorst(levels, distance), ...nameIdle(pulls, braces)];
}

function nameIdle(pulls: FilledMeasures['pulls'], braces: InsideShape['braces']): Issue[] {
  const idle = braces.filter(({ id }) => pulls.some((one) => one.id === id && one.pull < IDLE));
  if (idle.length === 0) return [];
  const message = phrase('filled.idle', { braces: idle.map(({ name }) => name) });
  return [{ code: 'filled-idle', path: '', message, severity: 'warning' }];
}

function judgeLevel({ name, asked, found }: FilledLevel): Issue[] {
  return (['girth', 'width', 'depth'] as const).flatMap((size): Issue[] => {
    const off = found[size] - asked[size];
    const [below, above] = ALLOWED[size];
    const limit = off < 0 ? below : above;
    if (Math.abs(off) <= limit + SLACK) return [];
    const message = phrase('filled.size-off', { level: name, size, by: Math.abs(off), isLess: off < 0 });
    return [{ code: 'filled-size-off', path: '', message, severity: 'warning', measured: off, limit }];
  });
}

function judgeWorst(
  levels: readonly FilledLevel[],
  { worst: { distance: off, over, where }, within }: FilledMeasures['distance'],
): Issue[] {
  if (Math.abs(off) <= FELT) return [];
  const level = levels.find(({ id }) => id === over);
  const message = phrase('filled.place-off', {
    by: Math.abs(off),
    isLess: off < 0,
    at: nameOfPlace(where),
    ...(level && { over: level.name }),
    within,
  });
  return [{ code: 'filled-place-off', path: '', message, severity: 'warning', measured: off, limit: FELT }];
}

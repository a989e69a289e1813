import { type Issue, type Phrase, withUsual } from '../base/index.ts';
import { clamp } from '../math/index.ts';
import { growthOfGirth } from './cloth-growth.ts';
import { nameOfPlace } from './describe-level.ts';
import { girthOfSleeve, reachOfPulledSleeve } from './fit-pole.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { joinSides } from './join-sides.ts';
import { phrase } from './phrases.ts';
import { isOff, limitOf } from './plan-braces.ts';
import { measuredGrowthOf } from './test-tube-growth.ts';
import type { InsideOptions, InsideShape, LevelFinding } from './types.ts';

/** Between the pulled sleeve and a web beside it, mm. Ours. */
const BESIDE_SLEEVE = 3;

/** Webs that would meet the pole or cross to the other side, with the thickest tube that passes between them. */
export function checkBraces({ braces, pole }: InsideShape): Issue[] {
  const room = pole.reach + BESIDE_SLEEVE;
  const issues = braces.flatMap((brace): Issue[] => {
    const { kind, side, rungs } = brace;
    if (kind !== 'web' || side === 'centre') return [];
    const sign = side === 'right' ? 1 : -1;
    // A web is straight from front to back: how near it passes the pole, and on which side.
    const nearest = rungs.reduce((least, { from, to }) => {
      const t = clamp((pole.y - from[1]) / (to[1] - from[1]), 0, 1);
      return Math.min(least, sign * (from[0] + t * (to[0] - from[0])));
    }, 1e9);
    if (nearest >= room) return [];
    const { path, remedy } = mendCrossing(nearest);
    const message =
      nearest < 0
        ? phrase('inside.webs-on-other-side', { side, over: -nearest, remedy })
        : phrase('inside.webs-near-pole', { side, nearest, room, remedy });
    return [{ code: 'webs-cross', path, message, severity: 'error', measured: nearest, limit: room }];
  });
  return joinSides(issues);
}

/** What would keep webs and pole apart, and the option it changes. */
function mendCrossing(nearest: number): { path: string; remedy: Phrase } {
  const most = Math.floor(thickestBetween(nearest));
  return most >= INSIDE_OPTIONS.tubeDiameter.min
    ? { path: 'tubeDiameter', remedy: phrase('inside.take-thinner-pole', { most }) }
    : { path: 'webPlaces', remedy: phrase('inside.take-webs-on-panels') };
}

/** Thickest tube whose pulled sleeve passes a web at this distance from the middle, mm: bisection to 0.01 mm. */
function thickestBetween(nearest: number): number {
  let [low, high] = [0, Math.max(0, 2 * nearest)];
  while (high - low > 0.01) {
    const tube = 0.5 * (low + high);
    if (reachOfPulledSleeve(girthOfSleeve(tube), tube / 2) + BESIDE_SLEEVE <= nearest) low = tube;
    else high = tube;
  }
  return low;
}

/** A growth beyond which no filling is hard and no cloth is firm: half as much again. Ours. */
const MOST_GROWN = 0.5;

/**
 * Cloth that would give way under the filling at some level (`cloth-gives-way`): a hoop H grows to H/(1 − kH), and has no
 * balance at all from kH = 1 on. Names what was typed, and its limit.
 */
export function checkGrowth(levels: readonly LevelFinding[], options: InsideOptions): Issue[] {
  const widest = levels.reduce(
    (most, level) => (level.body.girth > most.body.girth ? level : most),
    levels[0],
  );
  if (!widest) return [];
  const growth = growthOfGirth(widest.body.girth, options);
  if (growth >= 0 && growth <= MOST_GROWN) return [];
  if (growth < 0 && measuredGrowthOf(options) !== undefined && growth > -MOST_GROWN) return [];
  const growing = {
    level: widest.name,
    girth: widest.body.girth,
    mostGrowth: MOST_GROWN,
    ...(growth >= 0 && { growth }),
  };
  const code = 'cloth-gives-way';
  if (measuredGrowthOf(options) === undefined) {
    const { pressure, clothStiffness } = withUsual(INSIDE_OPTIONS, options);
    // Growth g at kH = g/(1 + g), k = p/(2πEt).
    const share = MOST_GROWN / (1 + MOST_GROWN);
    const most = (share * 2 * Math.PI * clothStiffness) / (0.001 * widest.body.girth);
    const message = phrase('inside.cloth-gives-way', {
      ...growing,
      pressure,
      stiffness: clothStiffness,
      mostPressure: most,
    });
    return [{ code, path: 'pressure', message, severity: 'error', measured: pressure, limit: most }];
  }
  const path = options.measuredGrowth === undefined ? 'testTube' : 'measuredGrowth';
  const message = phrase('inside.cloth-gives-way-as-measured', growing);
  return [{ code, path, message, severity: 'error', measured: growth, limit: MOST_GROWN }];
}

/** Names each level that stays further off than wanted, with what to do about it. */
export function judgeLevels(levels: readonly LevelFinding[], wanted: number): Issue[] {
  return levels
    .filter((level) => isOff(level, wanted))
    .map(({ id, name, held }) => {
      const limit = limitOf(id, wanted);
      const isFlat = held.deviation < 0;
      const isCup = id === 'bust' && isFlat && held.y > 0 && Math.abs(held.x) > 30;
      const by = Math.abs(held.deviation);
      const message = phrase('inside.level-deviates', {
        level: name,
        by,
        way: isFlat ? 'flatter' : 'fuller',
        at: nameOfPlace(held.where),
        wanted: limit,
        remedy: isCup ? 'cup' : isFlat ? 'wadding' : 'less-filling',
      });
      const path = 'wantedDeviation';
      return { code: 'level-deviates', path, message, severity: 'warning', measured: by, limit } as const;
    });
}

import { formatLength, type Issue, plain, withUsual, wordsOf } from '../base/index.ts';
import { growthOfGirth } from './cloth-growth.ts';
import { girthOfSleeve, reachOfPulledSleeve } from './fit-pole.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { joinSides } from './join-sides.ts';
import { isOff, limitOf } from './plan-braces.ts';
import { measuredGrowthOf } from './test-tube-growth.ts';
import type { InsideOptions, InsideShape, LevelFinding } from './types.ts';

/** Between the pulled sleeve and a web beside it, mm. Ours. */
const BESIDE_SLEEVE = 3;

/** Webs that would meet the pole or cross to the other side, with the thickest tube that passes between them. */
export function checkBraces({ braces, pole }: InsideShape): Issue[] {
  const room = pole.reach + BESIDE_SLEEVE;
  const issues = braces.flatMap((brace): Issue[] => {
    if (brace.kind !== 'web') return [];
    const sign = brace.side === 'right' ? 1 : -1;
    // A web is straight from front to back: how near it passes the pole, and on which side.
    const nearest = brace.rungs.reduce((least, { from, to }) => {
      const t = Math.min(1, Math.max(0, (pole.y - from[1]) / (to[1] - from[1])));
      return Math.min(least, sign * (from[0] + t * (to[0] - from[0])));
    }, 1e9);
    if (nearest >= room) return [];
    const thickest = Math.floor(thickestBetween(nearest));
    const how =
      nearest < 0
        ? `cross to the other side by ${(-nearest).toFixed(0)} mm and meet its partner`
        : `come ${nearest.toFixed(0)} mm from the middle, where the pole in its sleeve needs ${room.toFixed(0)} mm`;
    const isToBeHad = thickest >= INSIDE_OPTIONS.tubeDiameter.min;
    const remedy = isToBeHad
      ? `Take a pole of ${formatLength(thickest, 'cm')} at most.`
      : 'Take webs on panels (in the project file, inside.webPlaces: "panels"), or another seam layout.';
    const message = `The ${brace.side} web would ${how}: webs and pole would cross. ${remedy}`;
    const path = isToBeHad ? 'tubeDiameter' : 'webPlaces';
    return [
      {
        code: 'webs-cross',
        path,
        message: plain(message),
        severity: 'error',
        measured: nearest,
        limit: room,
      },
    ];
  });
  return joinSides(issues);
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
  const how = growth < 0 ? 'has no end: the cloth would burst' : `would be ${(100 * growth).toFixed(0)} %`;
  const start = `${wordsOf(widest.name)}, ${formatLength(widest.body.girth, 'cm')} round: its growth ${how}`;
  const limit = `${(100 * MOST_GROWN).toFixed(0)} % is more than any firm cloth gives`;
  const measured = growth;
  if (measuredGrowthOf(options) === undefined) {
    const { pressure, clothStiffness } = withUsual(INSIDE_OPTIONS, options);
    // Growth g at kH = g/(1 + g), k = p/(2πEt).
    const share = MOST_GROWN / (1 + MOST_GROWN);
    const most = (share * 2 * Math.PI * clothStiffness) / (0.001 * widest.body.girth);
    const message = `${start} under ${pressure} kPa on cloth of ${clothStiffness} N/mm; ${limit}. Give a pressure of ${most.toFixed(1)} kPa at most, or a firmer cloth.`;
    return [
      {
        code: 'cloth-gives-way',
        path: 'pressure',
        message: plain(message),
        severity: 'error',
        measured: pressure,
        limit: most,
      },
    ];
  }
  const path = options.measuredGrowth === undefined ? 'testTube' : 'measuredGrowth';
  const message = `${start} by what was measured on the test tube; ${limit}. Measure the test tube again, or fuse a firmer interfacing to the cloth.`;
  return [
    {
      code: 'cloth-gives-way',
      path,
      message: plain(message),
      severity: 'error',
      measured,
      limit: MOST_GROWN,
    },
  ];
}

/** Names each level that stays further off than wanted, with what to do about it. */
export function judgeLevels(levels: readonly LevelFinding[], wanted: number): Issue[] {
  return levels
    .filter((level) => isOff(level, wanted))
    .map(({ id, name, held }) => {
      const limit = limitOf(id, wanted);
      const isFlat = held.deviation < 0;
      const isCup = id === 'bust' && isFlat && held.y > 0 && Math.abs(held.x) > 30;
      const remedy = isCup
        ? 'put a firm packed cup there'
        : isFlat
          ? 'put a layer of wadding under the cloth there'
          : 'fill it less there, or sew on one more strap to the pole sleeve';
      const message = `${wordsOf(name)}: the stuffed form will be ${Math.abs(held.deviation).toFixed(1)} mm ${isFlat ? 'flatter' : 'fuller'} than the body at the ${held.where} (${limit.toFixed(1)} mm wanted); ${remedy}.`;
      return {
        code: 'level-deviates',
        path: 'wantedDeviation',
        message: plain(message),
        severity: 'warning',
        measured: Math.abs(held.deviation),
        limit,
      } as const;
    });
}

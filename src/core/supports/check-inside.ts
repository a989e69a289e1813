import type { Issue } from '../base/index.ts';
import { isOff, limitOf } from './plan-braces.ts';
import type { InsideShape, LevelFinding } from './types.ts';

/** Webs that would meet the pole or cross to the other side. */
export function checkBraces({ braces, pole }: InsideShape): Issue[] {
  const room = pole.reach + 3;
  return braces.flatMap((brace): Issue[] => {
    if (brace.kind !== 'web') return [];
    const sign = brace.side === 'right' ? 1 : -1;
    // A web is straight from front to back: how near it passes the pole, and on which side.
    const nearest = brace.rungs.reduce((least, { from, to }) => {
      const t = Math.min(1, Math.max(0, (pole.y - from[1]) / (to[1] - from[1])));
      return Math.min(least, sign * (from[0] + t * (to[0] - from[0])));
    }, 1e9);
    if (nearest >= room) return [];
    const message = `The ${brace.name} would come ${nearest.toFixed(0)} mm from the middle, where the pole needs ${room.toFixed(0)} mm: the webs would cross the pole. Take a thinner tube or webs further out.`;
    return [
      { code: 'webs-cross', path: 'webPlaces', message, severity: 'error', measured: nearest, limit: room },
    ];
  });
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
      const message = `${name}: the stuffed form will be ${Math.abs(held.deviation).toFixed(1)} mm ${isFlat ? 'flatter' : 'fuller'} than the body at the ${held.where} (${limit.toFixed(1)} mm wanted); ${remedy}.`;
      return {
        code: 'level-deviates',
        path: 'wantedDeviation',
        message,
        severity: 'warning',
        measured: Math.abs(held.deviation),
        limit,
      } as const;
    });
}

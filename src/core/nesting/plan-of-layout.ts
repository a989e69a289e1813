import { areaUpTo } from './cloth-of-problem.ts';
import type { Snapshot } from './layout.ts';
import type { Prepared } from './prepare-search.ts';
import type { NestPlacement, NestPlan, NestProblem } from './types.ts';

/** The plan a layout is. */
export function planOfLayout(
  { items }: NestProblem,
  { layout, cloth }: Prepared,
  { isLaid, stance, x, y }: Snapshot,
  bound: number,
): NestPlan {
  let [used, area, last] = [0, 0, 0];
  const placements = items.map((_, k): NestPlacement | undefined => {
    if (!isLaid[k]) return undefined;
    const { shape, turn } = layout.bodies[k].stances[stance[k]];
    const { middleX, middleY, halfWidth, of } = layout.shapes[shape];
    const zone = layout.zoneAt(x[k]);
    const { originX, originY, sheet } = layout.zones[zone];
    used = Math.max(used, x[k] + halfWidth);
    area += of.area;
    last = Math.max(last, zone);
    return { turn, sheet, x: x[k] - middleX - originX, y: y[k] - middleY - originY };
  });
  return {
    placements,
    length: used - layout.zones[last].left,
    sheetsUsed: last + 1,
    density: used > 0 ? area / areaUpTo(cloth, used) : 0,
    bound,
    evaluations: layout.evaluations,
    left: items.flatMap(({ id }, k) => (isLaid[k] ? [] : [id])),
  };
}

/**
 * How far to the right every layout reaches: what the longest item needs in the best of its turns and on its lattice, what is held, or on a strip the
 * area of all over its width.
 */
export function boundOf({ width, sheets }: NestProblem, { layout }: Prepared): number {
  const place = { x: 0, y: 0 };
  const leastOf = (body: number): number => {
    const { stances, moves } = layout.bodies[body];
    if (!moves) return layout.rightOf(body);
    let least = Infinity;
    stances.forEach(({ shape }, stance) => {
      const { halfWidth } = layout.shapes[shape];
      layout.zones.forEach(({ left }, zone) => {
        if (layout.fit(body, stance, zone, left + halfWidth, 0, place))
          least = Math.min(least, place.x + halfWidth);
      });
    });
    return least;
  };
  let [longest, area] = [0, 0];
  for (let k = 0; k < layout.items; k++) {
    longest = Math.max(longest, leastOf(k));
    area += layout.shapes[layout.bodies[k].stances[0].shape].of.area;
  }
  return sheets || width === undefined ? longest : Math.max(longest, area / width);
}

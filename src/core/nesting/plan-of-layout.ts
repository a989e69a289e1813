import type { Snapshot } from './layout.ts';
import type { Prepared } from './prepare-search.ts';
import type { NestPlacement, NestPlan, NestProblem } from './types.ts';

/** The plan a layout is; `left`: items that are not part of it. */
export function planOfLayout(
  problem: NestProblem,
  { layout, items }: Prepared,
  snapshot: Snapshot,
  bound: number,
): NestPlan {
  const placements: (NestPlacement | undefined)[] = [];
  let [used, area] = [0, 0];
  for (let k = 0; k < items; k++) {
    const { shape, turn } = layout.bodies[k].stances[snapshot.stance[k]];
    const { middleX, middleY, halfWidth, of } = layout.shapes[shape];
    const zone = layout.zones[layout.zoneAt(snapshot.x[k])];
    placements.push({
      turn,
      sheet: zone.sheet,
      x: snapshot.x[k] - middleX - zone.left,
      y: snapshot.y[k] - middleY - zone.bottom,
    });
    used = Math.max(used, snapshot.x[k] + halfWidth);
    area += of.area;
  }
  const width = problem.width ?? 0;
  return {
    placements,
    length: used,
    sheetsUsed: 1,
    density: area / (used * width),
    bound,
    evaluations: layout.evaluations,
    left: [],
  };
}

/** What the longest item needs in the best of its turns, or the area of all over the width of the strip. */
export function boundOf(problem: NestProblem, { layout, items }: Prepared): number {
  const width = problem.width ?? 0;
  let [longest, area] = [0, 0];
  for (let k = 0; k < items; k++) {
    const { stances, moves } = layout.bodies[k];
    const shapes = stances.map(({ shape }) => layout.shapes[shape]);
    const fitting = shapes.filter(({ halfHeight }) => 2 * halfHeight <= width * (1 + 1e-6));
    longest = Math.max(longest, 2 * Math.min(...fitting.map(({ halfWidth }) => halfWidth)));
    if (!moves) longest = Math.max(longest, layout.rightOf(k));
    area += shapes[0].of.area;
  }
  return Math.max(longest, area / width);
}

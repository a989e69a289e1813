import type { ChartSurface } from '../mesh/index.ts';
import { frameAt, gapBetween } from './gap-between.ts';

/** As far as one body is moved to the front or back of another, mm, and in which steps. */
const FARTHEST = 25;
const STEP = 0.5;
/** What is too large can be padded, what is too small cannot be taken away: it counts so much less. */
const PADDED = 0.05;
const COLUMNS = 36;
const ROW_STEP = 20;

/**
 * How far to the front (mm, negative: back) the second body is to be moved so that the first lies inside it as far as may be: who carries
 * more in front stands farther back, which no pad is needed for. Least squares over a coarse grid, waists at one height.
 */
export function standOver(from: ChartSurface, to: ChartSurface): number {
  const [low, high] = from.vRange;
  const rows = Math.round((high - low) / ROW_STEP);
  const chart = Float64Array.from({ length: 2 * COLUMNS * (rows + 1) }, (_, i) => {
    const at = i >> 1;
    if (i % 2 === 0) return (2 * Math.PI * (at % COLUMNS)) / COLUMNS;
    return low + ((high - low) * Math.floor(at / COLUMNS)) / rows;
  });
  const gaps = gapBetween(from, to, chart);
  const turns = gaps.map((_, i) => frameAt(from, chart[2 * i], chart[2 * i + 1]).normal[1]);
  const costOf = (dy: number): number =>
    gaps.reduce((sum, gap, i) => {
      const moved = gap + dy * turns[i];
      return sum + (moved < 0 ? 1 : PADDED) * moved * moved;
    }, 0);
  let best = 0;
  for (let dy = -FARTHEST; dy <= FARTHEST; dy += STEP) if (costOf(dy) < costOf(best)) best = dy;
  return best;
}

/** The surface moved to the front. */
export function moveToFront(surface: ChartSurface, dy: number): ChartSurface {
  return {
    ...surface,
    evaluate(chart, out) {
      const points = surface.evaluate(chart, out);
      for (let i = 1; i < (chart.length / 2) * 3; i += 3) points[i] += dy;
      return points;
    },
  };
}

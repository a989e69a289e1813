import { metresPerYard, withUsual } from '../base/index.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import type { LayPlan, Stock } from './types.ts';

/** Cloth is sold by so much (common practice, no source): mm, and parts of a yard. */
const STEP = 50;
const PARTS_OF_YARD = 8;

/** Cloth to buy for a plan on a roll: what it takes with what washing takes off, in steps it is sold by. mm. */
export interface LengthToBuy {
  readonly metric: number;
  readonly yards: number;
}

export function lengthToBuy(plan: Pick<LayPlan, 'length'>, stock: Stock): LengthToBuy {
  const { shrinkage } = withUsual(LAYING_OPTIONS, stock);
  const unwashed = plan.length / (1 - shrinkage);
  const yard = 1000 * metresPerYard;
  // A hair less is not another step.
  const up = (value: number): number => Math.ceil(value - 1e-6);
  return {
    metric: STEP * up(unwashed / STEP),
    yards: up((unwashed / yard) * PARTS_OF_YARD) / PARTS_OF_YARD,
  };
}

import type { StanceId } from './parameter-ids.ts';
import { ARMPIT_V, KNOT } from './rails.ts';
import {
  reach,
  rowOf,
  type Side,
  sideAngle,
  type TapeContext,
  type TapeReach,
  type TapeRule,
  traceExtent,
} from './tape-rule.ts';
import type { ChartPoint } from './types.ts';

/** A place of the body, and along which axis it is away from the wall or the floor. */
function standingRule(
  stance: StanceId,
  sided: boolean,
  reached: TapeReach,
  place: (context: TapeContext, side: Side) => ChartPoint,
): TapeRule {
  const axis = stance === 'wall' ? 1 : 2;
  const locate = (c: TapeContext, side: Side): Float64Array => {
    const { u, v } = place(c, side);
    const p = new Float64Array(3);
    c.evaluator.point(u, v, p);
    return p;
  };
  const away = (c: TapeContext): number => (stance === 'wall' ? -c.stance.wall : c.stance.floor);
  return {
    kind: 'distance',
    sided,
    reach: { ...reached, stance },
    measure: (c, side) => locate(c, side)[axis] + away(c),
    trace: (c, side) => {
      const p = locate(c, side);
      const foot = p.slice();
      foot[axis] = -away(c);
      return Float64Array.of(...foot, ...p);
    },
    touch: (c, side) => {
      const { u, v } = place(c, side);
      const pulls = new Float64Array(3);
      pulls[axis] = 1;
      return { chart: Float64Array.of(u, v), pulls };
    },
  };
}

const [FRONT, BACK] = [Math.PI / 2, -Math.PI / 2];

/** Where the centre line stands out most between two chart heights: the best of even steps, and the parabola through its neighbours. */
function standsOut(u: number, from: number, to: number): (context: TapeContext) => ChartPoint {
  const steps = 12;
  const at = (k: number): number => from + ((to - from) * k) / steps;
  return ({ evaluator }) => {
    const p = new Float64Array(3);
    const outward = Array.from({ length: steps + 1 }, (_, k) => {
      evaluator.point(u, at(k), p);
      return Math.sign(u) * p[1];
    });
    const best = outward.indexOf(Math.max(...outward));
    if (best === 0 || best === steps) return { u, v: at(best) };
    const [low, middle, high] = outward.slice(best - 1, best + 2);
    return { u, v: at(best + (0.5 * (high - low)) / (2 * middle - low - high)) };
  };
}

/** The hindmost point of the row of the hip. */
function hindmostOfHip(context: TapeContext): ChartPoint {
  const row = rowOf(context, KNOT.hip);
  const { chart } = traceExtent(row, KNOT.hip, 1);
  return { u: chart[0], v: chart[1] };
}

/** Distances from a wall behind the person, and heights of landmarks over the floor. */
export const STANCE_RULES: Readonly<Record<string, TapeRule>> = {
  neckSideHeight: standingRule('floor', false, reach('neckBase', 'neckBase', { bumps: false }), () => ({
    u: sideAngle('right'),
    v: KNOT.neckBase,
  })),
  neckFrontHeight: standingRule('floor', false, reach('neckBase', 'neckBase', { bumps: false }), () => ({
    u: FRONT,
    v: KNOT.neckBase,
  })),
  shoulderHeight: standingRule('floor', true, reach('shoulderPoint', 'shoulderPoint'), (_, side) => ({
    u: sideAngle(side),
    v: KNOT.shoulderPoint,
  })),
  armpitHeight: standingRule('floor', true, reach('upperChest', 'midArm'), (_, side) => ({
    u: sideAngle(side),
    v: ARMPIT_V,
  })),
  bustHeight: standingRule(
    'floor',
    false,
    reach('bust', 'bust', { isRow: false, bustPoint: true }),
    (c) => c.bust.right,
  ),
  hipHeight: standingRule('floor', false, reach('hip', 'hip'), () => ({ u: BACK, v: KNOT.hip })),
  wallNape: standingRule('wall', false, reach('neckBase', 'neckBase', { bumps: false }), () => ({
    u: BACK,
    v: KNOT.neckBase,
  })),
  wallBlades: standingRule(
    'wall',
    false,
    reach('underbust', 'midShoulder'),
    standsOut(BACK, KNOT.underbust, KNOT.midShoulder),
  ),
  wallWaistBack: standingRule('wall', false, reach('waist', 'waist', { bumps: false }), () => ({
    u: BACK,
    v: KNOT.waist,
  })),
  wallSeat: standingRule('wall', false, reach('hip', 'hip'), hindmostOfHip),
  wallNeckSide: standingRule('wall', false, reach('neckBase', 'neckBase', { bumps: false }), () => ({
    u: sideAngle('right'),
    v: KNOT.neckBase,
  })),
  wallNeckFront: standingRule('wall', false, reach('neckBase', 'neckBase', { bumps: false }), () => ({
    u: FRONT,
    v: KNOT.neckBase,
  })),
  wallBust: standingRule(
    'wall',
    false,
    reach('bust', 'bust', { isRow: false, bustPoint: true }),
    (c) => c.bust.right,
  ),
  wallWaistFront: standingRule('wall', false, reach('waist', 'waist', { bumps: false }), () => ({
    u: FRONT,
    v: KNOT.waist,
  })),
  wallBelly: standingRule('wall', false, reach('hip', 'waist'), standsOut(FRONT, KNOT.hip, KNOT.waist)),
};

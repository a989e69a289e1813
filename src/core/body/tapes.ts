import { ARMPIT_V, KNOT, type KnotId } from './rails.ts';
import { STANCE_RULES } from './stance-tapes.ts';
import {
  acrossPath,
  backWaistPath,
  bridgeRow,
  frontPath,
  liftLoop,
  measureBridgedRow,
  pathLength,
  pathOfRow,
  sampleUpright,
  type TapePath,
} from './tape-paths.ts';
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
import { touchBetween, touchFront, touchPath } from './tape-touches.ts';
import type { ChartPoint } from './types.ts';

function girthRule(knot: KnotId): TapeRule {
  return {
    kind: 'girth',
    sided: false,
    reach: reach(knot, knot, { bumps: knot !== 'waist' }),
    measure: (c) => measureBridgedRow(rowOf(c, KNOT[knot])),
    trace: (c) => bridgeRow(rowOf(c, KNOT[knot]), KNOT[knot]).points,
    touch: (c) => touchPath(bridgeRow(rowOf(c, KNOT[knot]), KNOT[knot]), true),
  };
}

function extentRule(knot: KnotId, kind: 'width' | 'depth'): TapeRule {
  const axis = kind === 'width' ? 0 : 1;
  return {
    kind,
    sided: false,
    reach: reach(knot, knot, { bumps: knot !== 'waist' && knot !== 'neckBase' }),
    measure: (c) => measureExtent(rowOf(c, KNOT[knot]), axis),
    trace: (c) => traceExtent(rowOf(c, KNOT[knot]), KNOT[knot], axis).points,
    touch: (c) => touchBetween(traceExtent(rowOf(c, KNOT[knot]), KNOT[knot], axis).chart, axis),
  };
}

function pathRule(
  sided: boolean,
  reached: TapeReach,
  path: (context: TapeContext, side: Side) => TapePath,
): TapeRule {
  return {
    kind: 'length',
    sided,
    reach: reached,
    trace: (c, side) => path(c, side).points,
    measure: (c, side) => pathLength(path(c, side).points),
    touch: (c, side) => touchPath(path(c, side), false),
  };
}

/** From the side neck point over the bust point, on to the waist or not. */
function frontRule(reached: TapeReach, toWaist: boolean): TapeRule {
  const path = (c: TapeContext, side: Side): TapePath => frontPath(c.evaluator, side, c.bust[side], toWaist);
  return {
    ...pathRule(true, reached, path),
    touch: (c, side) => touchFront(c.evaluator, path(c, side), c.bust[side].v),
  };
}

function uprightRule(from: number, to: number, reached: TapeReach, sided = false): TapeRule {
  return pathRule(sided, { ...reached, bumps: false }, (c, side) =>
    sampleUpright(c.evaluator, sided ? sideAngle(side) : 0, from, to),
  );
}

const LEVELS_WITH_BOXES = ['bust', 'underbust', 'waist', 'highHip', 'hip'] as const;

/** How each measure reads on a body. */
export const TAPE_RULES: Readonly<Record<string, TapeRule>> = {
  bustGirth: girthRule('bust'),
  waistGirth: girthRule('waist'),
  hipGirth: girthRule('hip'),
  // The pull towards the armhole's plane reaches this row, so the knots above move it too.
  upperChestGirth: {
    ...girthRule('upperChest'),
    reach: reach('upperChest', 'shoulderPoint', { armhole: true }),
  },
  underbustGirth: girthRule('underbust'),
  highHipGirth: girthRule('highHip'),
  ...Object.fromEntries(
    LEVELS_WITH_BOXES.flatMap((knot) => [
      [`${knot}Width`, extentRule(knot, 'width')],
      [`${knot}Depth`, extentRule(knot, 'depth')],
    ]),
  ),
  neckBaseGirth: {
    kind: 'girth',
    sided: false,
    reach: reach('neckBase', 'neckBase', { bumps: false }),
    measure: (c) => pathLength(rowOf(c, KNOT.neckBase), true),
    trace: (c) => rowOf(c, KNOT.neckBase),
    touch: (c) => touchPath(pathOfRow(rowOf(c, KNOT.neckBase), KNOT.neckBase), true),
  },
  neckGirth: {
    kind: 'girth',
    sided: false,
    reach: reach('neckMiddle', 'neckMiddle', { bumps: false }),
    measure: (c) => pathLength(rowOf(c, KNOT.neckMiddle), true),
    trace: (c) => rowOf(c, KNOT.neckMiddle),
    touch: (c) => touchPath(pathOfRow(rowOf(c, KNOT.neckMiddle), KNOT.neckMiddle), true),
  },
  neckBaseWidth: extentRule('neckBase', 'width'),
  neckBaseDepth: extentRule('neckBase', 'depth'),
  backWaistLength: pathRule(false, reach('waist', 'neckBase'), (c) => backWaistPath(c.evaluator)),
  frontWaistLength: frontRule(reach('waist', 'neckBase', { bustPoint: true }), true),
  neckToBustPoint: frontRule(reach('bust', 'neckBase', { bustPoint: true }), false),
  bustPointSpan: pathRule(false, reach('bust', 'bust', { isRow: false, bustPoint: true }), (c) =>
    traceBetween(c, c.bust.right, c.bust.left),
  ),
  waistToHighHip: uprightRule(KNOT.waist, KNOT.highHip, reach('highHip', 'waist')),
  waistToHip: uprightRule(KNOT.waist, KNOT.hip, reach('hip', 'waist'), true),
  // Below the lower hip.
  hipToBase: pathRule(false, reach('base', 'hip', { bumps: false }), (c) =>
    sampleUpright(c.evaluator, sideAngle(lowerHip(c)), KNOT.hip, KNOT.base),
  ),
  sideLength: uprightRule(KNOT.waist, ARMPIT_V, reach('waist', 'midArm'), true),
  shoulderLength: uprightRule(KNOT.neckBase, KNOT.shoulderPoint, reach('shoulderPoint', 'neckBase'), true),
  shoulderDrop: {
    kind: 'length',
    sided: true,
    reach: reach('shoulderPoint', 'neckBase', { bumps: false }),
    measure: (c, side) => {
      const path = traceShoulderDrop(c, side);
      return path[2] - path[5];
    },
    trace: traceShoulderDrop,
    touch: (_, side) => {
      const u = sideAngle(side);
      return touchBetween(Float64Array.of(u, KNOT.shoulderPoint, u, KNOT.neckBase), 2);
    },
  },
  acrossBack: acrossRule(-1),
  acrossFront: acrossRule(1),
  armscyeGirth: {
    kind: 'girth',
    sided: true,
    reach: reach('upperChest', 'shoulderPoint', { bumps: false, armhole: true }),
    measure: (c, side) => pathLength(liftLoop(c.evaluator, c.armholes[side]), true),
    trace: (c, side) => liftLoop(c.evaluator, c.armholes[side]),
    touch: (c, side) => {
      const chart = c.armholes[side];
      return touchPath({ points: liftLoop(c.evaluator, chart), chart }, true);
    },
  },
  ...STANCE_RULES,
  napeRise: {
    kind: 'length',
    sided: false,
    reach: reach('neckBase', 'neckBase', { bumps: false }),
    measure: (c) => traceRise(c)[5],
    trace: traceRise,
    touch: () => ({ chart: Float64Array.of(-Math.PI / 2, KNOT.neckBase), pulls: Float64Array.of(0, 0, 1) }),
  },
};

/** Depth over breadth of a level row, breasts included. */
export function measureLevelRatio(context: TapeContext, knot: KnotId): number {
  const row = rowOf(context, KNOT[knot]);
  return measureExtent(row, 1) / measureExtent(row, 0);
}

/** Taut girth, width and depth of a level row. */
export function measureSection(
  context: TapeContext,
  knot: KnotId,
): { girth: number; width: number; depth: number } {
  const row = rowOf(context, KNOT[knot]);
  return { girth: measureBridgedRow(row), width: measureExtent(row, 0), depth: measureExtent(row, 1) };
}

function lowerHip({ evaluator }: TapeContext): Side {
  const p = new Float64Array(6);
  evaluator.point(sideAngle('right'), KNOT.hip, p, 0);
  evaluator.point(sideAngle('left'), KNOT.hip, p, 3);
  return p[5] < p[2] - LEAST_TILT ? 'left' : 'right';
}

/** Rows tilted by less count as level, mm. */
const LEAST_TILT = 1e-6;

function measureExtent(row: Float64Array, axis: 0 | 1): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = axis; i < row.length; i += 3) {
    if (row[i] < low) low = row[i];
    if (row[i] > high) high = row[i];
  }
  return high - low;
}

function traceBetween(context: TapeContext, a: ChartPoint, b: ChartPoint): TapePath {
  const chart = Float64Array.of(a.u, a.v, b.u, b.v);
  return { points: liftLoop(context.evaluator, chart), chart };
}

/** From the height of the side neck point straight down to the shoulder point. */
function traceShoulderDrop(context: TapeContext, side: Side): Float64Array {
  const p = new Float64Array(6);
  context.evaluator.point(sideAngle(side), KNOT.neckBase, p, 0);
  context.evaluator.point(sideAngle(side), KNOT.shoulderPoint, p, 3);
  return Float64Array.from([p[3], p[4], p[2], p[3], p[4], p[5]]);
}

/** From the waist level straight up to the nape. */
function traceRise(context: TapeContext): Float64Array {
  const p = new Float64Array(3);
  context.evaluator.point(-Math.PI / 2, KNOT.neckBase, p);
  return Float64Array.from([p[0], p[1], 0, p[0], p[1], p[2]]);
}

/** Between the arm creases, along the row half-way down the armhole; outward 1 in front, −1 behind. */
function acrossRule(outward: 1 | -1): TapeRule {
  const v = 0.5 * (ARMPIT_V + KNOT.shoulderPoint);
  const path = (context: TapeContext): TapePath => {
    const holes = context.armholes;
    // Loops start at the armpit: a quarter on lies the front break on the right, the back break on the left.
    const quarter = holes.right.length / 4;
    const [from, to] =
      outward === 1
        ? [holes.right[quarter], holes.left[3 * quarter]]
        : [holes.left[quarter], holes.right[3 * quarter] + 2 * Math.PI];
    return acrossPath(context.evaluator, v, from, to, outward);
  };
  return pathRule(false, reach('upperChest', 'shoulderPoint', { armhole: true }), path);
}

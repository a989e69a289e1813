import { ARMPIT_V, KNOT, type KnotId, type ShapeEvaluator } from './rails.ts';
import {
  acrossPath,
  backWaistPath,
  bridgeRow,
  frontPath,
  liftLoop,
  pathLength,
  sampleRow,
  sampleUpright,
} from './tape-paths.ts';
import type { ChartPoint, TapeKind } from './types.ts';

/** Where the fitted landmarks lie that tapes start from. */
export interface TapeContext {
  readonly evaluator: ShapeEvaluator;
  readonly bust: { readonly right: ChartPoint; readonly left: ChartPoint };
  readonly armholes: { readonly right: Float64Array; readonly left: Float64Array } | null;
  /** Rows already sampled, by v: several tapes read the same row. */
  readonly rows: Map<number, Float64Array>;
}

export interface TapeShape {
  readonly length: number;
  /** n × 3 path; closed for girths. */
  readonly path: Float64Array;
}

export type Side = 'right' | 'left';

export interface TapeRule {
  readonly kind: TapeKind;
  readonly sided: boolean;
  /** null when the body has no such place (an armhole that the plane misses). */
  readonly read: (context: TapeContext, side: Side) => TapeShape | null;
}

const LEVEL_GIRTHS = {
  bustGirth: 'bust',
  waistGirth: 'waist',
  hipGirth: 'hip',
  upperChestGirth: 'upperChest',
  underbustGirth: 'underbust',
  highHipGirth: 'highHip',
} as const satisfies Record<string, KnotId>;

/** How each measure reads on a body. */
export const TAPE_RULES: Readonly<Record<string, TapeRule>> = {
  ...Object.fromEntries(
    Object.entries(LEVEL_GIRTHS).map(([id, knot]) => [
      id,
      { kind: 'girth', sided: false, read: (c) => readGirth(c, KNOT[knot]) } as TapeRule,
    ]),
  ),
  ...Object.fromEntries(
    (['bust', 'underbust', 'waist', 'highHip', 'hip'] as const).flatMap((knot) => [
      [
        `${knot}Width`,
        { kind: 'width', sided: false, read: (c) => readExtent(c, KNOT[knot], 0) } as TapeRule,
      ],
      [
        `${knot}Depth`,
        { kind: 'depth', sided: false, read: (c) => readExtent(c, KNOT[knot], 1) } as TapeRule,
      ],
    ]),
  ),
  neckBaseGirth: {
    kind: 'girth',
    sided: false,
    read: (c) => {
      const path = row(c, KNOT.neckBase);
      return { path, length: pathLength(path, true) };
    },
  },
  neckBaseWidth: { kind: 'width', sided: false, read: (c) => readExtent(c, KNOT.neckBase, 0) },
  neckBaseDepth: { kind: 'depth', sided: false, read: (c) => readExtent(c, KNOT.neckBase, 1) },
  backWaistLength: { kind: 'length', sided: false, read: (c) => open(backWaistPath(c.evaluator)) },
  frontWaistLength: {
    kind: 'length',
    sided: true,
    read: (c, side) => open(frontPath(c.evaluator, side, c.bust[side], true)),
  },
  neckToBustPoint: {
    kind: 'length',
    sided: true,
    read: (c, side) => open(frontPath(c.evaluator, side, c.bust[side], false)),
  },
  bustPointSpan: { kind: 'length', sided: false, read: (c) => between(c, c.bust.right, c.bust.left) },
  waistToHighHip: {
    kind: 'length',
    sided: false,
    read: (c) => open(sampleUpright(c.evaluator, 0, KNOT.waist, KNOT.highHip)),
  },
  waistToHip: {
    kind: 'length',
    sided: false,
    read: (c) => open(sampleUpright(c.evaluator, 0, KNOT.waist, KNOT.hip)),
  },
  hipToBase: {
    kind: 'length',
    sided: false,
    read: (c) => open(sampleUpright(c.evaluator, 0, KNOT.hip, KNOT.base)),
  },
  sideLength: {
    kind: 'length',
    sided: false,
    read: (c) => open(sampleUpright(c.evaluator, 0, KNOT.waist, ARMPIT_V)),
  },
  shoulderLength: {
    kind: 'length',
    sided: true,
    read: (c, side) => open(sampleUpright(c.evaluator, sideAngle(side), KNOT.neckBase, KNOT.shoulderPoint)),
  },
  shoulderDrop: { kind: 'length', sided: true, read: readShoulderDrop },
  acrossBack: { kind: 'length', sided: false, read: (c) => readAcross(c, -1) },
  acrossFront: { kind: 'length', sided: false, read: (c) => readAcross(c, 1) },
  armscyeGirth: {
    kind: 'girth',
    sided: true,
    read: (c, side) => {
      if (!c.armholes) return null;
      const path = liftLoop(c.evaluator, c.armholes[side]);
      return { path, length: pathLength(path, true) };
    },
  },
  napeRise: { kind: 'length', sided: false, read: (c) => rise(c, -Math.PI / 2, KNOT.neckBase) },
};

function sideAngle(side: Side): number {
  return side === 'right' ? 0 : Math.PI;
}

function row(context: TapeContext, v: number): Float64Array {
  let points = context.rows.get(v);
  if (!points) {
    points = sampleRow(context.evaluator, v);
    context.rows.set(v, points);
  }
  return points;
}

function open(path: Float64Array): TapeShape {
  return { path, length: pathLength(path) };
}

function readGirth(context: TapeContext, v: number): TapeShape {
  const path = bridgeRow(row(context, v));
  return { path, length: pathLength(path, true) };
}

function readExtent(context: TapeContext, v: number, axis: 0 | 1): TapeShape {
  const points = row(context, v);
  let low = 0;
  let high = 0;
  for (let i = 0; i < points.length; i += 3) {
    if (points[i + axis] < points[low + axis]) low = i;
    if (points[i + axis] > points[high + axis]) high = i;
  }
  const path = Float64Array.from([...points.subarray(low, low + 3), ...points.subarray(high, high + 3)]);
  return { path, length: points[high + axis] - points[low + axis] };
}

function between(context: TapeContext, a: ChartPoint, b: ChartPoint): TapeShape {
  const path = new Float64Array(6);
  context.evaluator.point(a.u, a.v, path, 0);
  context.evaluator.point(b.u, b.v, path, 3);
  return open(path);
}

function readShoulderDrop(context: TapeContext, side: Side): TapeShape {
  const p = new Float64Array(6);
  context.evaluator.point(sideAngle(side), KNOT.neckBase, p, 0);
  context.evaluator.point(sideAngle(side), KNOT.shoulderPoint, p, 3);
  return { length: p[2] - p[5], path: Float64Array.from([p[3], p[4], p[2], p[3], p[4], p[5]]) };
}

function rise(context: TapeContext, u: number, v: number): TapeShape {
  const p = new Float64Array(3);
  context.evaluator.point(u, v, p);
  return { length: p[2], path: Float64Array.from([p[0], p[1], 0, p[0], p[1], p[2]]) };
}

/** Between the arm creases, along the row half-way down the armhole. */
function readAcross(context: TapeContext, outward: 1 | -1): TapeShape | null {
  if (!context.armholes) return null;
  const v = 0.5 * (ARMPIT_V + KNOT.shoulderPoint);
  const { right, left } = context.armholes;
  // Loops start at the armpit: a quarter on lies the front break on the right, the back break on the left.
  const quarter = right.length / 4;
  const breakAt = (loop: Float64Array, share: number): number => loop[share * quarter];
  const [from, to] =
    outward === 1
      ? [breakAt(right, 1), breakAt(left, 3)]
      : [breakAt(left, 1), breakAt(right, 3) + 2 * Math.PI];
  return open(acrossPath(context.evaluator, v, from, to, outward));
}

/** Depth over breadth of a level row, breasts included. */
export function readLevelRatio(context: TapeContext, knot: KnotId): number {
  return readExtent(context, KNOT[knot], 1).length / readExtent(context, KNOT[knot], 0).length;
}

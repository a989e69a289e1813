import { MET_WITHIN } from './fit-issues.ts';
import type { FittedShape, Target } from './fit-problem.ts';
import { KNOT, type OnBump, type OnTrunk } from './rails.ts';
import type { TapeContext } from './tape-rule.ts';

/** Something that the faired surface must read. */
export interface Demand {
  readonly id: string;
  readonly wanted: number;
  /** 0: exactly; else how far it gives way to a unit of force, mm². */
  readonly give: number;
  readonly read: (context: TapeContext) => number;
  /** Passes the gradient on to points of the bare trunk and to heights of bumps. */
  readonly pull: (context: TapeContext, onTrunk: OnTrunk, onBump: OnBump) => void;
}

/** What was not typed gives way by this share of its squared spread. */
const ESTIMATE_GIVE = 0.00002;
const PLANE_GIVE = 1e-4;
/** Of the rim's points, how many apart those are that are held in the plane. */
const PLANE_STRIDE = 4;

/**
 * Typed tapes exactly (those that conflict: as far as the rough fit came), estimates near to what the rough fit made of
 * them, and the armholes' rims in their planes.
 */
export function listDemands(rough: FittedShape, targets: readonly Target[]): Demand[] {
  return [...targets.map((target) => demandOfTape(rough, target)), waistAtZero, ...rimDemands(rough)];
}

/** Heights count from the waist. */
const waistAtZero: Demand = {
  id: 'waist',
  wanted: 0,
  give: 0,
  read: ({ evaluator }) => {
    const p = new Float64Array(3);
    evaluator.point(0, KNOT.waist, p);
    return p[2];
  },
  pull: (_, onTrunk) => onTrunk(0, KNOT.waist, 0, 0, 1),
};

function demandOfTape(
  { context: start }: FittedShape,
  { id, rule, side, value, spread, typed, isSoft }: Target,
): Demand {
  const got = rule.measure(start, side);
  return {
    id,
    wanted: typed && !isSoft && Math.abs(got - value) <= MET_WITHIN ? value : got,
    give: typed && !isSoft ? 0 : ESTIMATE_GIVE * spread * spread,
    read: (context) => rule.measure(context, side),
    pull: (context, onTrunk, onBump) => {
      const { chart, pulls } = rule.touch(context, side);
      for (let i = 0; i < chart.length / 2; i++) {
        context.evaluator.passPull(
          chart[2 * i],
          chart[2 * i + 1],
          pulls.subarray(3 * i, 3 * i + 3),
          onTrunk,
          onBump,
        );
      }
    },
  };
}

/** The skin should reach the armhole's plane by itself, so that little is left to be drawn flat. */
function rimDemands({ shape, context: { armholes } }: FittedShape): Demand[] {
  const sides = shape.isMirrorSymmetric ? (['right'] as const) : (['right', 'left'] as const);
  return sides.flatMap((side) => {
    const loop = armholes[side];
    const demands: Demand[] = [];
    for (let i = 0; i < loop.length / 2; i += PLANE_STRIDE) {
      const [u, v] = [loop[2 * i], loop[2 * i + 1]];
      // At the armpit and at the shoulder point the plane hangs on the skin.
      if (i === 0 || i === loop.length / 4) continue;
      demands.push({
        id: `rim.${side}.${i}`,
        wanted: 0,
        give: PLANE_GIVE,
        read: ({ evaluator }) => evaluator.planeGap(u, v),
        pull: ({ evaluator }, onTrunk, onBump) => evaluator.passGap(u, v, onTrunk, onBump),
      });
    }
    return demands;
  });
}

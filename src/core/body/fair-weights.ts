import { findSplineInterval } from '../math/index.ts';
import { acrossOval, radiusTowards } from './armhole-oval.ts';
import { heightOf, LEAST_BREAST } from './bump-reaches.ts';
import { ARMHOLE_MIDDLE, ARMHOLE_REACH, KNOT_IDS, KNOTS, type KnotId } from './rails.ts';
import type { BodyShape, TrunkNet } from './types.ts';

/** x and y say where the skin is; z mostly how rows are spaced on it. */
export type Coordinate = 'plan' | 'height';

/** What a place of the trunk asks for, beside the tapes. */
export interface FairWeights {
  /** How much it holds to the rough surface. */
  readonly hold: number;
  /** How much it must be smooth in third derivatives. */
  readonly smooth: number;
  /** How much it must be straight upwards. */
  readonly straight: number;
}

/** Rows that are measured say most of where the body is. */
const LEVEL_ROWS: readonly KnotId[] = ['base', 'hip', 'highHip', 'waist', 'underbust', 'upperChest'];
/** How far a row's say reaches up and down, mm. */
const ROW_REACH = 14;

/**
 * A flat chest is held more, its bust row too: its section is squarer than fairness would leave it.
 * Weights over the right half, −π/2 ≤ u ≤ π/2; t is the rise. The rough surface is held least where it is crude: behind
 * the bust, under the breasts and round the armhole.
 */
export function makeFairWeights(
  shape: BodyShape,
  net: TrunkNet,
): (u: number, t: number, coordinate: Coordinate) => FairWeights {
  const riseOf = (knot: KnotId): number => net.rises[KNOT_IDS.indexOf(knot)];
  const levels = LEVEL_ROWS.map(riseOf);
  const flatness = 1 - step((heightOf(shape, 0) - LEAST_BREAST) / LEAST_BREAST);
  const base = 0.2 + 0.2 * flatness;
  const [neckBase, shoulder, bust] = [riseOf('neckBase'), riseOf('shoulderPoint'), riseOf('bust')];
  const [highHip, upperChest, underbust] = [riseOf('highHip'), riseOf('upperChest'), riseOf('underbust')];
  return (u, t, coordinate) => {
    const isBack = u < 0;
    const onNeck = step((t - neckBase + 15) / 15);
    const near = (z: number): number => Math.exp(-(((t - z) / ROW_REACH) ** 2));
    const nearRow = Math.max(...levels.map(near), flatness * near(bust));
    const fromArm = measureFromArm(shape, u, chartHeight(net, t));
    const aroundArm = fromArm > 1 ? Math.exp(-(((fromArm - 1) / 1.2) ** 2)) : 1;
    const behindBust = isBack
      ? 0.7 * Math.exp(-(((t - 0.5 * (bust + underbust)) / (0.6 * (upperChest - underbust))) ** 2))
      : 0;
    const crude = Math.max(aroundArm, behindBust);
    const ridge = Math.exp(-((u / 0.35) ** 2)) * step((t - shoulder - 5) / 15) * (1 - onNeck);
    const inArm = step((1.4 - fromArm) / 0.5);
    const isHeight = coordinate === 'height';
    return {
      hold:
        (0.04 + (base + 0.5 * nearRow) * (1 - crude) + (isHeight ? 0.5 : 0)) * (1 - 0.9 * inArm) +
        0.7 * ridge +
        40 * onNeck,
      smooth: (isHeight ? 0.1 : 1) * (1 - 0.99 * inArm) * (1 - 0.98 * onNeck),
      straight: isHeight || t < highHip || t > shoulder ? 0 : isBack ? 1 : 0.3,
    };
  };
}

/** 1 on the armhole's oval, squared distance over its half axes. */
function measureFromArm({ armhole }: BodyShape, u: number, v: number): number {
  const up = (v - ARMHOLE_MIDDLE) / ARMHOLE_REACH;
  const across = acrossOval(armhole, u, up);
  return (across * across + up * up) / radiusTowards(armhole, across, up) ** 2;
}

/** Chart height of a rise, to the nearest mm or so. */
function chartHeight({ rises }: TrunkNet, t: number): number {
  const i = findSplineInterval(rises, t);
  return KNOTS[i] + ((t - rises[i]) / (rises[i + 1] - rises[i])) * (KNOTS[i + 1] - KNOTS[i]);
}

function step(t: number): number {
  if (t <= 0) return 0;
  return t >= 1 ? 1 : t * t * (3 - 2 * t);
}

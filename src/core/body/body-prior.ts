import { type Estimate, estimateMeasures } from './estimate-measures.ts';
import { knownToSurvey, meanValues } from './known-to-survey.ts';
import { ARMPIT_V, KNOT, type KnotId, type RAIL } from './rails.ts';
import { PARAMETER_IDS, type Parameter, type ParameterId, type ShapeNumbers } from './shape-parameters.ts';
import type { BodyInput } from './types.ts';

/** What is believed before the tapes are read: typed values, estimates, and a Gaussian for every unknown. */
export interface BodyPrior {
  /** Survey estimates of what was not typed. */
  readonly estimates: Readonly<Record<string, Estimate>>;
  readonly parameters: readonly Parameter[];
  /** Wanted depth / breadth of level sections, with spread. */
  readonly ratios: readonly {
    readonly level: 'bust' | 'underbust' | 'waist' | 'highHip' | 'hip' | 'upperChest';
    readonly mean: number;
    readonly spread: number;
  }[];
  /** Usual distances between neighbouring rows: z(upper) − z(lower), mm. Rows that crowd would crease the body. */
  readonly spacings: readonly {
    readonly upper: ParameterId;
    readonly lower: ParameterId;
    readonly mean: number;
    readonly spread: number;
  }[];
  /** Rails that should not bulge at a knot: how far from the straight between the neighbouring knots, mm. */
  readonly straights: readonly {
    readonly rail: keyof typeof RAIL;
    readonly knot: KnotId;
    readonly mean: number;
    readonly spread: number;
  }[];
  readonly numbers: ShapeNumbers;
}

/** Depth / breadth where the survey took no calipers (common practice, no source). */
const UNSURVEYED_RATIO = {
  bust: { underbust: 0.73, upperChest: 0.64 },
  chest: { underbust: 0.72, upperChest: 0.66 },
} as const;

/** Girth of a section of half-width 1 and half-depth r over that of an ellipse, near enough to start from. */
const FULLNESS = 1.035;

/** Means and spreads for the fit; lengths mm. */
export function makePrior(input: BodyInput, shape: Readonly<Record<string, number>>): BodyPrior {
  const typed = meanValues(input.measures);
  const known = knownToSurvey(typed);
  const estimates = estimateMeasures(input.figure, known);
  const best = (id: string): number => known[id] ?? estimates[id].mean;
  const isBust = input.figure === 'bust';
  const unsurveyed = UNSURVEYED_RATIO[input.figure];
  const ratioOf = {
    bust: best('bustRatio') + shape.bustSection,
    waist: best('highHipRatio') + shape.waistSection,
    highHip: best('highHipRatio') + shape.highHipSection,
    hip: best('hipRatio') + shape.hipSection,
    underbust: unsurveyed.underbust + 0.5 * shape.bustSection,
    upperChest: unsurveyed.upperChest + 0.5 * shape.bustSection,
  };
  const halfWidth = (girth: number, ratio: number): number =>
    girth / (2 * Math.PI * Math.sqrt(0.5 * (1 + ratio * ratio)) * FULLNESS);
  const size = best('bustGirth') / (isBust ? 909 : 989);
  const cup = Math.max(best('bustGirth') - best('underbustGirth'), 20);
  const neck = best('neckBaseGirth') / 346;
  const drop = best('shoulderDrop');
  const aNeck = 52 * neck;
  const a = {
    hip: halfWidth(best('hipGirth'), ratioOf.hip),
    highHip: halfWidth(best('highHipGirth'), ratioOf.highHip),
    waist: halfWidth(best('waistGirth'), ratioOf.waist),
    underbust: halfWidth(best('underbustGirth'), ratioOf.underbust),
    upperChest: halfWidth(best('upperChestGirth'), ratioOf.upperChest),
  };
  const aBust = isBust ? 0.5 * (a.underbust + a.upperChest) : halfWidth(best('bustGirth'), ratioOf.bust);
  const dUpperChest = ratioOf.upperChest * a.upperChest;
  const dUnderbust = ratioOf.underbust * a.underbust;
  const zBust = best('bustRise');
  const zUpperChest = (best('sideLength') * (KNOT.upperChest - 20)) / (ARMPIT_V - 20);
  const zUnderbust = zBust - (isBust ? 48 + 0.1 * cup : 58);
  // Where breasts are large the trunk beside and behind them is fuller too.
  const softer = 0.02 * Math.max(0, cup - 130);
  /** The trunk leans from the waist up to the neck. */
  const leanAt = (z: number): number => (shape.lean * z) / best('napeRise');
  const prior: Record<ParameterId, readonly [mean: number, spread: number]> = {
    aHip: [a.hip, 40],
    aHighHip: [a.highHip, 40],
    aWaist: [a.waist, 40],
    aUnderbust: [a.underbust, 40],
    aBust: [aBust + (isBust ? 0.02 * cup : 0), isBust ? 6 : 40],
    aUpperChest: [a.upperChest, 40],
    armBulge: [22 * size, 8],
    xShoulder: [aNeck + Math.sqrt(Math.max(best('shoulderLength') ** 2 - drop ** 2, 100)), 15],
    aNeck: [aNeck, 8],
    dHip: [ratioOf.hip * a.hip, 40],
    dHighHip: [ratioOf.highHip * a.highHip, 40],
    dWaist: [ratioOf.waist * a.waist, 40],
    dUnderbust: [dUnderbust, 40],
    dBust: [isBust ? 0.55 * dUnderbust + 0.45 * dUpperChest + 1 : ratioOf.bust * aBust - 4, isBust ? 12 : 40],
    dUpperChest: [dUpperChest, 40],
    dNeck: [43 * neck, 5],
    yHip: [-6 * size - 0.6 * shape.sway, 7],
    yHighHip: [(isBust ? 2 : 4) * size + shape.belly + 0.3 * shape.sway, 4],
    yUnderbust: [-6 * size + leanAt(zUnderbust) - 0.4 * shape.sway, 5],
    yBust: [-12 * size + leanAt(zBust) - 0.5 * shape.sway, isBust ? 10 : 5],
    yUpperChest: [-19 * size + leanAt(zUpperChest) - 0.5 * shape.sway, 6],
    yNeck: [-23 * size + shape.lean + 0.4 * shape.upperBack, 8],
    zHip: [-best('waistToHip'), 12],
    zHighHip: [-best('waistToHighHip'), 10],
    zUnderbust: [zUnderbust, 7],
    zBust: [zBust, 20],
    zUpperChest: [zUpperChest, 12],
    zShoulder: [best('neckSideRise') - drop, 12],
    zNeckSide: [best('neckSideRise'), 8],
    zNape: [best('napeRise'), 12],
    zNeckFront: [best('neckFrontRise'), 9],
    zBase: [-best('waistToHip') - (typed.hipToBase ?? 60), 12],
    roundBack: [12 * size + shape.upperBack, 5],
    fullFront: [5 * size, 4],
    bustHeight: [isBust ? 0.29 * cup : 7, isBust ? 25 : 6],
    bustAngle: [Math.acos(Math.min(0.9, best('bustPointSpan') / (2 * aBust))), 0.2],
    kHip: [0, 0.012],
    kHighHip: [0, 0.012],
    kWaist: [0, 0.012],
    kUnderbust: [0, 0.01],
    kBust: [0, 0.01],
    armYaw: [0.06, 0.09],
    armFront: [0.58, 0.1],
    armBack: [0.56, 0.1],
    shoulderX: [0, 8],
    shoulderZ: [0, 12],
    bustHeightSkew: [0, 8],
    bustAngleSkew: [0, 0.1],
    bustLevelSkew: [0, 10],
  };
  const spread = (id: string): number =>
    typed[id] === undefined ? Math.max(estimates[id]?.spread ?? 0.05, 0.03) : 0.03;
  return {
    estimates,
    parameters: PARAMETER_IDS.map((id) => ({ id, mean: prior[id][0], spread: prior[id][1] })),
    ratios: [
      { level: 'bust', mean: ratioOf.bust, spread: spread('bustRatio') },
      { level: 'underbust', mean: ratioOf.underbust, spread: 0.04 },
      { level: 'waist', mean: ratioOf.waist, spread: spread('highHipRatio') },
      { level: 'highHip', mean: ratioOf.highHip, spread: spread('highHipRatio') },
      { level: 'hip', mean: ratioOf.hip, spread: spread('hipRatio') },
      { level: 'upperChest', mean: ratioOf.upperChest, spread: 0.08 },
    ],
    spacings: [
      { upper: 'zUpperChest', lower: 'zBust', mean: 46, spread: 9 },
      { upper: 'zBust', lower: 'zUnderbust', mean: isBust ? 48 + 0.1 * cup : 58, spread: 7 },
    ],
    // On a bust figure the breasts are what is fuller at the bust level, not a ring round the trunk.
    straights: isBust
      ? [
          { rail: 'yB', knot: 'bust', mean: 0, spread: 3 + softer },
          { rail: 'yF', knot: 'bust', mean: 0, spread: 4 + softer },
          { rail: 'a', knot: 'bust', mean: 0.085 * cup, spread: 3 + softer },
        ]
      : [
          { rail: 'yB', knot: 'bust', mean: 0, spread: 3 },
          { rail: 'a', knot: 'bust', mean: 0, spread: 4 },
        ],
    numbers: {
      seat: shape.seat,
      blade: shape.blade,
      shoulderForm: shape.shoulderForm,
      bustReach: 88 + 0.08 * cup + shape.bustFullness,
      bustSide: 0.58 + 0.001 * cup,
      bustTurn: 0.1 + 0.0006 * cup + (shape.bustSpread * Math.PI) / 180,
      bustFullness: Math.min(2, 1.4 + 0.002 * cup),
      bustRoundness: Math.min(2.5, 0.011 * cup),
      collarBone: shape.collarBone,
      neckTilt: 0.4,
      neckStub: 30,
    },
  };
}

import { ownBelly } from './choice-bumps.ts';
import type { Estimate } from './estimate-measures.ts';
import { type ExpectedSizes, expectSizes, type SectionLevel } from './expect-sizes.ts';
import {
  type OutsideId,
  PARAMETER_IDS,
  type Parameter,
  type ParameterId,
  type PoseId,
  type SkewId,
  type StanceId,
} from './parameter-ids.ts';
import type { KnotId, RAIL } from './rails.ts';
import { isLeanRead, READ_TO } from './read-stance.ts';
import type { ShapeNumbers } from './shape-numbers.ts';
import type { BodyInput } from './types.ts';

/** What is believed before the tapes are read: typed values, estimates, and a Gaussian for every unknown. */
export interface BodyPrior {
  /** Survey estimates of what was not typed. */
  readonly estimates: Readonly<Record<string, Estimate>>;
  readonly parameters: readonly Parameter[];
  /** Wanted depth / breadth of level sections, with spread. */
  readonly ratios: readonly {
    readonly level: SectionLevel;
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
  /** What unknowns have in common with `lean` and `curve`, times of them, where these are sought. */
  readonly common: Readonly<
    Partial<Record<ParameterId, Readonly<Partial<Record<'lean' | 'curve', number>>>>>
  >;
  readonly numbers: ShapeNumbers;
}

type Choices = Readonly<Record<string, number>>;

/** Means and spreads for the fit; lengths mm. `shape`: the numbers of the shape choices. */
export function makePrior(input: BodyInput, choices: Choices): BodyPrior {
  const shape = seatChoices(choices);
  const expected = expectSizes(input, shape);
  const skew = priorOfSkew(input, shape);
  const evenly = priorOfParameters(expected, shape);
  const [base, spread] = evenly.zBase;
  const stands = isLeanRead(input);
  const priors = {
    ...evenly,
    ...skew,
    ...priorOfStance(expected.typed),
    ...priorOfPoses(input.photos),
    ...(stands ? loosen(evenly) : {}),
    // The form ends as far below the lower hip.
    zBase: [base - Math.abs(skew.hipZ[0]), spread] as const,
  };
  return {
    estimates: expected.estimates,
    parameters: PARAMETER_IDS.map((id) => ({ id, mean: priors[id][0], spread: priors[id][1] })),
    ratios: priorOfRatios(expected),
    spacings: [
      { upper: 'zUpperChest', lower: 'zBust', mean: 46, spread: 9 },
      { upper: 'zBust', lower: 'zUnderbust', mean: expected.zBust - expected.zUnderbust, spread: 7 },
      {
        upper: 'zNape',
        lower: 'zNeckSide',
        mean: expected.best('napeRise') - expected.best('neckSideRise'),
        spread: 7,
      },
    ],
    straights: priorOfStraights(expected),
    common: stands ? IN_COMMON : {},
    numbers: shapeNumbers(expected, shape),
  };
}

/** Who sits: the pelvis rolls back, the back rounds, the belly and the thighs come forward. 0 standing … 1 seated. */
function seatChoices(choices: Choices): Choices {
  const { posture } = choices;
  if (posture === 0) return choices;
  return {
    ...choices,
    upperBack: choices.upperBack + 26 * posture,
    lean: choices.lean + 22 * posture,
    sway: choices.sway - 10 * posture,
    belly: choices.belly + 9 * posture,
    hipSection: choices.hipSection + 0.06 * posture,
  };
}

/**
 * How far the trunk leans, at the nape, and how it curves there are what the y of its rows have in common: of 150 scanned women, fitted
 * by their tapes alone, the first mode holds 69 % of what was left in y (shared/survey/SOURCE.md, “Landmarks”). Only a wall or a
 * picture from the side shows it: by
 * tapes alone these stay unknowable, and rows keep the narrower spreads that hold a body together.
 */
const IN_COMMON: BodyPrior['common'] = {
  yUnderbust: { lean: 0.25 },
  yBust: { lean: 0.45, curve: -0.3 },
  yUpperChest: { lean: 0.6, curve: -0.6 },
  yNeck: { lean: 1, curve: 0.3 },
  roundBack: { curve: 0.5 },
};
/** What each row spreads beyond that, mm. */
const OWN_SPREADS = {
  yUnderbust: 10,
  yBust: 10,
  yUpperChest: 7,
  yNeck: 8,
  roundBack: 6,
  yHighHip: 6,
} as const;

function loosen(priors: Record<ShapeParameterId, Gaussian>): Partial<Record<ParameterId, Gaussian>> {
  return Object.fromEntries(
    Object.entries(OWN_SPREADS).map(([id, spread]) => [
      id,
      [
        priors[id as keyof typeof OWN_SPREADS][0],
        Math.max(spread, priors[id as keyof typeof OWN_SPREADS][1]),
      ] as const,
    ]),
  );
}

type ShapeParameterId = Exclude<ParameterId, SkewId | OutsideId | 'lean' | 'curve'>;
type Gaussian = readonly [mean: number, spread: number];

/** Half of right minus left. */
function priorOfSkew({ measures }: BodyInput, shape: Choices): Record<SkewId, Gaussian> {
  const gapOf = (id: string): number => {
    const value = measures[id];
    return value === undefined || typeof value === 'number' ? 0 : 0.5 * (value.right - value.left);
  };
  // What was typed of unlike shoulders is no surprise, however far they differ.
  const spreadOf = (usual: number, id: string): number => Math.max(usual, 0.5 * Math.abs(gapOf(id)));
  return {
    shoulderX: [0, spreadOf(8, 'shoulderLength')],
    shoulderZ: [0, spreadOf(12, 'shoulderDrop')],
    bustHeightSkew: [0, 8],
    bustAngleSkew: [0, 0.1],
    // What was answered holds against estimates; what is typed still overrules it.
    bustLevelSkew: [0.5 * shape.breastLevels, shape.breastLevels === 0 ? 10 : 2],
    hipZ: [-gapOf('waistToHip'), 12],
    armpitZ: [gapOf('sideLength'), 12],
  };
}

function priorOfParameters(expected: ExpectedSizes, shape: Choices): Record<ShapeParameterId, Gaussian> {
  const { a, best, cup, dUnderbust, dUpperChest, isBust, neck, ratioOf, size, typed } = expected;
  const { bumpAt, zBust, zUnderbust, zUpperChest } = expected;
  const drop = best('shoulderDrop');
  const { bulk, belly } = expected;
  /** Of a belly beyond what most people have, less what an answer puts in front: it is carried before the hips, which stay behind. */
  const great = Math.max(0, beyondOne(belly) - Math.max(expected.bumpAt.waist, expected.bumpAt.highHip) / 40);
  const aNeck = 54 * neck;
  /** The trunk leans from the waist up to the neck. */
  const leanAt = (z: number): number => (shape.lean * z) / best('napeRise');
  /** Seated, the ribs sink back behind the line from waist to neck. */
  const sunk = 14 * shape.posture;
  /** The round back that the tapes ask for and no answer gives. On a bow of this length a millimetre of nape is some 2.5 of bow. */
  const rounding = Math.max(0, 2.5 * expected.stoop - shape.hump - Math.max(0, shape.upperBack));
  return {
    aHip: [a.hip, 40],
    aHighHip: [a.highHip, 40],
    aWaist: [a.waist, 40],
    aUnderbust: [a.underbust, 40],
    aBust: [a.bust, isBust ? 6 : 40],
    aUpperChest: [a.upperChest, 40],
    armBulge: [22 * size, 8],
    xShoulder: [aNeck + Math.sqrt(Math.max(best('shoulderLength') ** 2 - drop ** 2, 100)) - 4, 15],
    aNeck: [aNeck, 8],
    dHip: [ratioOf.hip * a.hip - 0.5 * bumpAt.hip, 40],
    dHighHip: [ratioOf.highHip * a.highHip - 0.5 * bumpAt.highHip, 40],
    dWaist: [ratioOf.waist * a.waist - 0.5 * bumpAt.waist, 40],
    dUnderbust: [dUnderbust - 0.5 * bumpAt.underbust, 40],
    dBust: [
      isBust ? 0.55 * dUnderbust + 0.45 * dUpperChest + 8 : ratioOf.bust * a.bust - 4,
      isBust ? 12 : 40,
    ],
    dUpperChest: [dUpperChest, 40],
    dNeck: [44 * neck, 5],
    yHip: [-38 + 12 * belly - 18 * great - 0.6 * shape.sway, 7],
    yHighHip: [(isBust ? -12 : -10) * size + 5 * great + bellyOfRow(shape) + 0.3 * shape.sway, 4],
    yUnderbust: [-18 + 2 * bulk - 3 * belly + leanAt(zUnderbust) - 0.4 * shape.sway - 0.5 * sunk, 5],
    yBust: [-23 - 3 * bulk - 6 * belly + leanAt(zBust) - 0.5 * shape.sway - sunk, isBust ? 10 : 5],
    yUpperChest: [-30 - 4 * bulk - 7 * belly + leanAt(zUpperChest) - 0.5 * shape.sway - sunk, 6],
    yNeck: [
      -36 +
        1.8 * bulk -
        7.5 * belly +
        shape.lean +
        0.4 * (shape.upperBack + rounding) +
        0.6 * shape.neckForward,
      8,
    ],
    zHip: [-best('waistToHip'), 12],
    zHighHip: [-best('waistToHighHip'), 10],
    zUnderbust: [zUnderbust, 7],
    zBust: [zBust, 20],
    zUpperChest: [zUpperChest, 12],
    zShoulder: [best('neckSideRise') - drop, 12],
    zNeckSide: [best('neckSideRise'), 8],
    zNape: [best('napeRise'), 12],
    zNeckFront: [best('neckFrontRise') - 22 * shape.posture, 9],
    zBase: [-best('waistToHip') - (typed.hipToBase ?? 60), 12],
    roundBack: [18 * size + shape.upperBack + rounding, 5 + 0.5 * rounding],
    fullFront: [5 * size, 4],
    bustHeight: [isBust ? 0.29 * cup * fewerBreasts(shape) : 7, isBust ? 25 : 6],
    bustAngle: [Math.acos(Math.min(0.9, best('bustPointSpan') / (2 * a.bust))) + 0.16, 0.2],
    kHip: [0, 0.012],
    kHighHip: [0, 0.012],
    kWaist: [0, 0.012],
    kUnderbust: [0, 0.01],
    kBust: [0, 0.004],
    armYaw: [0.06, 0.09],
    armFront: [0.66, 0.1],
    armBack: [0.5, 0.1],
    neckSize: [0, 0.08],
  };
}

/** Over the floor, mm: of adults about two thirds of their height (survey of 1988). */
const USUAL_HEIGHT_OF_WAIST = 1040;

/** Where the body stands before the wall and over the floor, and how; sought only where something was read from there. */
function priorOfStance({
  waistHeight,
}: ExpectedSizes['typed']): Record<'lean' | 'curve' | StanceId, Gaussian> {
  return {
    lean: [0, 17],
    curve: [0, 10],
    // A hand's breadth behind the heels, where the hindmost of the back is not far behind them either.
    wall: [-220, 80],
    floor: waistHeight === undefined ? [USUAL_HEIGHT_OF_WAIST, 80] : [waistHeight, READ_TO],
  };
}

/** Share a rule may show wrong: a hand's breadth before or behind the body is 3 % at 3 m, beside it hardly any. */
const RULE_IN_PLANE = 0.005;
const RULE_ANYWHERE = 0.02;

/** How a person stands in a picture whose rule stands beside the feet; sought only where there is one. */
function priorOfPoses(photos: BodyInput['photos'] = {}): Record<PoseId | 'cloth', Gaussian> {
  const scaleOf = (photo: 'front' | 'side'): Gaussian => [
    0,
    photos[photo]?.camera.isRuleInPlane ? RULE_IN_PLANE : RULE_ANYWHERE,
  ];
  return {
    frontShift: [0, 100],
    frontRise: [0, 8],
    frontYaw: [0, 0.06],
    frontScale: scaleOf('front'),
    sideShift: [0, 100],
    sideRise: [0, 8],
    sideYaw: [0, 0.06],
    sideScale: scaleOf('side'),
    cloth: [0, 4],
  };
}

/** How far beyond 1, with a smooth start. */
function beyondOne(value: number): number {
  return 0.5 * (value - 1 + Math.hypot(value - 1, 0.2));
}

/** Where there is less of breasts, what the bust tape reads beyond the ribs is of fewer of them. */
function fewerBreasts({ breastRight, breastLeft }: Choices): number {
  return 2 / Math.max(1.2, breastRight + breastLeft);
}

/** How far the row of the high hip comes forward: what of the belly is not a bump elsewhere. */
function bellyOfRow(shape: Choices): number {
  const own = ownBelly(shape);
  return (1 - own) * shape.belly - 14 * own;
}

function priorOfRatios({ estimates, ratioOf, typed }: ExpectedSizes): BodyPrior['ratios'] {
  const spread = (id: string): number =>
    typed[id] === undefined ? Math.max(estimates[id]?.spread ?? 0.05, 0.03) : 0.03;
  return [
    { level: 'bust', mean: ratioOf.bust, spread: spread('bustRatio') },
    { level: 'underbust', mean: ratioOf.underbust, spread: 0.04 },
    { level: 'waist', mean: ratioOf.waist, spread: spread('highHipRatio') },
    { level: 'highHip', mean: ratioOf.highHip, spread: spread('highHipRatio') },
    { level: 'hip', mean: ratioOf.hip, spread: spread('hipRatio') },
    { level: 'upperChest', mean: ratioOf.upperChest, spread: 0.08 },
  ];
}

/** What is fuller at the bust level stands in front, not as a ring round the trunk. */
function priorOfStraights({ a, cup, isBust }: ExpectedSizes): BodyPrior['straights'] {
  if (!isBust) {
    return [
      { rail: 'yB', knot: 'bust', mean: 0, spread: 3 },
      { rail: 'a', knot: 'bust', mean: -4, spread: 4 },
    ];
  }
  // Where breasts are large the trunk beside and behind them is fuller too.
  const softer = 0.006 * Math.max(0, cup - 130);
  return [
    { rail: 'yB', knot: 'bust', mean: -11, spread: 5 + softer },
    { rail: 'yF', knot: 'bust', mean: 0, spread: 6 + softer },
    {
      rail: 'a',
      knot: 'bust',
      mean: a.bust + 2 - 0.43 * a.underbust - 0.57 * a.upperChest,
      spread: 16,
    },
  ];
}

function shapeNumbers(
  { bumps, cup, sideBack, zBust, zUnderbust }: ExpectedSizes,
  shape: Choices,
): ShapeNumbers {
  // A breast that is heavy, or has little height over its fold, is full below and turns in sharply: 0 on an average bust, 1 far
  // beyond it. Millimetres of girth over one of height are 2 on the average.
  const weight = Math.max(0, cup - 130) / 120;
  const nearFold = Math.max(0, cup / Math.max(zBust - zUnderbust, 20) - 2.2) / 1.2;
  const heavy = 1 - Math.exp(-(weight ** 2 + nearFold ** 2));
  return {
    seat: shape.seat,
    blade: shape.blade,
    shoulderForm: shape.shoulderForm,
    bustReach: 138 + 0.08 * cup + shape.bustFullness,
    bustSide: 0.68 + 0.0005 * cup,
    bustTurn: 0.1 + 0.0006 * cup + (shape.bustSpread * Math.PI) / 180,
    bustFullness: 0.8 + 0.6 * heavy,
    bustFullnessBelow: 1.2 + heavy,
    bustRoundness: 0.6 * Math.min(2.5, 0.011 * cup) + 0.6 * heavy,
    bustSwell: 0.5 * heavy,
    collarBone: shape.collarBone,
    sideBack,
    neckTilt: 0.4 + (shape.neckTilt * Math.PI) / 180,
    neckStub: shape.neckHeight,
    neckForward: shape.neckForward,
    hump: shape.hump,
    humpBelow: shape.humpBelow,
    breasts: { right: shape.breastRight, left: shape.breastLeft },
    bustDrop: shape.bustDrop,
    trunkShift: shape.trunkShift,
    trunkTurn: (shape.trunkTurn * Math.PI) / 180,
    bumps,
  };
}

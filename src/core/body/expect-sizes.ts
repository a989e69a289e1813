import { bumpAtFront, type ChoiceBump, listChoiceBumps, ratioOfBump } from './choice-bumps.ts';
import { type Estimate, estimateMeasures } from './estimate-measures.ts';
import { knownToSurvey, meanValues } from './known-to-survey.ts';
import { ARMPIT_V, KNOT } from './rails.ts';
import type { BodyInput } from './types.ts';

/** What the body is expected to be like before its tapes are read: typed values, else estimates, and what follows. mm. */
export interface ExpectedSizes {
  readonly isBust: boolean;
  readonly typed: Readonly<Record<string, number>>;
  readonly estimates: Readonly<Record<string, Estimate>>;
  /** The typed value, else the estimate. */
  readonly best: (id: string) => number;
  /** Depth / breadth by level, the choices added. */
  readonly ratioOf: Readonly<Record<SectionLevel, number>>;
  /** Half-widths by level. */
  readonly a: Readonly<Record<SectionLevel, number>>;
  readonly dUnderbust: number;
  readonly dUpperChest: number;
  readonly zUnderbust: number;
  readonly zBust: number;
  readonly zUpperChest: number;
  /** Of the body and of the neck, as shares of the survey's average. */
  readonly size: number;
  readonly neck: number;
  /** Bust girth beyond the survey's average, in 100 mm; waist over hip beyond the usual 0.78, in tenths. */
  readonly bulk: number;
  readonly belly: number;
  /** How much higher above the sides of the neck than on anybody the tapes would put the nape, were the back straight, mm. */
  readonly stoop: number;
  /** How far the widest point of a row lies behind its middle, mm. */
  readonly sideBack: Readonly<Record<SectionLevel | 'neck', number>>;
  /** How much longer the bust tape is than the underbust tape. */
  readonly cup: number;
  /** Bumps that choices of shape ask for. */
  readonly bumps: readonly ChoiceBump[];
  /** How far they stand out on the centre front, by level. */
  readonly bumpAt: Readonly<Record<SectionLevel, number>>;
}

export type SectionLevel = 'bust' | 'underbust' | 'waist' | 'highHip' | 'hip' | 'upperChest';

/** Depth / breadth where the survey took no calipers (common practice, no source). */
const UNSURVEYED_RATIO = {
  bust: { underbust: 0.78, upperChest: 0.56 },
  chest: { underbust: 0.72, upperChest: 0.66 },
} as const;

/**
 * Girth of a section over that of the ellipse in the same box: at chest, navel and hip the averages of the 1988 survey (women;
 * men within 0.01), between them common practice, no source.
 */
const FULLNESS: Readonly<Record<SectionLevel, number>> = {
  bust: 1.13,
  underbust: 1.055,
  waist: 1.005,
  highHip: 1.008,
  hip: 1.058,
  upperChest: 1.05,
};
/** Averages of the 1988 survey (shared/survey/SOURCE.md). */
const AVERAGE_GIRTH = { bust: 909, chest: 989, neckBase: 346 } as const;

/** What the survey's depth / breadth of the hip loses by a seat that rides on the section and by squareness (calipers of 1988). */
const HIP_OFFSET = { bust: 0.01, chest: 0.005 } as const;

/** How far the bust point sinks where breasts hang a millimetre below their fold. */
const DROP_OF_POINT = 0.6;

type Choices = Readonly<Record<string, number>>;

/** Scanned landmarks against the survey's, mm: added to its estimates. */
const OFFSET: Readonly<Record<BodyInput['figure'], Choices>> = {
  bust: { neckSideRise: 2, sideLength: 4 },
  chest: { neckSideRise: 2, sideLength: -5, bustRise: 7 },
};
/** Where a waist lies lower than the survey's, breasts and neck do not: so much of the difference is added to their rises. */
const SHARE_OF_LOW_WAIST: Choices = {
  bustRise: 0.55,
  neckSideRise: 0.18,
  neckFrontRise: 0.42,
  sideLength: 0.1,
};
/** Of the 1988 survey (shared/survey/statistics.json), mm. */
const AVERAGE_NAPE_RISE = { bust: 351.5, chest: 392.5 } as const;

function moveEstimates(
  estimates: Readonly<Record<string, Estimate>>,
  shape: Choices,
  lowWaist: number,
  figure: BodyInput['figure'],
): Readonly<Record<string, Estimate>> {
  const asked: Choices = {
    bustPointSpan: shape.bustGap,
    bustRise: -DROP_OF_POINT * shape.bustDrop,
    neckToBustPoint: DROP_OF_POINT * shape.bustDrop,
  };
  const moved = Object.entries(estimates).map(([id, { mean, spread }]) => [
    id,
    {
      mean: mean + (OFFSET[figure][id] ?? 0) + (SHARE_OF_LOW_WAIST[id] ?? 0) * lowWaist + (asked[id] ?? 0),
      spread,
    },
  ]);
  return Object.fromEntries(moved);
}

/** `shape`: the numbers of the shape choices. */
export function expectSizes(input: BodyInput, shape: Choices): ExpectedSizes {
  const typed = meanValues(input.measures);
  const known = knownToSurvey(typed);
  const surveyed = estimateMeasures(input.figure, known, input.waist);
  const napeRise = known.napeRise ?? surveyed.napeRise.mean;
  const moved = moveEstimates(surveyed, shape, napeRise - AVERAGE_NAPE_RISE[input.figure], input.figure);
  const stoop = measureStoop(known, moved);
  const estimates = stoop === 0 ? moved : lowerNape(moved, stoop);
  const best = (id: string): number => known[id] ?? estimates[id].mean;
  const isBust = input.figure === 'bust';
  const unsurveyed = UNSURVEYED_RATIO[input.figure];
  const cup = Math.max(best('bustGirth') - best('underbustGirth'), 20);
  const zBust = best('bustRise');
  // Breasts that hang leave the fold where it is.
  const zUnderbust = zBust - heightOverFold(zBust, isBust, cup, shape.bustDrop);
  const bumps = listChoiceBumps(shape, { best, zUnderbust, zBust });
  const bumpAt = bumpsAtLevels(bumps, best, zUnderbust);
  const deeper = (level: 'underbust' | 'waist' | 'highHip' | 'hip'): number =>
    ratioOfBump(bumpAt[level], best(`${level}Girth`));
  const ratioOf = {
    bust: best('bustRatio') + shape.bustSection,
    waist: best('highHipRatio') + 0.03 + shape.waistSection + deeper('waist'),
    highHip: best('highHipRatio') + shape.highHipSection + deeper('highHip'),
    hip: best('hipRatio') - HIP_OFFSET[input.figure] + shape.hipSection + deeper('hip'),
    underbust: unsurveyed.underbust + 0.5 * shape.bustSection + deeper('underbust'),
    upperChest: unsurveyed.upperChest + 0.5 * shape.bustSection,
  };
  const halfWidth = (level: SectionLevel): number => {
    const ratio = ratioOf[level];
    return best(`${level}Girth`) / (2 * Math.PI * Math.sqrt(0.5 * (1 + ratio * ratio)) * FULLNESS[level]);
  };
  const underbust = halfWidth('underbust');
  const upperChest = halfWidth('upperChest');
  const bulk = (best('bustGirth') - AVERAGE_GIRTH[input.figure]) / 100;
  const belly = 10 * (best('waistGirth') / best('hipGirth') - 0.78);
  const sideBackOfWaist = 19 + 3.3 * bulk + 5.5 * belly;
  const forward = sideBackOfWaist - 19;
  return {
    isBust,
    typed,
    estimates,
    best,
    ratioOf,
    a: {
      hip: halfWidth('hip'),
      highHip: halfWidth('highHip'),
      waist: halfWidth('waist'),
      underbust,
      bust: isBust ? halfWidthOfBust(cup, best('underbustGirth'), shape.bustSection) : halfWidth('bust'),
      upperChest,
    },
    dUnderbust: ratioOf.underbust * underbust,
    dUpperChest: ratioOf.upperChest * upperChest,
    zUnderbust,
    zBust,
    zUpperChest: (best('sideLength') * (KNOT.upperChest - 20)) / (ARMPIT_V - 20) + 2,
    size: best('bustGirth') / AVERAGE_GIRTH[input.figure],
    neck: best('neckBaseGirth') / AVERAGE_GIRTH.neckBase,
    cup,
    bumps,
    bumpAt,
    bulk,
    belly,
    stoop,
    sideBack: {
      hip: 8 + 0.3 * forward,
      highHip: 14 + 0.8 * forward,
      waist: sideBackOfWaist,
      underbust: 16 + 0.6 * forward,
      bust: 14 + 0.4 * forward,
      upperChest: 14,
      neck: 14,
    },
  };
}

function bumpsAtLevels(
  bumps: readonly ChoiceBump[],
  best: ExpectedSizes['best'],
  zUnderbust: number,
): ExpectedSizes['bumpAt'] {
  return {
    bust: 0,
    underbust: bumpAtFront(bumps, zUnderbust),
    waist: bumpAtFront(bumps, 0),
    highHip: bumpAtFront(bumps, -best('waistToHighHip')),
    hip: bumpAtFront(bumps, -best('waistToHip')),
    upperChest: 0,
  };
}

/** The survey's mean 11 mm and one and a half times its spread of 8. */
const HIGHEST_NAPE = 23;

/** A back too long for the rest of a body is no high nape but a round back. mm. */
function measureStoop(known: Choices, estimates: Readonly<Record<string, Estimate>>): number {
  if (known.napeRise !== undefined) return 0;
  const sides = known.neckSideRise ?? estimates.neckSideRise.mean;
  return Math.max(0, estimates.napeRise.mean - sides - HIGHEST_NAPE);
}

function lowerNape(
  estimates: Readonly<Record<string, Estimate>>,
  by: number,
): Readonly<Record<string, Estimate>> {
  const { mean, spread } = estimates.napeRise;
  return { ...estimates, napeRise: { mean: mean - by, spread } };
}

/**
 * Chest breadth by regression on 1,104 women of the 1988 survey (residual 9.6 mm): breasts make a chest deeper, hardly broader.
 * `section`: the choice of a deeper or shallower section at the same girth. mm.
 */
function halfWidthOfBust(cup: number, underbustGirth: number, section: number): number {
  const usual = 0.5 * (275 + 0.114 * (cup - 137) + 0.321 * (underbustGirth - 770));
  const ratio = 0.86;
  return usual * Math.sqrt((1 + ratio ** 2) / (1 + (ratio + section) ** 2));
}

/** How far the bust lies above the fold under it, mm. On a short waist the fold comes nearer to the bust, not to the waist. */
function heightOverFold(zBust: number, isBust: boolean, cup: number, drop: number): number {
  const usual = isBust ? 56 + 0.06 * (cup - 130) + 0.1 * cup : 58;
  return Math.min(usual - DROP_OF_POINT * drop, 0.6 * zBust);
}

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
  /** How much longer the bust tape is than the underbust tape. */
  readonly cup: number;
}

export type SectionLevel = 'bust' | 'underbust' | 'waist' | 'highHip' | 'hip' | 'upperChest';

/** Depth / breadth where the survey took no calipers (common practice, no source). */
const UNSURVEYED_RATIO = {
  bust: { underbust: 0.73, upperChest: 0.64 },
  chest: { underbust: 0.72, upperChest: 0.66 },
} as const;

/** Girth of a section of half-width 1 and half-depth r over that of an ellipse, near enough to start from. */
const FULLNESS = 1.035;
/** Averages of the 1988 survey (shared/survey/SOURCE.md). */
const AVERAGE_GIRTH = { bust: 909, chest: 989, neckBase: 346 } as const;

/** `shape`: the numbers of the shape choices. */
export function expectSizes(input: BodyInput, shape: Readonly<Record<string, number>>): ExpectedSizes {
  const typed = meanValues(input.measures);
  const known = knownToSurvey(typed);
  const estimates = estimateMeasures(input.figure, known, input.waist);
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
  const halfWidth = (level: SectionLevel): number => {
    const ratio = ratioOf[level];
    return best(`${level}Girth`) / (2 * Math.PI * Math.sqrt(0.5 * (1 + ratio * ratio)) * FULLNESS);
  };
  const underbust = halfWidth('underbust');
  const upperChest = halfWidth('upperChest');
  const cup = Math.max(best('bustGirth') - best('underbustGirth'), 20);
  const zBust = best('bustRise');
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
      bust: isBust ? 0.5 * (underbust + upperChest) : halfWidth('bust'),
      upperChest,
    },
    dUnderbust: ratioOf.underbust * underbust,
    dUpperChest: ratioOf.upperChest * upperChest,
    zUnderbust: zBust - (isBust ? 48 + 0.1 * cup : 58),
    zBust,
    zUpperChest: (best('sideLength') * (KNOT.upperChest - 20)) / (ARMPIT_V - 20),
    size: best('bustGirth') / AVERAGE_GIRTH[input.figure],
    neck: best('neckBaseGirth') / AVERAGE_GIRTH.neckBase,
    cup,
  };
}

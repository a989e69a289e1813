import statistics from '../../../shared/survey/statistics.json' with { type: 'json' };
import type { Figure } from './types.ts';
import { USUAL_WAIST, type WaistKind } from './waist-kinds.ts';

/** A Gaussian over `SURVEY_VARIABLES`; mm, ratios plain. */
export interface SurveyGaussian {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** Back length to the navel: known of the people of the survey, no measure of its own here. */
const NAVEL_BACK = 'navelBackLength';
export const SURVEY_VARIABLES: readonly string[] = statistics.variables.filter((id) => id !== NAVEL_BACK);

/** One variable as a sum of others: its share of each. */
type Sum = Readonly<Record<string, number>>;

interface Frame {
  /** Variables that change with the waist; all others stay. */
  readonly sums: Readonly<Record<string, Sum>>;
  /** Independent of everything measured in the survey: one standard deviation, mm. */
  readonly own: Readonly<Record<string, number>>;
}

const RISES = ['sideLength', 'napeRise', 'neckSideRise', 'neckFrontRise', 'bustRise'];

/** How far below the navel, on the way to the hip, a tape round the hip bones lies (common practice, no source). */
const HIGH_HIP_BELOW = 0.4;
/** What the survey did not measure below the navel may differ by this from what lies in between, mm (no source). */
const HIGH_HIP_OWN = { highHipGirth: 20, waistToHighHip: 12 };

/** The waist `down` of the way from the narrowest place to the navel, and where it settles by chance, mm. */
function frameAt(down: number, settles: number): Frame {
  const below = down * HIGH_HIP_BELOW;
  const rise = (id: string): Sum => ({ [id]: 1, waistToHighHip: down, settling: 1 });
  return {
    sums: {
      // A belt that settles a centimetre lower lies on about nine millimetres more (66 mm in 74 mm, see SOURCE.md).
      waistGirth: { waistGirth: 1 - down, highHipGirth: down, settling: 0.9 },
      backWaistLength: { backWaistLength: 1 - down, [NAVEL_BACK]: down, settling: 1 },
      ...Object.fromEntries(RISES.map((id) => [id, rise(id)])),
      waistToHip: { waistToHip: 1, waistToHighHip: -down, settling: -1 },
      highHipGirth: { highHipGirth: 1 - below, hipGirth: below, ownHighHipGirth: 1 },
      waistToHighHip: {
        waistToHighHip: 1 - below - down,
        waistToHip: below,
        ownWaistToHighHip: 1,
        settling: -1,
      },
    },
    own: {
      settling: settles,
      ownHighHipGirth: down * HIGH_HIP_OWN.highHipGirth,
      ownWaistToHighHip: down * HIGH_HIP_OWN.waistToHighHip,
    },
  };
}

const FRAMES: Readonly<Record<Exclude<WaistKind, 'narrowest'>, Frame>> = {
  // An elastic band settles a good third of the way down, give or take 15 mm (common practice, no source).
  elastic: frameAt(0.35, 15),
  navel: frameAt(1, 0),
};

/** y = A x has mean A μ and covariance A Σ Aᵀ. */
function transform(survey: SurveyGaussian, { sums, own }: Frame): SurveyGaussian {
  const places = new Map(statistics.variables.map((id, i) => [id, i]));
  const at = (id: string): number => places.get(id) ?? -1;
  const shares = SURVEY_VARIABLES.map((id) => Object.entries(sums[id] ?? { [id]: 1 }));
  const covary = (a: string, b: string): number => {
    const [i, j] = [at(a), at(b)];
    if (i >= 0 && j >= 0) return survey.covariance[i][j];
    return a === b ? (own[a] ?? 0) ** 2 : 0;
  };
  return {
    mean: shares.map((sum) =>
      sum.reduce((total, [id, share]) => total + (at(id) < 0 ? 0 : share * survey.mean[at(id)]), 0),
    ),
    covariance: shares.map((first) =>
      shares.map((second) =>
        first.reduce(
          (total, [a, p]) => total + second.reduce((inner, [b, q]) => inner + p * q * covary(a, b), 0),
          0,
        ),
      ),
    ),
  };
}

const none: Frame = { sums: {}, own: {} };
const tablesOf = (survey: SurveyGaussian): Readonly<Record<WaistKind, SurveyGaussian>> => ({
  narrowest: transform(survey, none),
  elastic: transform(survey, FRAMES.elastic),
  navel: transform(survey, FRAMES.navel),
});
/** Made once: some milliseconds. */
const TABLES = { bust: tablesOf(statistics.bust), chest: tablesOf(statistics.chest) };

/**
 * What the public 1988 survey says of its people, with every waist measure, rise and height taken from the waist as this
 * person ties it. The survey measured both the natural waist and the navel, so the navel's Gaussian is exact but for
 * the high hip, which is put between navel and hip; the elastic's lies between the two.
 */
export function surveyOfWaist(figure: Figure, waist: WaistKind = USUAL_WAIST): SurveyGaussian {
  return TABLES[figure][waist];
}

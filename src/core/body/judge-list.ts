import { assertInvariant } from '../base/index.ts';
import { factorDense, solveDense } from '../math/index.ts';
import { beyondSurvey } from './beyond-survey.ts';
import { findMeasure } from './measures.ts';
import { SURVEY_VARIABLES, surveyOfWaist } from './survey-of-waist.ts';
import type { Figure } from './types.ts';
import type { WaistKind } from './waist-kinds.ts';

/**
 * Bodies differ from the survey's by whole lists, not by single measures: a heavy or old one is odd all over. So lists are
 * taken to follow a multivariate t instead of a Gaussian: the odder the others, the more a measure may be. Freedom 12 is a
 * compromise of what makes the rows most likely: 20 to 30 on the lean 1988 people, 10 on all of 2012 and on its heavy ones.
 */
const FREEDOM = 12;
/** What a tape at home adds to the survey's own error, mm, by likelihood on the 2012 people; ratios plain (no source). */
const HOME_ERROR = { girth: 5, length: 3, ratio: 0.02 };
/** So many lists are of a kind that the survey hardly has (common practice, no source). */
const SHARE_BEYOND = 0.02;

/** One measure given all others of its list. mm. */
export interface JudgedMeasure {
  readonly id: string;
  readonly value: number;
  readonly expected: number;
  /** One standard deviation. */
  readonly spread: number;
  /** (value − expected) / spread, as a normal variable that is as rarely as large. */
  readonly pull: number;
  /** (value − expected) / spread among all kinds of bodies, to the side they differ more. */
  readonly widePull: number;
  /** Log density of another value in its place, among all kinds of bodies, up to a constant. */
  readonly logDensityOf: (value: number) => number;
}

type Known = Readonly<Record<string, number>>;

/** Each of `known`, keyed by survey variable, against all the others: leave one out. Others are ignored. */
export function judgeList(figure: Figure, known: Known, waist?: WaistKind): readonly JudgedMeasure[] {
  const ids = SURVEY_VARIABLES.filter((id) => known[id] !== undefined);
  const p = ids.length;
  const precision = invert(covarianceOf(figure, ids, waist), p);
  const off = offsetsOf(figure, ids, known, waist);
  const weighed = ids.map((_, i) => off.reduce((sum, x, j) => sum + precision[i * p + j] * x, 0));
  const distance = off.reduce((sum, x, i) => sum + x * weighed[i], 0);
  return ids.map((id, i) => {
    const variance = 1 / precision[i * p + i];
    const gap = weighed[i] * variance;
    const rest = distance - gap * gap * precision[i * p + i];
    return judge(id, known[id], gap, variance, rest, p - 1);
  });
}

/** The conditional of a multivariate t is a t again: wider where the `others` lie far out (squared distance `rest`). */
function judge(
  id: string,
  value: number,
  gap: number,
  variance: number,
  rest: number,
  others: number,
): JudgedMeasure {
  const freedom = FREEDOM + others;
  const scale = Math.sqrt((variance * (FREEDOM - 2 + rest)) / freedom);
  const spread = scale * Math.sqrt(freedom / (freedom - 2));
  const expected = value - gap;
  const { below, above } = beyondSurvey(id);
  const [narrower, wider] = [Math.hypot(spread, below), Math.hypot(spread, above)];
  return {
    id,
    value,
    expected,
    spread,
    pull: normalOf(gap / scale, freedom),
    widePull: gap / Math.max(narrower, wider),
    logDensityOf(other) {
      const t = (other - expected) / scale;
      const near = Math.exp(-0.5 * (freedom + 1) * Math.log1p((t * t) / freedom)) / scale;
      const side = other < expected ? narrower : wider;
      const far = Math.exp(-0.5 * ((other - expected) / side) ** 2) / (0.5 * (narrower + wider));
      return Math.log((1 - SHARE_BEYOND) * near + SHARE_BEYOND * far + Number.MIN_VALUE);
    },
  };
}

/** Log likelihood of whole lists of the same measures among all kinds of bodies, up to a constant; and how odd one is. */
export function listWeigher(figure: Figure, ids: readonly string[], waist?: WaistKind) {
  const p = ids.length;
  const narrow = covarianceOf(figure, ids, waist);
  const wide = Float64Array.from(narrow, (value, k) =>
    k % (p + 1) === 0 ? value + beyondSurvey(ids[k / (p + 1)]).above ** 2 : value,
  );
  const kinds = [
    { share: 1 - SHARE_BEYOND, ...factored(narrow, p) },
    { share: SHARE_BEYOND, ...factored(wide, p) },
  ];
  const distances = (known: Known) => {
    const off = Float64Array.from(offsetsOf(figure, ids, known, waist));
    return kinds.map(({ factor }) => {
      const solved = new Float64Array(p);
      solveDense(factor, off, solved);
      return off.reduce((sum, x, i) => sum + x * solved[i], 0);
    });
  };
  return {
    logLikelihood(known: Known): number {
      const logs = distances(known).map(
        (d, k) =>
          Math.log(kinds[k].share) -
          kinds[k].halfLogDeterminant -
          0.5 * (FREEDOM + p) * Math.log1p(d / (FREEDOM - 2)),
      );
      const most = Math.max(...logs);
      return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
    },
    /** Squared distance from the survey's mean. */
    surprise: (known: Known): number => distances(known)[0],
  };
}

function factored(matrix: Float64Array, n: number) {
  const factor = Float64Array.from(matrix);
  assertInvariant(factorDense(factor, n), 'body', 'survey covariance is positive definite', n);
  let halfLogDeterminant = 0;
  for (let i = 0; i < n; i++) halfLogDeterminant += Math.log(factor[i * n + i]);
  return { factor, halfLogDeterminant };
}

function invert(matrix: Float64Array, n: number): Float64Array {
  const { factor } = factored(matrix, n);
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const column = inverse.subarray(i * n, (i + 1) * n);
    column[i] = 1;
    solveDense(factor, column, column);
  }
  return inverse;
}

/** Of the survey's people, measured at home. Row-major. */
function covarianceOf(figure: Figure, ids: readonly string[], waist?: WaistKind): Float64Array {
  const { covariance } = surveyOfWaist(figure, waist);
  const at = ids.map((id) => SURVEY_VARIABLES.indexOf(id));
  return Float64Array.from(
    at.flatMap((i, k) => at.map((j) => covariance[i][j] + (i === j ? homeError(ids[k]) ** 2 : 0))),
  );
}

function offsetsOf(figure: Figure, ids: readonly string[], known: Known, waist?: WaistKind): number[] {
  const { mean } = surveyOfWaist(figure, waist);
  return ids.map((id) => known[id] - mean[SURVEY_VARIABLES.indexOf(id)]);
}

function homeError(id: string): number {
  if (id.endsWith('Ratio')) return HOME_ERROR.ratio;
  return findMeasure(id)?.kind === 'girth' ? HOME_ERROR.girth : HOME_ERROR.length;
}

/** The normal variable with the tail of a t: Wallace 1959, good to some hundredths where it matters. */
function normalOf(t: number, freedom: number): number {
  const size = Math.sqrt(freedom * Math.log1p((t * t) / freedom));
  return (Math.sign(t) * size * (8 * freedom + 1)) / (8 * freedom + 3);
}

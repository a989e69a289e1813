import { assertInvariant } from '../base/index.ts';
import { factorDense, solveLowerDense } from '../math/index.ts';
import { SURVEY_VARIABLES, type SurveyGaussian, surveyOfWaist } from './survey-of-waist.ts';
import type { Figure } from './types.ts';
import type { WaistKind } from './waist-kinds.ts';

export interface Estimate {
  readonly mean: number;
  /** One standard deviation given what was measured. */
  readonly spread: number;
}

/**
 * What the public 1988 survey says of the unmeasured, given the measured: the conditional Gaussian
 * μ₂ + S₂₁ S₁₁⁻¹ (x₁ − μ₁), S₂₂ − S₂₁ S₁₁⁻¹ S₁₂ (Anderson, Multivariate Statistical Analysis, th. 2.5.1).
 * Adults fit for service: heavier, older or younger bodies spread wider than told.
 * `known` is keyed by survey variable; others are ignored. Returns an estimate for each variable not in `known`.
 */
export function estimateMeasures(
  figure: Figure,
  known: Readonly<Record<string, number>>,
  waist?: WaistKind,
): Readonly<Record<string, Estimate>> {
  const survey = surveyOfWaist(figure, waist);
  const given = SURVEY_VARIABLES.map((_, i) => i).filter((i) => known[SURVEY_VARIABLES[i]] !== undefined);
  const factor = choleskyOf(survey, given);
  const offset = solveLower(
    factor,
    given.map((i) => known[SURVEY_VARIABLES[i]] - survey.mean[i]),
  );
  const estimates: Record<string, Estimate> = {};
  SURVEY_VARIABLES.forEach((id, i) => {
    if (known[id] !== undefined) return;
    const row = solveLower(
      factor,
      given.map((j) => survey.covariance[i][j]),
    );
    let mean = survey.mean[i];
    let variance = survey.covariance[i][i];
    row.forEach((value, k) => {
      mean += value * offset[k];
      variance -= value * value;
    });
    estimates[id] = { mean, spread: Math.sqrt(Math.max(variance, 0)) };
  });
  return estimates;
}

/** Lower factor of the covariance of the given variables, row-major. */
function choleskyOf(survey: SurveyGaussian, given: readonly number[]): Float64Array {
  const factor = Float64Array.from(given.flatMap((i) => given.map((j) => survey.covariance[i][j])));
  assertInvariant(factorDense(factor, given.length), 'body', 'survey covariance is positive definite', given);
  return factor;
}

function solveLower(factor: Float64Array, right: readonly number[]): Float64Array {
  const x = new Float64Array(right.length);
  solveLowerDense(factor, Float64Array.from(right), x);
  return x;
}

import { failure, type Result, success } from '../base/index.ts';
import { checkMeasures } from './check-measures.ts';
import { type Estimate, estimateMeasures } from './estimate-measures.ts';
import { fitBody } from './fit-body.ts';
import { knownToSurvey, meanValues } from './known-to-survey.ts';
import { FIRST_MEASURES } from './measures.ts';
import type { Body, BodyInput } from './types.ts';

/** A body of what was typed so far, and what stood in for those of the first measures not typed yet, by id. */
export interface GuessedBody {
  readonly body: Body;
  readonly estimates: Readonly<Record<string, Estimate>>;
}

/**
 * The body that grows while the first measures are typed: what is missing of them is what the survey expects beside what is
 * there (`estimateMeasures`), a usual body while nothing is. A rough one, of as much time as a fit takes; `warmFrom` as there.
 * Fails on the typed measures as `fitBody` does, and where they lead estimates to what nobody measures.
 */
export function guessBody(input: BodyInput, warmFrom?: Body): Result<GuessedBody> {
  const typed = meanValues(input.measures);
  // What is expected beside a mistake would be reported as one too.
  const faults = checkMeasures(input).filter(
    ({ code, severity }) => severity === 'error' && code !== 'measure-missing',
  );
  if (faults.length > 0) return failure(faults);
  const surveyed = estimateMeasures(input.figure, knownToSurvey(typed), input.waist);
  const missing = FIRST_MEASURES.filter((id) => typed[id] === undefined);
  const estimates = Object.fromEntries(missing.map((id) => [id, surveyed[id]]));
  const guessed = Object.fromEntries(missing.map((id) => [id, surveyed[id].mean]));
  const fitted = fitBody({ ...input, measures: { ...guessed, ...input.measures } }, warmFrom);
  return fitted.ok ? success({ body: fitted.value, estimates }) : fitted;
}

import type { Issue } from '../base/index.ts';
import { listWeigher } from './judge-list.ts';
import { knownToSurvey, meanValues } from './known-to-survey.ts';
import { isConfirmed } from './limit-of-readings.ts';
import { findMeasure, nameOfMeasure } from './measures.ts';
import { phrase } from './phrases.ts';
import { SURVEY_VARIABLES } from './survey-of-waist.ts';
import type { BodyInput } from './types.ts';

/**
 * Two measures look exchanged when exchanging them makes the list this much likelier among all kinds of bodies. So much,
 * because a round belly over narrow hips also looks ordinary the other way round.
 */
const LIKELIER = Math.log(1e5);
/** Only a list that then looks ordinary was exchanged: squared distance for each measure, 1 on average. */
const ORDINARY = 3;

/** Two measures typed into each other's field; nothing when a second reading agrees with either. */
export function findExchange(input: BodyInput): Issue | undefined {
  const known = knownToSurvey(meanValues(input.measures));
  const ids = SURVEY_VARIABLES.filter((id) => known[id] !== undefined && findMeasure(id));
  const weigher = listWeigher(input.figure, ids, input.waist);
  const before = weigher.logLikelihood(known);
  let best: { a: string; b: string; likelihood: number } | undefined;
  for (const [i, a] of ids.entries()) {
    for (const b of ids.slice(i + 1)) {
      if (findMeasure(a)?.kind !== findMeasure(b)?.kind) continue;
      const likelihood = weigher.logLikelihood(exchange(known, a, b));
      if (likelihood > (best?.likelihood ?? before + LIKELIER)) best = { a, b, likelihood };
    }
  }
  if (!best || isConfirmed(input, best.a) || isConfirmed(input, best.b)) return undefined;
  const { a, b } = best;
  if (weigher.surprise(exchange(known, a, b)) > ORDINARY * ids.length) return undefined;
  return {
    code: 'measures-exchanged',
    path: `measures.${a}`,
    severity: 'warning',
    message: phrase('body.measures-exchanged', {
      first: nameOfMeasure(a),
      firstValue: known[a],
      second: nameOfMeasure(b),
      secondValue: known[b],
    }),
    measured: known[a],
    limit: known[b],
  };
}

function exchange(known: Readonly<Record<string, number>>, a: string, b: string) {
  return { ...known, [a]: known[b], [b]: known[a] };
}

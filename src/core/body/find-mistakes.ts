import type { Issue } from '../base/index.ts';
import { estimateMeasures, measureSurprise, SURVEY_VARIABLES } from './estimate-measures.ts';
import { knownToSurvey, meanValues } from './known-to-survey.ts';
import { limitOfReadings } from './limit-of-readings.ts';
import { findMeasure, nameOfMeasure } from './measures.ts';
import { phrase } from './phrases.ts';
import type { BodyInput } from './types.ts';

/** Beyond these many standard deviations from what the other measures foretell: doubtful, implausible, refused. */
const DOUBTFUL = 3;
const IMPLAUSIBLE = 4;
const REFUSED = 10;
/** Two measures look exchanged when exchanging them makes the list less unusual by this much (squared distance). */
const EXCHANGE_GAIN = 20;

export interface Doubt {
  readonly id: string;
  readonly value: number;
  readonly expected: number;
  readonly spread: number;
  /** (value − expected) / spread. */
  readonly pull: number;
}

/**
 * How far each typed measure lies from what all the others foretell (leave one out, conditional Gaussian of the
 * public survey), most doubtful first. Leaving one out names the culprit where least squares would smear blame.
 * The survey holds fit adults: other bodies are doubted more than they deserve, so doubts ask before they refuse.
 */
export function listDoubts(input: BodyInput): readonly Doubt[] {
  const known = knownToSurvey(meanValues(input.measures));
  const doubts = Object.keys(known).map((id) => {
    const { [id]: value, ...others } = known;
    const { mean, spread } = estimateMeasures(input.figure, others)[id];
    return { id, value, expected: mean, spread, pull: (value - mean) / spread };
  });
  return doubts.sort((a, b) => Math.abs(b.pull) - Math.abs(a.pull));
}

/** Likely typing and measuring mistakes: the culprit, by how much, and what was perhaps meant. */
export function findMistakes(input: BodyInput): readonly Issue[] {
  const exchanged = findExchange(input);
  if (exchanged) return [exchanged];
  const worst = listDoubts(input).filter((doubt) => findMeasure(doubt.id))[0];
  // One culprit at a time: its error also throws doubt on the others.
  if (!worst || Math.abs(worst.pull) < DOUBTFUL) return [];
  return [tellDoubt(worst, isConfirmed(input, worst.id))];
}

function tellDoubt(doubt: Doubt, confirmed: boolean): Issue {
  const { id, value, expected, spread, pull } = doubt;
  const size = Math.abs(pull);
  const guess = confirmed ? undefined : guessTypo(doubt);
  const refused = size > REFUSED && !confirmed;
  return {
    code: size > IMPLAUSIBLE ? 'measure-implausible' : 'measure-doubtful',
    path: `measures.${id}`,
    severity: refused ? 'error' : 'warning',
    message: phrase('body.measure-doubtful', {
      measure: nameOfMeasure(id),
      gap: Math.abs(value - expected),
      size: pull > 0 ? 'large' : 'small',
      expected,
      spread,
      isFar: size > IMPLAUSIBLE,
      ...(guess ? { guess } : {}),
      advice: confirmed ? 'stays' : refused ? 'correct' : 'measure',
    }),
    measured: value,
    limit: expected + Math.sign(pull) * DOUBTFUL * spread,
  };
}

/** Neighbouring digits exchanged, else the first digit one off, when that would fit well. */
function guessTypo({ value, expected, spread }: Doubt): number | undefined {
  const typed = Math.round(value);
  const digits = String(typed).split('');
  const exchanged = digits.slice(1).map((digit, i) => {
    const swapped = [...digits];
    [swapped[i], swapped[i + 1]] = [digit, digits[i]];
    return Number(swapped.join(''));
  });
  const closeness = (c: number): number => Math.abs(c - expected);
  const fitting = (candidates: readonly number[]): number[] =>
    candidates
      .filter((c) => c !== typed && closeness(c) < 1.2 * spread)
      .sort((a, b) => closeness(a) - closeness(b));
  // Exchanged digits are the commoner slip, so a guess from them goes first.
  return fitting(exchanged)[0] ?? fitting([typed + 100, typed - 100])[0];
}

function findExchange(input: BodyInput): Issue | undefined {
  const known = knownToSurvey(meanValues(input.measures));
  const ids = Object.keys(known).filter((id) => SURVEY_VARIABLES.includes(id) && findMeasure(id));
  const before = measureSurprise(input.figure, known);
  let best: { a: string; b: string; after: number } | undefined;
  for (let i = 0; i < ids.length; i++) {
    for (let j = i + 1; j < ids.length; j++) {
      const [a, b] = [ids[i], ids[j]];
      if (findMeasure(a)?.kind !== findMeasure(b)?.kind) continue;
      const after = measureSurprise(input.figure, { ...known, [a]: known[b], [b]: known[a] });
      if (after < (best?.after ?? before - EXCHANGE_GAIN)) best = { a, b, after };
    }
  }
  if (!best || isConfirmed(input, best.a) || isConfirmed(input, best.b)) return undefined;
  // Exchanging helps many a merely odd list a little; only a list that then looks ordinary was exchanged.
  if (best.after > 3 * ids.length) return undefined;
  return {
    code: 'measures-exchanged',
    path: `measures.${best.a}`,
    severity: 'error',
    message: phrase('body.measures-exchanged', {
      first: nameOfMeasure(best.a),
      firstValue: known[best.a],
      second: nameOfMeasure(best.b),
      secondValue: known[best.b],
    }),
    measured: known[best.a],
    limit: known[best.b],
  };
}

/** Some two readings agree. */
function isConfirmed({ readings, figure }: BodyInput, id: string): boolean {
  const measure = findMeasure(id);
  const sorted = (readings?.[id] ?? []).toSorted((a, b) => a - b);
  return (
    measure !== undefined &&
    sorted.some((reading, k) => k > 0 && reading - sorted[k - 1] <= limitOfReadings(measure, figure))
  );
}

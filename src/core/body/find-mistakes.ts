import type { Issue } from '../base/index.ts';
import { chanceBeyond } from './chance-beyond.ts';
import { findExchange } from './find-exchange.ts';
import { type JudgedMeasure, judgeList } from './judge-list.ts';
import { knownToSurvey, meanValues } from './known-to-survey.ts';
import { isConfirmed } from './limit-of-readings.ts';
import { findMeasure, nameOfMeasure } from './measures.ts';
import { phrase } from './phrases.ts';
import type { BodyInput } from './types.ts';

/** Of true lists of people like the survey's so many may be asked about, however many measures they hold. */
const ASKED_OF_TRUE = 0.04;
/** Beyond these many standard deviations among all kinds of bodies: far off, and refused. */
const FAR = 4;
const REFUSED = 6;
/**
 * A guess must fit the other measures this well, in standard deviations, and be this much likelier than the reading, all kinds
 * of bodies weighed in. Less would guess at many a real stoop or belly.
 */
const FITS = 1.2;
const LIKELIER = Math.log(1000);

export type Doubt = Pick<JudgedMeasure, 'id' | 'value' | 'expected' | 'spread' | 'pull'>;

/**
 * How far each typed measure lies from what all the others foretell (leave one out), most doubtful first. Leaving one out
 * names the culprit where least squares would smear blame.
 */
export function listDoubts(input: BodyInput): readonly Doubt[] {
  return judged(input, knownToSurvey(meanValues(input.measures)));
}

function judged(input: BodyInput, known: Readonly<Record<string, number>>): readonly JudgedMeasure[] {
  return judgeList(input.figure, known, input.waist).toSorted((a, b) => Math.abs(b.pull) - Math.abs(a.pull));
}

/**
 * Likely typing and measuring mistakes: the culprit, by how much, and what was perhaps meant. What two readings agree on is
 * never doubted, whatever the survey says.
 */
export function findMistakes(input: BodyInput): readonly Issue[] {
  const exchanged = findExchange(input);
  if (exchanged) return [exchanged];
  // One culprit at a time: its error also throws doubt on the others.
  const worst = findCulprit(input);
  return worst ? [tellDoubt(worst)] : [];
}

/** A measure that is odd and confirmed tells of a real body: it steps aside, so that it throws no doubt on others. */
function findCulprit(input: BodyInput): JudgedMeasure | undefined {
  const known = knownToSurvey(meanValues(input.measures));
  for (;;) {
    const measures = judged(input, known);
    const limit = ASKED_OF_TRUE / measures.length;
    const doubtful = measures.filter(({ id, pull }) => findMeasure(id) && chanceBeyond(pull) < limit);
    const confirmed = doubtful.find(({ id }) => isConfirmed(input, id));
    if (!confirmed) return doubtful[0];
    delete known[confirmed.id];
  }
}

function tellDoubt(doubt: JudgedMeasure): Issue {
  const { id, value, expected, spread, pull } = doubt;
  const size = Math.abs(doubt.widePull);
  const guess = guessTypo(doubt);
  const refused = size > REFUSED;
  return {
    code: size > FAR ? 'measure-implausible' : 'measure-doubtful',
    path: `measures.${id}`,
    severity: refused ? 'error' : 'warning',
    message: phrase('body.measure-doubtful', {
      measure: nameOfMeasure(id),
      gap: Math.abs(value - expected),
      size: pull > 0 ? 'large' : 'small',
      expected,
      spread,
      isFar: size > FAR,
      ...(guess ? { guess } : {}),
      advice: refused ? 'correct' : 'measure',
    }),
    measured: value,
    limit: expected + Math.sign(pull) * 3 * spread,
  };
}

/** Neighbouring digits exchanged, else the first digit one off, when the list is likelier by far with it. */
function guessTypo({ value, expected, spread, logDensityOf }: JudgedMeasure): number | undefined {
  const typed = Math.round(value);
  const digits = String(typed).split('');
  const exchanged = digits.slice(1).map((digit, i) => {
    const swapped = [...digits];
    [swapped[i], swapped[i + 1]] = [digit, digits[i]];
    return Number(swapped.join(''));
  });
  const closeness = (c: number): number => Math.abs(c - expected);
  const likely = (candidates: readonly number[]): number[] =>
    candidates
      .filter((c) => closeness(c) < FITS * spread && logDensityOf(c) - logDensityOf(value) > LIKELIER)
      .toSorted((a, b) => closeness(a) - closeness(b));
  // Exchanged digits are the commoner slip, so a guess from them goes first.
  return likely(exchanged)[0] ?? likely([typed + 100, typed - 100])[0];
}

import type { DoubtPhrases, FitPhrases, MeasureFaultPhrases } from '../../../core/body/index.ts';
import type { Entries } from '../../catalogue.ts';

const measureFaults: Entries<MeasureFaultPhrases> = {
  'body.measure-missing': ({ measure }, { say }) =>
    `${say(measure)} is missing; the five first measures are needed.`,
  'body.measure-unknown': ({ id, known }) =>
    `There is no measure called “${id}”.${known ? ` Known: ${known.join(', ')}.` : ''}`,
  'body.measure-not-sided': ({ measure }, { say }) => `${say(measure)} takes one value, not left and right.`,
  'body.measure-not-a-number': ({ measure }, { say }) => `${say(measure)} is not a number.`,
  'body.measure-not-positive': ({ measure, value }, { say, length }) =>
    `${say(measure)} is ${length(value)}; it must be above 0.`,
  'body.measure-unusual': ({ measure, value, low, high }, { say, length }) =>
    `${say(measure)} is ${length(value)}; most people lie between ${length(low)} and ${length(high)}. If a second measuring gives the same, leave it so.`,
  'body.measure-out-of-range': ({ measure, value, low, high, meant }, { say, length, plain }) => {
    const told = `${say(measure)} is ${length(value)}; it must lie between ${length(low)} and ${length(high)}.`;
    if (!meant) return told;
    const unit = { cm: 'centimetres', in: 'inches' }[meant.unit];
    return `${told} If the file was written in ${unit}, it must say ${plain(meant.inFile, 1)}: files are in millimetres.`;
  },
  'body.sides-contradict': ({ measure, gap, left, right, limit }, { say, length, difference }) =>
    `${say(measure)} differs by ${difference(gap)} between left, ${length(left)}, and right, ${length(right)}; at most ${length(limit)} can be made. Re-measure both sides.`,
  'body.sides-differ': ({ measure, gap, left, right }, { say, length, difference }) =>
    `${say(measure)} differs by ${difference(gap)} between left, ${length(left)}, and right, ${length(right)}. Some bodies are so: if a second measuring gives the same, leave it so, or give one value for both.`,
  'body.wall-alone': ({ count, least }) =>
    `Only ${count} of the readings from the wall: nobody knows where the wall stands, so fewer than ${least} say nothing. Take some behind and some in front.`,
  'body.height-alone': ({ measure, needed }, { say }) =>
    `${say(measure)}: without “${say(needed)}” a height from the floor says little. Measure that too.`,
  'body.readings-differ': ({ measure, gap, limit }, { say, difference }) =>
    `The two readings of ${say(measure)} differ by ${difference(gap)}; up to ${difference(limit)} is usual. Take a third.`,
};

const RULES = {
  shorter: 'must be shorter than',
  less: 'must be less than',
  'less-than-half': 'must be less than half of',
  lower: 'must be below',
};

const ADVICE = {
  correct: 'Correct it, or take a second reading: if both agree, enter both, and it stays.',
  measure: 'Measure it a second time: if both readings agree, enter both, and it stays.',
};

const SIZES = { large: 'more', small: 'less' };

const doubts: Entries<DoubtPhrases> = {
  'body.measures-contradict': ({ first, firstValue, second, secondValue, rule }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, ${RULES[rule]} ${say(second)}, ${length(secondValue)}: re-measure both.`,
  'body.half-of-girth': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, must be less than half of ${say(second)}, ${length(secondValue)}.`,
  'body.girth-of-box': ({ measure, girth, width, depth, least, most }, { say, length }) =>
    `${say(measure)} is ${length(girth)}, but a body ${length(width)} wide and ${length(depth)} deep measures between ${length(least)} and ${length(most)} round. Re-measure the three.`,
  'body.back-shorter-than-height': (
    { back, length: mm, nape, waist, span, gap },
    { say, length, difference },
  ) =>
    `${say(back)}, ${length(mm)}, is ${difference(gap)} shorter than the height it spans, ${length(span)} from ${say(waist)} to ${say(nape)}; no tape over a back is shorter than that. Re-measure these three, standing upright with the belt left where it is.`,
  'body.girths-off': ({ size, share, seenBy }, { percent }) =>
    `All girths together look about ${percent(share, 0)} too ${size} for ${seenBy === 'boxes' ? 'the widths and depths' : 'the lengths and for one another'}. Check that the tape starts at its end and agrees with a ruler, and lies on the body, not on clothes. If it does, leave them so.`,
  'body.please-confirm': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, is not below ${say(second)}, ${length(secondValue)}. Some bodies are so: if a second measuring gives the same, leave it so.`,
  'body.measures-exchanged': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, and ${say(second)}, ${length(secondValue)}, look exchanged. Exchange them, or enter a second reading of each.`,
  'body.measure-doubtful': (
    { measure, gap, size, expected, spread, isFar, guess, advice },
    { say, length, difference, around },
  ) => {
    const far = isFar ? 'far ' : '';
    const meant = guess === undefined ? '' : ` Did you mean ${length(guess)}?`;
    return `${say(measure)} is about ${difference(gap)} ${far}${SIZES[size]} than in most people whose other measures are like these: ${around(expected, spread)}.${meant} ${ADVICE[advice]}`;
  },
};

const fit: Entries<FitPhrases> = {
  'body.tape-conflict': ({ tape, gap, size, conflicting }, { say, difference }) =>
    `${say(tape)} is about ${difference(gap)} too ${size} for the others. Re-measure ${conflicting.map(say).join(', ')}.`,
  'body.unusual-shape': ({ part, isVery }, { say }) =>
    `To meet every tape the shape became ${isVery ? 'very unusual' : 'unusual'} in ${say(part)}. Look at the body and re-measure what looks wrong.`,
  'body.section-crosses': ({ level }, { inSentence }) =>
    `At the ${inSentence(level)} level the body would fold onto itself. Re-measure girth, width and depth there, and the levels above and below.`,
  'body.not-faired': `The body’s surface could not be smoothed without missing a tape by more than half a millimetre, so it stays as fitted, less smooth.`,
  'body.fit-not-converged': ({ steps }) => `The body fit stopped after ${steps} steps before settling.`,
  'body.arms-incomplete': ({ missing }, { say }) =>
    `Arms are made when all five arm measures are given. Missing: ${missing.map(say).join(', ')}.`,
  'body.arm-too-short': ({ length: mm }, { length }) =>
    `Shoulder to elbow, ${length(mm)}, leaves no upper arm below the shoulder cap. Re-measure it and the upper arm girth. No arm is made.`,
  'body.shape-unknown': ({ id, known }) => `There is no shape called “${id}”. Known: ${known.join(', ')}.`,
  'body.choice-unknown': ({ category, choices, given }, { say }) =>
    `${say(category)} can be ${choices.join(', ')}, or a number; not “${given}”.`,
  'body.shape-out-of-range': ({ category, value, least, most }, { say, exact }) =>
    `${say(category)} is ${exact(value)}; it must lie between ${exact(least)} and ${exact(most)}.`,
};

/** What is wrong with measures, answers about the shape, and the body they make. */
export const bodyFaults: Entries<MeasureFaultPhrases & DoubtPhrases & FitPhrases> = {
  ...measureFaults,
  ...doubts,
  ...fit,
};

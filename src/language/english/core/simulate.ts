import type { SimulatePhrases } from '../../../core/simulate/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

const MEASURE_PERSON = ' All other girths measured are right: if it stays so, measure the person here again.';

/** Zones of filling, and what to mend by what was measured. */
export const simulate: Entries<SimulatePhrases> = {
  'zone.from-top': ({ lower }, { inSentence }) =>
    `Shoulders and neck, down to ${lower ? inSentence(lower) : 'the base'}`,
  'zone.between': ({ upper, lower }, { say, inSentence }) =>
    `${say(upper)} to ${lower ? inSentence(lower) : 'base'}`,
  'check.value': (values, tongue) => {
    const { unit, value, below, above } = values;
    const measured = (amount: number): string => sayMeasured(amount, unit, tongue);
    // A range reads more easily than a middle with limits.
    if (unit === 'kg' && below && above) return `${measured(value - below)} to ${measured(value + above)}`;
    if (!below && !above) return measured(value);
    const limit = (amount: number): string => (unit === 'mm' ? tongue.difference(amount) : measured(amount));
    if (below === above) return `${measured(value)} ± ${limit(above ?? 0)}`;
    return `${measured(value)}, −${below ? limit(below) : 0} / +${limit(above ?? 0)}`;
  },
  'correction.misread.title': ({ level }, { say }) => `${say(level)}: these readings cannot be true together`,
  'correction.misread.text': ({ girth, least, most, again }, { length }) =>
    `What is so wide and deep is at least ${length(least)} and at most ${length(most)} round, and you typed ${length(girth)}. Measure ${again === 'girth' ? 'the girth' : 'width and depth'} again, with set squares against the form.`,
  'correction.growth.title': ({ share }, { percent }) =>
    `The cloth has grown: every girth is over by about ${percent(share, 1)}`,
  'correction.growth.text': ({ growth }, { percent }) =>
    `One share everywhere is the cloth, not the filling. A test tube of it would grow by ${percent(growth, 1)}: take that as measured growth, and the panels are cut smaller. On this form, take filling out until the girths are right.`,
  'correction.scale.title': ({ share, size }, { percent }) => `Everything is ${size} by ${percent(share, 1)}`,
  'correction.scale.text':
    'One share everywhere, and more than cloth does by itself: measure the bars of the print and the seam allowances before anything else.',
  'correction.take-out.title': ({ level, by }, { say, small }) =>
    `${say(level)}: ${small(by)} too large all round`,
  'correction.take-out.text': ({ mass, zones, isMeasureDoubted }, tongue) =>
    `Take filling out, about ${tongue.mass(mass)} from ${quoted(zones, tongue)}, and measure again. Do not tighten the seam.${isMeasureDoubted ? MEASURE_PERSON : ''}`,
  'correction.put-in.title': ({ level, by }, { say, small }) =>
    `${say(level)}: ${small(by)} too small all round`,
  'correction.put-in.text': ({ mass, zones, isMeasureDoubted }, tongue) =>
    `Put filling in, about ${tongue.mass(mass)} into ${quoted(zones, tongue)}, from the surface inwards.${isMeasureDoubted ? MEASURE_PERSON : ''}`,
  'correction.shape.title': ({ level, depth, width }, { say, small }) => {
    const offs = [
      ...(depth === undefined ? [] : [`${small(depth)} too ${depth > 0 ? 'deep' : 'shallow'}`]),
      ...(width === undefined ? [] : [`${small(width)} too ${width > 0 ? 'wide' : 'narrow'}`]),
    ];
    return `${say(level)}: ${offs.join(' and ')}, with the right girth`;
  },
  'correction.shape.text': ({ act, ties, width, depth }, { say, small }) => {
    const list = ties.map(({ name, by }) => `${say(name)} by ${small(by)}`).join(', ');
    return `${act === 'shorten' ? 'Shorten' : 'Lengthen'} at this level: ${list}. That makes it ${small(depth)} ${depth < 0 ? 'shallower' : 'deeper'} and ${small(width)} ${width < 0 ? 'narrower' : 'wider'}. Take the filling out of the zone first.`;
  },
  'correction.shape.without-tie':
    'No tie alone brings that: move filling from where it bulges to where it is flat, and measure width and depth again.',
  'correction.seam.title': ({ level, by, size }, { say, small }) =>
    `${say(level)}: the shell is ${small(by)} too ${size} all round`,
  'correction.seam.text': ({ act, letters, each, isPossible, isFilled }, { small }) => {
    const which = `each of the ${letters.length} seams ${letters.join(', ')}`;
    const moved =
      act === 'take-in'
        ? `sew ${which} deeper by ${small(each)} there, running out to nothing at the next levels`
        : `let ${which} out by ${small(each)} there`;
    const first = isFilled
      ? 'Filling alone does not stretch cloth so far, so the seams are wide. Take the filling out first: no seam is sewn over filling. Then '
      : '';
    const limit = isPossible ? '' : ' Its allowance is too narrow for that: put in a new panel instead.';
    return `${capitalise(`${first}${moved}.`)}${limit}`;
  },
};

function sayMeasured(
  amount: number,
  unit: SimulatePhrases['check.value']['unit'],
  { fineLength, mass, fixed, exact }: Tongue,
): string {
  if (unit === 'mm') return fineLength(amount);
  if (unit === 'kg') return mass(amount);
  return unit === 'degrees' ? `${fixed(amount, 1)}°` : exact(amount);
}

function quoted(names: SimulatePhrases['correction.put-in.text']['zones'], { say }: Tongue): string {
  return names.map((name) => `“${say(name)}”`).join(' and ');
}

function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

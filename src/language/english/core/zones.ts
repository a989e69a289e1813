import type { FormPhrases, PlaceMark } from '../../../core/form/index.ts';
import type { LevelSpread } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

const MARKS: Readonly<Record<PlaceMark, string>> = {
  bustPoint: 'the bust point',
  bladePoint: 'the shoulder blade',
  armpit: 'the armpit',
  shoulderPoint: 'the shoulder point',
  neckSide: 'the side of the neck',
  neckFront: 'the pit of the neck',
  neckBack: 'the nape',
};
const AXES = { warp: 'along the grain', weft: 'across the grain', bias: 'on the bias' } as const;

/** Places where the cloth is asked for more than it takes. */
export const zones: Entries<FormPhrases> = {
  'zone.stretches': ({ panel, place, area, axis, strain, limit, advice }, tongue) =>
    `${tongue.say(panel)}, ${tongue.say(place)}, ${sayArea(area, tongue)}: the cloth would have to stretch by up to ${percent(strain, tongue)} ${AXES[axis]} (it takes ${percent(limit, tongue)}). ${tongue.say(advice)}`,
  'zone.wrinkles': ({ panel, place, area, axis, strain, limit, advice }, tongue) =>
    `${tongue.say(panel)}, ${tongue.say(place)}, ${sayArea(area, tongue)}: the cloth would wrinkle: it has to shrink by up to ${percent(strain, tongue)} ${AXES[axis]} (it takes ${percent(limit, tongue)}). ${tongue.say(advice)}`,
  'zone.seam-ends-here': ({ letter, seam }, { say }) =>
    `A seam that ends near here, or a little ease on seam ${letter}, ${say(seam)}, may help.`,
  'zone.seam-nearby': ({ letter, seam, distance }, { say, length }) =>
    `A seam nearer to here may help; the nearest, ${letter}, ${say(seam)}, is ${length(distance)} away.`,
  'zone.no-seam': 'A seam here may help.',
  'place.by-mark': ({ mark, rise, out }, { length }) => {
    const parts = [
      ...(rise === undefined ? [] : [`${length(Math.abs(rise))} ${rise > 0 ? 'above' : 'below'}`]),
      ...(out === undefined
        ? []
        : [`${length(Math.abs(out))} ${out > 0 ? 'further out than' : 'further in than'}`]),
    ];
    return parts.length === 0 ? `at ${MARKS[mark]}` : `${parts.join(' and ')} ${MARKS[mark]}`;
  },
  'place.by-level': ({ level, rise }, { inSentence, length }) =>
    `${length(Math.abs(rise))} ${rise > 0 ? 'above' : 'below'} the ${inSentence(level)} line`,
  'place.on-body': 'on the body',
  'tube.alone':
    'Only the test tube. Sew, stuff and measure it and type its girths in: the panels are then cut for your cloth. Print them after that.',
  'tube.measured': ({ growth }, tongue) =>
    `Test tube: done. This cloth grows by ${percent(growth, tongue)}, and the pieces are cut smaller by it.`,
  'tube.skipped': ({ levels }, tongue) =>
    `FIRST THE TEST TUBE: none was measured for these pieces, so how much your cloth grows is a guess. Filled, girths may come out otherwise: ${levels.map((one) => saySpread(one, tongue)).join('; ')}. Print the tube alone, measure it, then print this anew.`,
  'verdict.sound': ({ strain }, tongue) =>
    `Can be sewn as it is: 95 % of the cloth is strained less than ${percent(strain, tongue)}.`,
  'verdict.wrinkles': ({ places }) => `Can be sewn, but the cloth will wrinkle ${sayPlaces(places)}.`,
  'verdict.pulls': ({ places }) => `Can be sewn, but the cloth will be dragged ${sayPlaces(places)}.`,
  'verdict.cannot': ({ reason }, { say }) => `Cannot be sewn so. ${say(reason)}`,
  'verdict.folds': 'This piece folds over itself when it is laid flat.',
  'verdict.partners': ({ letter, gap }, { fixed }) =>
    `The two sides of seam ${letter} do not meet: their notches are up to ${fixed(gap, 1)} mm apart.`,
  'verdict.at': ({ panel, place }, { say }) => `${say(panel)}, ${say(place)}`,
};

function saySpread({ level, less, more }: LevelSpread, { inSentence, fixed }: Tongue): string {
  return `${inSentence(level)} up to ${fixed(less, 0)} mm less or ${fixed(more, 0)} mm more`;
}

function sayPlaces(count: number): string {
  return count === 1 ? 'in one place' : `in ${count} places`;
}

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 1)} %`;
}

function sayArea(mm2: number, { fixed }: Tongue): string {
  return `${fixed(Math.max(1, mm2 / 100), 0)} cm²`;
}

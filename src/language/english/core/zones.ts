import type { FormPhrases, PlaceMark } from '../../../core/form/index.ts';
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
  'zone.seam-nearby': ({ letter, seam, distance }, { say, small }) =>
    `A seam nearer to here may help; the nearest, ${letter}, ${say(seam)}, is ${small(distance)} away.`,
  'zone.no-seam': 'A seam here may help.',
  'place.by-mark': ({ mark, rise, out }, { small }) => {
    const parts = [
      ...(rise === undefined ? [] : [`${small(Math.abs(rise))} ${rise > 0 ? 'above' : 'below'}`]),
      ...(out === undefined
        ? []
        : [`${small(Math.abs(out))} ${out > 0 ? 'further out than' : 'further in than'}`]),
    ];
    return parts.length === 0 ? `at ${MARKS[mark]}` : `${parts.join(' and ')} ${MARKS[mark]}`;
  },
  'place.by-level': ({ level, rise }, { inSentence, small }) =>
    `${small(Math.abs(rise))} ${rise > 0 ? 'above' : 'below'} the ${inSentence(level)} line`,
  'place.on-body': 'on the body',
};

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 1)} %`;
}

function sayArea(mm2: number, { fixed }: Tongue): string {
  return `${fixed(Math.max(1, mm2 / 100), 0)} cm²`;
}

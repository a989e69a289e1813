import type { FormPhrases, PlaceMark } from '../../../core/form/index.ts';
import type { LevelSpread } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

/** Behind “que”, “à” and “de”. */
interface Mark {
  readonly name: string;
  readonly at: string;
  readonly of: string;
}
const MARKS: Readonly<Record<PlaceMark, Mark>> = {
  bustPoint: { name: 'la pointe de sein', at: 'à la pointe de sein', of: 'de la pointe de sein' },
  bladePoint: { name: 'l’omoplate', at: 'à l’omoplate', of: 'de l’omoplate' },
  armpit: { name: 'l’aisselle', at: 'à l’aisselle', of: 'de l’aisselle' },
  shoulderPoint: { name: 'la pointe d’épaule', at: 'à la pointe d’épaule', of: 'de la pointe d’épaule' },
  neckSide: { name: 'le côté du cou', at: 'au côté du cou', of: 'du côté du cou' },
  neckFront: { name: 'le creux du cou', at: 'au creux du cou', of: 'du creux du cou' },
  neckBack: { name: 'la nuque', at: 'à la nuque', of: 'de la nuque' },
};
const AXES = {
  warp: 'dans le droit-fil',
  weft: 'en travers du droit-fil',
  bias: 'dans le biais',
} as const;

/** Places where the cloth is asked for more than it takes. */
export const zones: Entries<FormPhrases> = {
  'zone.stretches': ({ panel, place, area, axis, strain, limit, advice }, tongue) =>
    `${tongue.say(panel)}, ${tongue.say(place)}, ${sayArea(area, tongue)}\u00a0: le tissu devrait s’étirer jusqu’à ${percent(strain, tongue)} ${AXES[axis]} (il supporte ${percent(limit, tongue)}). ${tongue.say(advice)}`,
  'zone.wrinkles': ({ panel, place, area, axis, strain, limit, advice }, tongue) =>
    `${tongue.say(panel)}, ${tongue.say(place)}, ${sayArea(area, tongue)}\u00a0: le tissu ferait des plis\u00a0: il faudrait le soutenir jusqu’à ${percent(strain, tongue)} ${AXES[axis]} (il supporte ${percent(limit, tongue)}). ${tongue.say(advice)}`,
  'zone.seam-ends-here': ({ letter, seam }, { say }) =>
    `Une couture qui finit près d’ici, ou un peu de soutien sur la couture ${letter}, ${say(seam)}, peut aider.`,
  'zone.seam-nearby': ({ letter, seam, distance }, { say, length }) =>
    `Une couture plus près d’ici peut aider\u202f; la plus proche, ${letter}, ${say(seam)}, est à ${length(distance)}.`,
  'zone.no-seam': 'Une couture ici peut aider.',
  'place.by-mark': ({ mark, rise, out }, { length }) => {
    const { name, at, of } = MARKS[mark];
    const above = rise && `${length(Math.abs(rise))} ${rise > 0 ? 'au-dessus' : 'au-dessous'} ${of}`;
    const beside = out && `${length(Math.abs(out))} plus ${out > 0 ? 'à l’extérieur' : 'à l’intérieur'}`;
    if (above && beside) return `${above} et ${beside}`;
    return above || (beside ? `${beside} que ${name}` : at);
  },
  'place.by-level': ({ level, rise }, { inSentence, length }) =>
    `${length(Math.abs(rise))} ${rise > 0 ? 'au-dessus' : 'au-dessous'} de la ligne «\u00a0${inSentence(level)}\u00a0»`,
  'place.on-body': 'sur le corps',
  'tube.alone':
    'Le boudin d’essai seul. Le coudre, le rembourrer, le mesurer et saisir ses tours\u00a0: les panneaux sont alors coupés pour votre tissu. Ne les imprimer qu’après.',
  'tube.measured': ({ growth }, tongue) =>
    `Boudin d’essai\u00a0: fait. Ce tissu s’allonge de ${percent(growth, tongue)}, et les pièces sont plus petites d’autant.`,
  'tube.skipped': ({ levels }, tongue) =>
    `D’ABORD LE BOUDIN D’ESSAI\u00a0: aucun n’a été mesuré pour ces pièces, l’allongement de votre tissu n’est donc qu’estimé. Une fois le mannequin rembourré, les tours peuvent différer\u00a0: ${levels.map((one) => saySpread(one, tongue)).join('\u202f; ')}. Imprimer le boudin seul, le mesurer, puis réimprimer ceci.`,
  'verdict.sound': ({ strain }, tongue) =>
    `Peut se coudre tel quel\u00a0: 95 % du tissu subit une déformation de moins de ${percent(strain, tongue)}.`,
  'verdict.wrinkles': ({ places }) => `Peut se coudre, mais le tissu fera des plis ${sayPlaces(places)}.`,
  'verdict.pulls': ({ places }) => `Peut se coudre, mais le tissu tirera ${sayPlaces(places)}.`,
  'verdict.cannot': ({ reason }, { say }) => `Ne peut pas se coudre ainsi. ${say(reason)}`,
  'verdict.folds': 'Cette pièce se replie sur elle-même quand on la met à plat.',
  'verdict.partners': ({ letter, gap }, { fixed }) =>
    `Les deux bords de la couture ${letter} ne se rejoignent pas\u00a0: leurs crans s’écartent jusqu’à ${fixed(gap, 1)} mm.`,
  'verdict.at': ({ panel, place }, { say }) => `${say(panel)}, ${say(place)}`,
};

function saySpread({ level, less, more }: LevelSpread, { inSentence, fixed }: Tongue): string {
  return `${inSentence(level)} jusqu’à ${fixed(less, 0)} mm de moins ou ${fixed(more, 0)} mm de plus`;
}

function sayPlaces(count: number): string {
  return count === 1 ? 'à un endroit' : `à ${count} endroits`;
}

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 1)} %`;
}

function sayArea(mm2: number, { fixed }: Tongue): string {
  return `${fixed(Math.max(1, mm2 / 100), 0)} cm²`;
}

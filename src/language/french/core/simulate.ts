import type { SimulatePhrases } from '../../../core/simulate/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

const MEASURE_PERSON =
  ' Tous les autres tours mesurés sont justes\u00a0: si cela persiste, mesurer de nouveau la personne à cet endroit.';

/** Zones of filling, and what to correct by what was measured. */
export const simulate: Entries<SimulatePhrases> = {
  'zone.from-top': ({ lower }, { inSentence }) =>
    `Épaules et cou, jusqu’${lower ? `au niveau ${inSentence(lower)}` : 'à la base'}`,
  'zone.between': ({ upper, lower }, { inSentence }) =>
    `Entre ${inSentence(upper)} et ${lower ? inSentence(lower) : 'base'}`,
  'check.value': (values, tongue) => {
    const { unit, value, below, above } = values;
    const measured = (amount: number): string => sayMeasured(amount, unit, tongue);
    // A range reads more easily than a middle with limits.
    if (unit === 'kg' && below && above) return `${measured(value - below)} à ${measured(value + above)}`;
    if (!below && !above) return measured(value);
    const limit = (amount: number): string => (unit === 'mm' ? tongue.difference(amount) : measured(amount));
    if (below === above) return `${measured(value)} ± ${limit(above ?? 0)}`;
    return `${measured(value)}, −${below ? limit(below) : 0} / +${limit(above ?? 0)}`;
  },
  'correction.misread.title': ({ level }, { say }) =>
    `${say(level)}\u00a0: ces valeurs ne peuvent pas être justes ensemble`,
  'correction.misread.text': ({ girth, least, most, again }, { length }) =>
    `Avec cette largeur et cette profondeur, le tour est d’au moins ${length(least)} et d’au plus ${length(most)}, et vous avez saisi ${length(girth)}. Mesurer de nouveau ${again === 'girth' ? 'le tour' : 'la largeur et la profondeur'}, avec des équerres contre le mannequin.`,
  'correction.growth.title': ({ share }, { percent }) =>
    `Le tissu s’est allongé\u00a0: chaque tour dépasse d’environ ${percent(share, 1)}`,
  'correction.growth.text': ({ growth }, { percent }) =>
    `La même part partout, c’est le tissu, pas le rembourrage. Un boudin d’essai de ce tissu s’allongerait de ${percent(growth, 1)}\u00a0: reprendre cette valeur comme allongement mesuré, et les panneaux seront coupés plus petits. Sur ce mannequin, retirer du rembourrage jusqu’à ce que les tours soient justes.`,
  'correction.scale.title': ({ share, size }, { percent }) =>
    `Tout est trop ${size === 'larger' ? 'grand' : 'petit'} de ${percent(share, 1)}`,
  'correction.scale.text':
    'La même part partout, et plus que ce que fait le tissu tout seul\u00a0: mesurer avant tout les barres de contrôle de l’impression et les marges de couture.',
  'correction.take-out.title': ({ level, by }, { say, small }) =>
    `${say(level)}\u00a0: ${small(by)} de trop en tout sur le tour`,
  'correction.take-out.text': ({ mass, zones, isMeasureDoubted }, tongue) =>
    `Retirer du rembourrage, environ ${tongue.mass(mass)} dans ${quoted(zones, tongue)}, et mesurer de nouveau. Ne pas resserrer la couture.${isMeasureDoubted ? MEASURE_PERSON : ''}`,
  'correction.put-in.title': ({ level, by }, { say, small }) =>
    `${say(level)}\u00a0: il manque ${small(by)} en tout sur le tour`,
  'correction.put-in.text': ({ mass, zones, isMeasureDoubted }, tongue) =>
    `Ajouter du rembourrage, environ ${tongue.mass(mass)} dans ${quoted(zones, tongue)}, de la surface vers l’intérieur.${isMeasureDoubted ? MEASURE_PERSON : ''}`,
  'correction.shape.title': ({ level, depth, width }, { say, small }) => {
    const offs = [
      ...(depth === undefined ? [] : [`${small(depth)} de ${depth > 0 ? 'trop' : 'moins'} en profondeur`]),
      ...(width === undefined ? [] : [`${small(width)} de ${width > 0 ? 'trop' : 'moins'} en largeur`]),
    ];
    return `${say(level)}\u00a0: ${offs.join(' et ')}, avec un tour juste`;
  },
  'correction.shape.text': ({ act, ties, width, depth }, { say, small }) => {
    const list = ties.map(({ name, by }) => `${say(name)} de ${small(by)}`).join(', ');
    return `À ce niveau, ${act === 'shorten' ? 'raccourcir' : 'rallonger'}\u00a0: ${list}. Cela fait ${small(depth)} de ${depth < 0 ? 'moins' : 'plus'} en profondeur et ${small(width)} de ${width < 0 ? 'moins' : 'plus'} en largeur. Retirer d’abord le rembourrage de la zone.`;
  },
  'correction.shape.without-tie':
    'Aucun lien n’y suffit seul\u00a0: déplacer du rembourrage de là où cela bombe vers là où c’est plat, et mesurer de nouveau largeur et profondeur.',
  'correction.seam.title': ({ level, by, size }, { say, small }) =>
    `${say(level)}\u00a0: l’enveloppe est trop ${size === 'wide' ? 'large' : 'étroite'} de ${small(by)} en tout sur le tour`,
  'correction.seam.text': ({ act, letters, each, isPossible, isFilled }, { small }) => {
    const which =
      letters.length === 1
        ? `la couture ${letters.join(', ')}`
        : `chacune des ${letters.length} coutures ${letters.join(', ')}`;
    const moved =
      act === 'take-in'
        ? `coudre ${which} plus profond de ${small(each)} à cet endroit, en mourant vers les niveaux voisins`
        : `lâcher ${which} de ${small(each)} à cet endroit`;
    const first = isFilled
      ? 'Le rembourrage seul n’étire pas tant le tissu, les coutures sont donc trop larges. Retirer d’abord le rembourrage\u00a0: on ne coud jamais sur du rembourrage. Ensuite, '
      : '';
    const limit = isPossible
      ? ''
      : ' Sa marge de couture est trop étroite pour cela\u00a0: monter plutôt un nouveau panneau.';
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
  return names.map((name) => `«\u00a0${say(name)}\u00a0»`).join(' et ');
}

function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

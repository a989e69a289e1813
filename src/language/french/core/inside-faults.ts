import type { InsidePhrases, Sides } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';
import { SIDES } from './sides.ts';

type Faults = {
  readonly [Id in keyof InsidePhrases as Id extends
    | `inside.${string}`
    | `opening.${string}`
    | `part.${string}`
    ? Id
    : never]: InsidePhrases[Id];
};

const PLATES = {
  base: 'plaque de base',
  neck: 'plaque d’encolure',
  armhole: 'plaque d’emmanchure',
  wrist: 'plaque de poignet',
} as const;

const MEND_WEB =
  'Doubler cette cloison d’une seconde épaisseur de tissu, ou supprimer les sangles (dans le fichier du projet, inside.straps\u00a0: false).';

const MEND_LEVEL = {
  cup: 'y mettre un bonnet bien rembourré',
  wadding: 'y mettre une couche d’ouate sous le tissu',
  'less-filling': 'y rembourrer moins, ou coudre une sangle de plus au fourreau du tube',
} as const;

const GAINED = { width: 'sa largeur', depth: 'sa profondeur', place: 'son endroit le plus éloigné' } as const;

/** What cannot be built inside. */
export const faultsInside: Entries<Faults> = {
  'inside.webs-near-pole': ({ side, nearest, room, remedy }, { say, small }) =>
    `${webs(side, 'viendrait', 'viendraient')} à ${small(nearest)} du milieu, où le tube dans son fourreau demande ${small(room)}\u00a0: cloisons et tube se croiseraient. ${say(remedy)}`,
  'inside.webs-on-other-side': ({ side, over, remedy }, { say, small }) =>
    `${webs(side, 'passerait', 'passeraient')} de l’autre côté de ${small(over)} et ${side === 'both' ? 'se rencontreraient' : 'rencontrerait sa voisine'}\u00a0: cloisons et tube se croiseraient. ${say(remedy)}`,
  'inside.take-thinner-pole': ({ most }, { lengthAlone }) =>
    `Prendre un tube de ${lengthAlone(most)} au plus.`,
  'inside.take-webs-on-panels':
    'Mettre les cloisons sur les panneaux (dans le fichier du projet, inside.webPlaces\u00a0: "panels"), ou choisir une autre découpe.',
  'inside.cloth-gives-way': (values, tongue) => {
    const { pressure, stiffness, mostPressure } = values;
    const { fixed, exact } = tongue;
    return `${growing(values, tongue)} sous ${exact(pressure)} kPa avec un tissu de ${exact(stiffness)} N/mm\u202f; ${firmest(values, tongue)}. Indiquer une pression de ${fixed(mostPressure, 1)} kPa au plus, ou un tissu plus ferme.`;
  },
  'inside.cloth-gives-way-as-measured': (values, tongue) =>
    `${growing(values, tongue)} d’après ce qui a été mesuré sur le boudin d’essai\u202f; ${firmest(values, tongue)}. Mesurer de nouveau le boudin d’essai, ou thermocoller un entoilage plus ferme sur le tissu.`,
  'inside.level-deviates': ({ level, by, way, at, wanted, remedy }, { say, small }) =>
    `${say(level)}\u00a0: rembourré, le mannequin sera ${small(by)} ${way === 'flatter' ? 'plus plat' : 'plus plein'} que le corps ${say(at)} (${small(wanted)} demandés)\u202f; ${MEND_LEVEL[remedy]}.`,
  'inside.line-leaves-panels': ({ line, side }, { say }) =>
    `La ligne «\u00a0${say(line)}\u00a0» ${LINE_PLACES[side]} sort des panneaux, ce qui s’y coud est donc supprimé. Choisir une autre découpe, ou des cloisons sur les coutures.`,
  'inside.throat-web-without-room': ({ room, least }, { exactLength }) =>
    `Les cloisons de gorge sont supprimées, et le creux du cou ressortira\u00a0: près du milieu devant, aucune ligne de ${exactLength(least)} de haut ne reste à ${exactLength(room)} des coutures entre poitrine et cou. Y déplacer les coutures, ou choisir une autre découpe.`,
  'inside.tube-too-thick': ({ diameter, where, most, layers }, { lengthAlone, small }) =>
    `Un tube de ${lengthAlone(diameter)} ne passe pas ${where === 'neck' ? 'par la plaque d’encolure' : 'droit entre cou et taille'}\u00a0: ${lengthAlone(most)} au plus laissent assez de place autour. En prendre un qui n’est pas plus gros, mesuré au pied à coulisse${layers === undefined ? '' : `, ou des couches plus minces par-dessus l’enveloppe, à présent ${small(layers)} (coverThickness)`}.`,
  'inside.little-cloth-at-edge': ({ brace, opening, left, least }, tongue) =>
    `Sur «\u00a0${tongue.say(brace)}\u00a0», ${clothLeft(left, tongue)} entre ${tongue.say(opening)} et le bord\u202f; il en faut ${tongue.exactLength(least)}. ${MEND_WEB}`,
  'inside.little-cloth-between': ({ brace, opening, other, left, least }, tongue) =>
    `Sur «\u00a0${tongue.say(brace)}\u00a0», ${clothLeft(left, tongue)} entre ${tongue.say(opening)} et ${tongue.say(other)}\u202f; il en faut ${tongue.exactLength(least)}. ${MEND_WEB}`,
  'opening.for-fill': ({ number }) => `l’ouverture ${number}`,
  'opening.for-strap': ({ number }) => `la fente d’une sangle (ouverture ${number})`,
  'opening.for-straps': ({ number }) => `la fente commune à plusieurs sangles (ouverture ${number})`,
  'inside.strap-gain': ({ level, of, before, after }, { say, small }) =>
    `${say(level)}\u00a0: les sangles ajoutées à ce niveau amènent ${GAINED[of]} à ${small(after)} du corps, contre ${small(before)} sans elles.`,
  'part.throat': 'cloisons de gorge',
  'part.straps': ({ level }, { inSentence }) => `sangles au niveau «\u00a0${inSentence(level)}\u00a0»`,
  'part.gain': ({ without, with: held, at, atWithout, atWith }, { small }) =>
    `Sur deux corps d’exemple rembourrés, le mannequin s’écarte du corps en moyenne de ${small(without)} sans elles, de ${small(held)} avec\u202f; ${at === 'throat' ? 'le creux du cou ressort de' : 'la largeur ou profondeur la plus fausse s’écarte de'} ${small(atWithout)} sans, de ${small(atWith)} avec.`,
  'part.needed': 'Ajoutées parce que sans elles ce mannequin ne serait pas tel que demandé.',
  'inside.web-too-open': ({ brace, open, most }, { say, percent }) =>
    `«\u00a0${say(brace)}\u00a0» est ouverte sur ${percent(open, 0)} de sa hauteur\u202f; à ${percent(most, 0)} au plus, elle tient encore le devant au dos. ${MEND_WEB}`,
  'inside.hole-near-edge': ({ hole, side, plate, least }, { exactLength }) =>
    `${hole === 'pole' ? 'Le trou du tube vient' : stuffingHoles(side)} à moins de ${exactLength(least)} du bord de la ${PLATES[plate]}\u00a0: prendre un tube plus fin, ou du contreplaqué mince au lieu de carton.`,
  'inside.plate-vanishes': ({ plate, side, layers, cloth, most }, { small }) =>
    `${plateName(plate, side)}\u00a0: il n’en resterait rien\u202f; ${layers} ${layers === 1 ? 'épaisseur' : 'épaisseurs'} de tissu de ${small(cloth)} sont retirées tout autour, et ${small(most)} est le plus possible. N’indiquer que l’épaisseur de l’enveloppe et de l’entoilage, mesurée au pied à coulisse\u202f; ce qui se met par-dessus l’enveloppe va sous «\u00a0Couches par-dessus l’enveloppe\u00a0».`,
  'inside.plate-vanishes-under-cover': ({ plate, side, cover, most }, { small, exactLength }) =>
    `${plateName(plate, side)}\u00a0: il n’en resterait rien\u202f; les couches par-dessus l’enveloppe, ${small(cover)}, sont retirées tout autour, et ${exactLength(most)} est le plus possible. Indiquer l’épaisseur de l’ouate et de la housse telles qu’elles sont une fois portées.`,
  'inside.magnets-near-edge': ({ side, magnet, toEdge, toPeg, least, most }, tongue) => {
    const { small, exactLength } = tongue;
    const remedy =
      most === undefined
        ? 'Il n’y a pas de place pour des aimants près de cette cheville\u00a0: prendre une cheville plus fine, ou suspendre le bras par une sangle.'
        : `Prendre des aimants de ${exactLength(most)} au plus, ou une cheville plus fine.`;
    return `Les aimants ${ofArms(side)}, ${small(magnet)}, ne laissent ${board(toEdge, tongue)} jusqu’au bord de la plaque d’emmanchure et ${board(toPeg, tongue)} jusqu’au trou de la cheville\u202f; il faut ${exactLength(least)} aux deux. ${remedy}`;
  },
  'inside.peg-near-edge': ({ side, peg, toEdge, least, most }, tongue) =>
    `La cheville ${ofArms(side)}, ${tongue.small(peg)}, ne laisse ${board(toEdge, tongue)} jusqu’au bord de la plaque d’emmanchure\u202f; il faut ${tongue.exactLength(least)}. Prendre une cheville de ${tongue.exactLength(most)} au plus.`,
};

const LINE_PLACES = { right: 'à droite', left: 'à gauche', centre: 'au milieu' } as const;

function webs(side: Sides, one: string, both: string): string {
  return side === 'both' ? `Les cloisons droite et gauche ${both}` : `La cloison ${SIDES[side].f} ${one}`;
}

function ofArms(side: Sides): string {
  return side === 'both' ? 'des bras droit et gauche' : `du bras ${SIDES[side].m}`;
}

function stuffingHoles(side: Sides | undefined): string {
  if (side === 'both') return 'Les trous de remplissage droit et gauche viennent';
  return `Le trou de remplissage${side ? ` ${SIDES[side].m}` : ''} vient`;
}

function plateName(plate: keyof typeof PLATES, side: Sides | undefined): string {
  const name = `${PLATES[plate].charAt(0).toUpperCase()}${PLATES[plate].slice(1)}`;
  if (!side) return name;
  return side === 'both' ? `${name}, droite et gauche` : `${name} ${SIDES[side].f}`;
}

type Growing = Faults['inside.cloth-gives-way-as-measured'];

function growing({ level, girth, growth }: Growing, { say, lengthAlone, percent }: Tongue): string {
  const how =
    growth === undefined ? 'serait sans fin, le tissu éclaterait,' : `serait de ${percent(growth, 0)}`;
  return `${say(level)}, ${lengthAlone(girth)} de tour\u00a0: l’allongement ${how}`;
}

function firmest({ mostGrowth }: Growing, { percent }: Tongue): string {
  return `${percent(mostGrowth, 0)} est plus que ne donne aucun tissu ferme`;
}

function clothLeft(left: number, { small }: Tongue): string {
  return left > 0 ? `il ne reste que ${small(left)} de tissu` : 'il ne reste pas de tissu';
}

/** Behind “ne laisse”; if nothing is left, it says so: the hole cuts into what is beside it. */
function board(mm: number, { small }: Tongue): string {
  return mm > 0 ? `que ${small(mm)} de carton` : 'rien';
}

import type { GaugePhrases } from '../../../core/gauge/index.ts';
import type { Entries } from '../../catalogue.ts';
import { HALVES } from './sides.ts';

const tips = { front: 'La pointe avant', back: 'La pointe arrière' } as const;

/** Gauges of card: what is written on them, how to hold them, what is wrong with what was asked for. */
export const gauge: Entries<GaugePhrases> = {
  'gauge.ring': ({ level }, { inSentence }) => `Demi-anneau\u00a0: ${inSentence(level)}`,
  'gauge.profile': ({ side }) => `Vue de côté\u00a0: ${HALVES[side]}`,
  'gauge.tip': ({ side, from }, { small }) =>
    from === 0
      ? `${tips[side]} finit au milieu ${HALVES[side]}.`
      : `${tips[side]} finit ${small(from)} avant le milieu ${HALVES[side]}, là où le mannequin est le plus profond, pour qu’on puisse le présenter.`,
  'gauge.hold-ring': ({ level, height }, { inSentence, length }) =>
    `Le tenir à l’horizontale sur la ligne «\u00a0${inSentence(level)}\u00a0», ${length(height)} au-dessus du bord de la base tout autour.`,
  'gauge.hold-profile': 'Le tenir debout au milieu, son pied à hauteur du bord de la base.',
  'gauge.clearance': ({ clearance }, { small }) =>
    clearance === 0
      ? 'Juste quand il touche partout.'
      : `Juste quand il reste partout un jour de ${small(clearance)}.`,
  'gauge.height': ({ level, height }, { say, lengthAlone }) => `${say(level)}, ${lengthAlone(height)}`,
  'gauge.side-of-form': 'côté',
  'gauge.front-to-back': 'du devant au dos',
  'gauge.upright': 'debout',
  'gauge.unknown-level': ({ name, known }) =>
    `Il n’y a pas de gabarit «\u00a0${name}\u00a0». Il y a\u00a0: ${known.join(', ')}.`,
  'gauge.out-of-range': ({ option, value, least, most }, { exactLength }) =>
    option === 'clearance'
      ? `Les gabarits ne peuvent pas avoir un jour de ${exactLength(value)}\u00a0: indiquer de ${exactLength(least)} à ${exactLength(most)}.`
      : `Les gabarits ne peuvent pas avoir une bande de ${exactLength(value)}\u00a0: indiquer de ${exactLength(least)} à ${exactLength(most)}.`,
  'gauge.level-open': ({ level }, { say }) =>
    `Au niveau «\u00a0${say(level)}\u00a0», le mannequin n’a pas de contour qui se ferme autour de son milieu\u00a0: il n’y a donc pas de demi-anneau.`,
  'gauge.how.hold':
    'Tenir un demi-anneau à l’horizontale sur sa ligne, par le côté, une lampe derrière, et amener les pointes vers le devant et le dos aussi loin qu’elles vont d’elles-mêmes. Ne jamais appuyer. Puis l’autre moitié.',
  'gauge.how.wide': ({ gap, girth }, { small }) =>
    `Là où la lumière passe plus large que le jour prévu, le mannequin est plat\u00a0: pousser du rembourrage derrière cet endroit. ${small(gap)} de plus tout autour font ${small(girth)} de tour\u00a0: cette zone demande plus de rembourrage.`,
  'gauge.how.tight':
    'Là où il touche avant que les pointes soient en place, le mannequin est trop plein\u00a0: en repousser le rembourrage. S’il touche tout autour, en retirer.',
  'gauge.how.uneven':
    'S’il touche devant et dos et bâille sur les côtés, ou l’inverse, alors que le mètre ruban est juste\u00a0: c’est la forme, pas la quantité. Déplacer du rembourrage, ou changer les liens comme l’indique «\u00a0Contrôle\u00a0».',
  'gauge.how.side':
    'Les vues de côté se tiennent debout au milieu, le pied à hauteur du bord de la base. Leur jour dit de la poitrine, du ventre, des fesses et du dos ce que le mètre ruban ne peut pas dire.',
};

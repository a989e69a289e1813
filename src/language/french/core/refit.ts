import type { RefitPhrases } from '../../../core/refit/index.ts';
import type { Entries } from '../../catalogue.ts';
import { HALVES } from './sides.ts';

/** A form changed for a changed body, and one core for several people. */
export const refit: Entries<RefitPhrases> = {
  'pad.name': ({ number, half, layer }) => `Coussinet ${number}\u00a0: ${HALVES[half]}, couche ${layer}`,
  'pad.middle': ({ half }) => `milieu ${HALVES[half]}`,
  'pad.up': 'haut',
  'pad.place': ({ half, low, high, right, left }, { small }) =>
    `Il va de ${overWaist(low, small)} à ${overWaist(high, small)}\u202f; ${across(half, right, left, small)}.`,
  'pad.on-form': ({ wadding }, { small }) =>
    `En ouate de ${small(wadding)} d’épaisseur. Le poser sur le mannequin, lignes sur lignes, et fixer son bord à petits points.`,
  'pad.on-pad': ({ wadding, number }, { small }) =>
    `En ouate de ${small(wadding)} d’épaisseur. Le poser sur le coussinet ${number}, lignes sur lignes, et fixer son bord à petits points.`,
  'refit.wadding-out-of-range': ({ wadding, least, most }, { exactLength }) =>
    `Une ouate de ${exactLength(wadding)} ne convient pas\u00a0: indiquer de ${exactLength(least)} à ${exactLength(most)}.`,
  'refit.pads': ({ layers, thickness }, { small }) =>
    `coussinet\u00a0: ${layers} ${layers === 1 ? 'couche' : 'couches'}, ${small(thickness)} au plus épais`,
  'refit.take-in': ({ letters, each, girth }, { small, length }) =>
    `reprendre ${letters.length === 1 ? 'la couture' : 'les coutures'} ${letters.join(', ')} de ${small(each)} sur chaque épaisseur, après avoir décousu les cloisons voisines\u00a0: ${length(girth)} de tour ensuite`,
  'refit.stays-full': ({ by }, { small }) =>
    `repousser du rembourrage\u202f; il peut rester ${small(by)} de trop, qu’aucune couture ne reprend`,
  'refit.anew': ({ why, measured, limit }, { small }) =>
    `mieux vaut refaire\u00a0: ${reasons[why]} ${small(measured)}, et ${small(limit)} au plus sont possibles`,
  'refit.nothing': 'va tel quel',
  'refit.above': 'Épaules',
  'refit.verdict': ({ isAnew }) =>
    isAnew
      ? 'Faire un nouveau mannequin\u00a0: à un endroit le corps a changé plus que coussinets et coutures ne peuvent suivre.'
      : 'Le mannequin peut être adapté à ce corps.',
  'refit.cover': ({ project }) => `${project}, nouvelle housse`,
  'core.too-few': ({ count }) =>
    `Un noyau se fait pour deux personnes ou plus\u202f; vous en indiquez ${count}.`,
  'core.name': ({ names }) => `Noyau ${ofName(names.join(', '))}`,
  'core.sticks-out': ({ name, by, height, limit, isRefused }, { small, length }) =>
    `Le noyau dépasse du corps ${ofName(name)} de ${small(by)}, ${length(Math.abs(height))} ${height < 0 ? 'au-dessous' : 'au-dessus'} de la taille\u202f; ${isRefused ? `${small(limit)} au plus sont possibles` : `jusqu’à ${small(limit)}, cela ne se remarquerait pas`}. Moins de personnes, ou des personnes plus semblables, donnent un meilleur noyau.`,
  'core.verdict': ({ name, isAnew }) =>
    isAnew
      ? `Ce noyau ne convient pas à ${name}\u00a0: faire un mannequin à part, ou un noyau pour les autres seulement.`
      : `Coussinets et housse font de ce noyau le corps ${ofName(name)}.`,
  'core.smaller': ({ tapes }, { inSentence, small }) =>
    `Pour tenir dans tous les corps, le noyau est plus petit que le plus petit d’entre eux\u00a0: ${tapes.map(({ name, under }) => `${inSentence(name)} de ${small(under)}`).join(', ')}. Tous portent des coussinets à ces endroits. Des personnes plus semblables en demandent moins.`,
};

const reasons = {
  'too-thick': 'les coussinets auraient',
  'too-much-to-take-in': 'chaque couture serait reprise de',
  'too-full': 'le mannequin est trop plein de',
} as const;

/** `d’Anna`, `de Marie`. */
function ofName(name: string): string {
  return /^[aeiouàâæéèêëîïôœùûü]/iu.test(name) ? `d’${name}` : `de ${name}`;
}

type Small = (mm: number) => string;

function overWaist(height: number, small: Small): string {
  return `${small(Math.abs(height))} ${height < 0 ? 'au-dessous' : 'au-dessus'} de la taille`;
}

/** Over the centre, or on one side: an end beyond the centre is given as negative. */
function across(half: 'front' | 'back', right: number, left: number, small: Small): string {
  const middle = `milieu ${HALVES[half]}`;
  if (right >= 0 && left >= 0)
    return `du ${middle}, ${small(right)} vers la droite et ${small(left)} vers la gauche de la personne`;
  const [side, near, far] = right < 0 ? ['gauche', right, left] : ['droite', left, right];
  return `à ${side} du ${middle}, vu de la personne, de ${small(near)} à ${small(far)}`;
}

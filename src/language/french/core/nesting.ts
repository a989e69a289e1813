import type { NestingPhrases } from '../../../core/nesting/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Pieces laid on cloth, card or board. */
export const nesting: Entries<NestingPhrases> = {
  'nesting.item-not-finite': ({ item }) =>
    `Rien ne peut être placé\u00a0: ${item} n’a pas de contour, ou il y manque un nombre.`,
  'nesting.item-crosses-itself': ({ item }) =>
    `Rien ne peut être placé\u00a0: le contour de ${item} se croise ou se touche lui-même.`,
  'nesting.item-without-turn': ({ item }) =>
    `Placement impossible pour ${item}\u00a0: aucun sens de pose n’est permis.`,
  'nesting.strip-without-width': ({ width }, { exactLength }) =>
    `Rien ne peut être placé sur un tissu de ${exactLength(width)} de large\u00a0: indiquer une largeur au-dessus de 0.`,
  'nesting.gap-negative': ({ gap }, { exactLength }) =>
    `Rien ne peut être placé avec ${exactLength(gap)} entre les pièces\u00a0: indiquer 0 ou plus.`,
  'nesting.sheet-not-finite': ({ sheet }) =>
    `Rien ne peut être placé\u00a0: la feuille ${sheet} n’a pas de contour, ou il manque un nombre à elle ou à ses défauts.`,
  'nesting.sheet-crosses-itself': ({ sheet }) =>
    `Rien ne peut être placé sur la feuille ${sheet}\u00a0: son contour se croise ou se touche lui-même.`,
  'nesting.flaw-not-finite': ({ flaw }) =>
    `Rien ne peut être placé\u00a0: le défaut ${flaw} n’a pas de contour, ou il y manque un nombre.`,
  'nesting.item-too-wide': ({ item, needed, width }, { length }) =>
    `Le tissu est trop étroit pour ${item}\u00a0: dans les sens permis il en faut ${length(needed)}, et il y en a ${length(width)}.`,
  'nesting.item-too-large': ({ item, length: long, height }, { length }) =>
    `Aucune feuille ne convient à ${item} dans les sens permis\u00a0: il faut ${length(long)} sur ${length(height)}.`,
  'nesting.no-room': ({ items, area }, { plain }) =>
    `Pas de place trouvée pour ${items.join(', ')}\u00a0: il manque au moins ${plain(area / 100, 0)} cm², en une feuille de plus.`,
};

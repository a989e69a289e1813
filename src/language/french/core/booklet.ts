import type { BookletColumn, BookletPart, BookletPhrases, PictureKey } from '../../../core/booklet/index.ts';
import type { Entries } from '../../catalogue.ts';

const PARTS: Readonly<Record<BookletPart, string>> = {
  buy: 'À acheter',
  lays: 'Placement des pièces sur tissu et carton',
  work: 'Ordre de travail',
  readings: 'Rembourrage et relevés',
};

const COLUMNS: Readonly<Record<BookletColumn, string>> = {
  level: 'niveau',
  girth: 'tour',
  width: 'largeur',
  depth: 'profondeur',
  read: 'relevé',
  zone: 'zone',
  filling: 'rembourrage',
  weighed: 'poids mis',
};

const KEYS: Readonly<Record<PictureKey, string>> = {
  right: 'endroit du tissu, la face visible',
  wrong: 'envers du tissu, la face intérieure',
  web: 'cloisons, liens et sangles à l’intérieur\u202f; au rembourrage\u00a0: ce qui est plein',
  bold: 'ce qui est cousu ou mesuré à cette étape',
  level:
    'ligne de niveau, tout autour là où un tour est mesuré\u202f; fine et continue sur les pièces à plat',
  dotted: 'ce qui se rejoint\u202f; sur les images en coupe, le contour de ce qui est omis',
};

/** What goes with the order of work in the booklet. */
export const booklet: Entries<BookletPhrases> = {
  'booklet.title': ({ project }) => `${project}\u00a0: livret`,
  'booklet.how':
    'À poser près de la machine. Cocher une case quand son étape est faite, et écrire ce qui est mesuré sur la ligne derrière son chiffre.',
  'booklet.print-how': ({ kind }) =>
    kind === 'a5'
      ? 'Pages A5\u00a0: les imprimer sur du papier A5, ou deux par feuille A4 avec le réglage livret de l’imprimante. Dans les deux cas en vraie grandeur.'
      : 'Deux pages par face, dans l’ordre du pliage\u00a0: imprimer en vraie grandeur sur les deux faces du papier, retourné par le petit côté. Empiler les feuilles comme elles viennent, les plier au milieu, et coudre sur le pli à longs points, ou agrafer.',
  'booklet.part': ({ part, page }) => `${PARTS[part]}\u00a0: page ${page}`,
  'booklet.key-title': 'Dans les images',
  'booklet.key': ({ of }) => KEYS[of],
  'booklet.key-side':
    'L’enveloppe est dessinée sur l’endroit, même là où elle se coud sur l’envers\u00a0: la droite reste ainsi la droite.',
  'booklet.foot': ({ project, page, pages }) => `${project} · page ${page} sur ${pages}`,
  'booklet.readings': 'Rembourrage et relevés',
  'booklet.readings-how': ({ above }, { small }) =>
    `Un tour peut être trop grand de ${small(above)}, jamais trop petit. Un niveau se juge quand les zones au-dessus et au-dessous sont pleines\u00a0: pendant le rembourrage, après un jour, après une semaine, et avant chaque nouveau vêtement.`,
  'booklet.zones-how': ({ isAssumed, low, high }) =>
    isAssumed
      ? `Ce que prend chaque zone, si un litre contient de ${low} à ${high} g (une supposition)\u00a0: à corriger d’après ce que vous avez pesé dans le boudin d’essai\u202f; noter ce qui a été mis.`
      : 'Ce que prend chaque zone, d’après ce que vous avez pesé dans le boudin d’essai. Noter ce qui a été mis.',
  'booklet.column': ({ of }) => COLUMNS[of],
  'booklet.length': ({ length }, { fineLength }) => fineLength(length),
  'booklet.mass': ({ from, to }, { mass }) => `${mass(from)} – ${mass(to)}`,
};

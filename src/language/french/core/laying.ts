import type { LayingPhrases, UseId } from '../../../core/laying/index.ts';
import { amountToBuy } from '../../amount-to-buy.ts';
import type { Entries } from '../../catalogue.ts';
import { inYards } from '../../yards.ts';

/** With its article. */
const stocks: Readonly<Record<UseId, string>> = {
  shell: 'le tissu de l’enveloppe',
  interfacing: 'l’entoilage',
  lining: 'la doublure',
  trial: 'le tissu de l’enveloppe d’essai',
  webs: 'le tissu des cloisons',
  covers: 'le tissu des housses',
  arms: 'le tissu des bras',
  'test-tube': 'le tissu du boudin d’essai',
  card: 'le carton',
  foam: 'la mousse',
};

const named = (use: UseId): string => stocks[use].charAt(0).toUpperCase() + stocks[use].slice(1);

/** What is said of pieces laid on cloth and boards. */
export const laying: Entries<LayingPhrases> = {
  'use.shell': 'Enveloppe',
  'use.interfacing': 'Entoilage',
  'use.lining': 'Doublure',
  'use.trial': 'Enveloppe d’essai',
  'use.webs': 'Cloisons, liens et fourreau',
  'use.covers': 'Housses des plaques',
  'use.arms': 'Bras',
  'use.test-tube': 'Boudin d’essai',
  'use.card': 'Carton pour les plaques',
  'use.foam': 'Mousse pour le bloc de cou',

  'laying.too-narrow': ({ use, piece, width, needed }, { say, length }) =>
    `${named(use)} fait ${length(width)} de large, c’est trop peu pour «\u00a0${say(piece)}\u00a0». Il en faut au moins ${length(needed)}, lisières comprises.`,
  'laying.too-large': ({ use, piece, length: long, width }, { say, length }) =>
    `${named(use)}\u00a0: aucun morceau, aucune feuille ne suffit à «\u00a0${say(piece)}\u00a0». Il faut au moins ${length(long)} en longueur sur ${length(width)} en travers.`,
  'laying.crosses-itself': ({ use, number }) =>
    `${named(use)}\u00a0: le contour du morceau ${number} se croise ou n’entoure rien. Placer ses coins dans l’ordre, en un seul tour.`,
  'laying.no-room': ({ use, pieces, area }, { say, fixed }) =>
    `${named(use)}\u00a0: pas de place trouvée pour ${pieces.map((piece) => `«\u00a0${say(piece)}\u00a0»`).join(', ')}. Il faut au moins ${fixed(area / 100, 0)} cm²\u00a0: ajouter un morceau ou une feuille, ou permettre la pose des pièces dans les deux sens.`,
  'laying.print-gap': ({ seam, level, pieces, along, across }, { say, inSentence, small }) =>
    `Couture ${seam}, ${pieces.map((piece) => `«\u00a0${say(piece)}\u00a0»`).join(' sur ')}\u00a0: au niveau «\u00a0${inSentence(level)}\u00a0», le motif ne peut pas se raccorder. Il est décalé de ${small(along)} dans le droit-fil et de ${small(across)} en travers.`,
  'laying.print-on-fold': ({ use }) =>
    `${named(use)} est en double, et personne ne voit où tombe le motif sur l’épaisseur du dessous. Poser en simple pour raccorder le motif aux coutures.`,

  'lay.title': ({ project }) => `Plans de placement – ${project}`,
  'lay.roll': ({ length: used, width, wasted }, { length, percent }) =>
    `Demande ${length(used)} de tissu en ${length(width)} de large\u202f; ${percent(wasted, 0)} de chutes.`,
  'lay.sheets': ({ sheets, length: long, width, wasted }, { length, percent }) =>
    `${sheets === 1 ? '1 feuille' : `${sheets} feuilles`} de ${length(long)} × ${length(width)}\u202f; ${percent(wasted, 0)} de reste.`,
  'lay.own': ({ sheets, wasted }, { percent }) =>
    `${sheets === 1 ? '1 morceau' : `${sheets} morceaux`} de ce qu’on a sous la main\u202f; ${percent(wasted, 0)} de reste.`,
  'lay.buy': ({ metric, yards, shrinkage }, { fixed, percent }) =>
    `Acheter ${fixed(metric / 1000, 2)} m, ou ${inYards(yards)} yd${shrinkage > 0 ? `\u00a0: ${percent(shrinkage, 0)} peuvent se perdre au lavage` : ''}.`,
  'lay.scale': ({ scale }) => `Échelle 1 pour ${scale}.`,
  'lay.how': ({ ways }) =>
    ways === 'one'
      ? 'Endroit dessus, en simple\u202f; toutes les flèches vont vers le même bout du tissu.'
      : 'Endroit dessus, en simple\u202f; les flèches peuvent aller vers l’un ou l’autre bout.',
  'lay.folded': ({ single }, { say }) =>
    `Plier le tissu dans sa longueur, endroit dehors, et couper à travers les deux épaisseurs\u00a0: une droite et une gauche à la fois.${single.length > 0 ? ` Dans l’épaisseur du dessus seulement\u00a0: ${single.map(say).join(', ')}.` : ''}`,
  'lay.shared-lines': 'Là où deux pièces se touchent, une seule coupe les sépare.',
  'lay.print': ({ along, across, level }, { inSentence, length }) =>
    `Motif\u00a0: un rapport mesure ${along > 0 ? `${length(along)} en longueur` : ''}${along > 0 && across > 0 ? ', ' : ''}${across > 0 ? `${length(across)} en travers` : ''}. Il se raccorde aux coutures au niveau «\u00a0${inSentence(level)}\u00a0»\u202f; y épingler d’abord les pièces voisines.`,
  'lay.sheet': ({ number }) => `Feuille ${number}`,
  'lay.number': ({ number, piece }, { say }) => `${number}  ${say(piece)}`,
  'lay.left': ({ pieces }, { say }) => `Pas placé, faute de place\u00a0: ${pieces.map(say).join(', ')}.`,

  'lay.to-buy.title': ({ project }) => `${project} – à acheter`,
  'lay.to-buy.heading': 'À acheter',
  'lay.to-buy.amount': ({ quantity, unit }, tongue) => amountToBuy(quantity, unit, tongue, '×'),
  'lay.to-buy.cloth': ({ note, width, yards, wasted }, { say, length, percent }) =>
    `${inYards(yards)} yd en ${length(width)} de large, comme sur le plan (${percent(wasted, 0)} de chutes)${after(say(note))}`,
  'lay.to-buy.interfacing': ({ note, width, yards }, { say, length }) =>
    `${inYards(yards)} yd en ${length(width)} de large, pour toute la longueur de placement du tissu de l’enveloppe${after(say(note))}`,
  'lay.to-buy.sheets': ({ note, length: long, width }, { say, length }) =>
    `feuilles de ${length(long)} × ${length(width)}, comme sur le plan${after(say(note))}`,
};

function after(note: string): string {
  return note === '' ? '' : `\u202f; ${note}`;
}

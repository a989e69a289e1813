import { mmPerInch } from '../../../core/base/index.ts';
import type { PatternPhrases } from '../../../core/pattern/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';
import { joinNames } from '../../join-names.ts';

const sides = { right: 'côté droit du corps', left: 'côté gauche du corps', centre: 'milieu' } as const;

const cutTwins = {
  mirrored: 'couper une droite et une gauche, endroit dessus :\nla droite telle quelle, la gauche retournée',
  alike: 'couper 2 pièces pareilles, endroit dessus :\nune droite et une gauche',
} as const;

/** What stands on pieces and is wrong with them. */
export const pattern: Entries<PatternPhrases> = {
  'material.shell': 'tissu extérieur',
  'material.webs': 'tissu des cloisons',
  'material.arms': 'tissu extérieur (bras)',
  'material.covers': 'tissu des housses',
  'material.card': 'carton',
  'material.foam': 'mousse',
  'material.test-tube': 'tissu extérieur, avant le reste',
  'material.trial': 'tissu bon marché, pour l’essayage',
  'material.gauge': 'carton rigide',
  'material.wadding': 'ouate',
  'material.shell.short': 'enveloppe',
  'material.webs.short': 'cloisons',
  'material.arms.short': 'bras',
  'material.covers.short': 'housses',
  'material.card.short': 'carton',
  'material.foam.short': 'mousse',
  'material.test-tube.short': 'boudin',
  'material.trial.short': 'essai',
  'material.gauge.short': 'gabarits',
  'material.wadding.short': 'coussinets',
  'side.right': sides.right,
  'side.left': sides.left,
  'side.centre': sides.centre,
  'side.right.short': 'droite',
  'side.left.short': 'gauche',
  'side.centre.short': 'milieu',
  'edge.base': 'base',
  'edge.neck': 'cou',
  'edge.armhole': 'emmanchure',
  'edge.wrist': 'poignet',
  'edge.top': 'haut',
  'edge.bottom': 'bas',
  'edge.side': 'côté',
  'edge.sleeve': 'fourreau',
  'edge.foot': 'pied',
  'edge.lid': 'couvercle',
  'edge.front': 'devant',
  'edge.back': 'dos',
  'edge.left': 'gauche',
  'edge.right': 'droite',
  'edge.up': 'haut',
  'edge.down': 'bas',
  'edge.outer': 'extérieur',
  'edge.inner': 'intérieur',
  'edge.base plate': 'plaque de base',
  'edge.neck plate': 'plaque d’encolure',
  'edge.shoulder seam': 'couture d’épaule',
  'allowance.shoulder': 'Coutures d’épaule',
  'allowance.side': 'Coutures de côté',
  'allowance.closing': 'Couture de fermeture, d’ordinaire au milieu dos',
  'allowance.armhole': 'Bords des emmanchures',
  'allowance.neck': 'Bord supérieur du cou',
  'allowance.base': 'Bord de la base',
  'allowance.wrist': 'Bords des poignets',
  'allowance.web': 'Bords des cloisons',
  'allowance.tie': 'Bouts des liens et des sangles',
  'allowance.cover': 'Housses des plaques',

  'piece.grain': 'droit-fil',
  'piece.side-and-cut': ({ side }) => `${sides[side]} · couper 1 fois, endroit dessus`,
  'piece.side-and-cut-short': ({ side }) => `${sides[side]} · couper 1 fois`,
  'piece.cut': 'couper 1 fois, endroit dessus',
  'piece.cut-twins': ({ kind }) => cutTwins[kind],
  'piece.cut-twins-short': '1 droite, 1 gauche',
  'piece.letters-of-twins': 'lettres : droite/gauche',
  'piece.both': ({ names }, { say }) => names.map(say).reduce(joinNames),
  'piece.revision': ({ revision }) => `version ${revision}`,
  'piece.allowance': ({ allowance }, tongue) => `Marge ${allowanceInWords(allowance, tongue)}`,
  'piece.no-allowance': 'Sans marge : couper sur la ligne',
  'piece.allowance-of': ({ edges, allowance }, tongue) =>
    `à ${edges.map(tongue.say).join(', ')} : ${allowanceInWords(allowance, tongue)}`,
  'piece.edge-middle': ({ edge }, { say }) => `milieu ${say(edge)}`,
  'piece.edge-mark': ({ edge, number }, { say }) => `${say(edge)} ${number}`,
  'piece.sheet': ({ project, material }, { say }) => `${project} – ${say(material)}`,
  'piece.sheet-of-all': 'Pièces',
  'test-bars.how': ({ width, height }, { fixed }) =>
    [
      'À mesurer avant de couper :',
      'carré de 100 mm',
      `Dessin ${fixed(width, 1)} × ${fixed(height, 1)} mm`,
      `= ${fixed(width / mmPerInch, 2)} × ${fixed(height / mmPerInch, 2)} in`,
      'Si un trait s’écarte de plus de',
      '0,5 mm, imprimer ou importer',
      'de nouveau à 100 %.',
    ].join('\n'),

  'piece.allowance-out-of-range': ({ allowance, smallest, largest }, { exactLength }) =>
    `Une marge de couture de ${exactLength(allowance)} ne convient pas : donner de ${exactLength(smallest)} à ${exactLength(largest)} (une ouverture peut aussi avoir 0).`,
  'piece.crosses-itself': ({ piece, times }, { say }) =>
    `La pièce « ${say(piece)} » se recouvre elle-même : son contour se croise ${times} fois.`,
  'piece.without-area': ({ piece, area, least }, { say, fixed }) =>
    `La pièce « ${say(piece)} » n’a presque pas de surface : ${fixed(area, 1)} mm² ; il en faut au moins ${least} mm².`,
  'piece.inside-out': ({ piece }, { say }) =>
    `La pièce « ${say(piece)} » est sortie en miroir : son contour tourne dans le sens des aiguilles d’une montre.`,
  'piece.covered-by-allowance': ({ piece, overlap }, { say, small }) =>
    `La pièce « ${say(piece)} » est trop étroite : ses marges repliées la couvriraient et se chevaucheraient de ${small(overlap)} au plus large. Prendre une marge plus petite ou moins de panneaux.`,
  'piece.hollow-closed': ({ piece, area }, { say, fixed }) =>
    `Sur la pièce « ${say(piece)} », la marge se rejoint par-dessus un creux du contour et laisse un trou de ${fixed(area, 0)} mm². Y prendre une marge plus petite.`,
  'piece.allowances-overlap': ({ piece, length }, { say, small }) =>
    `Sur la pièce « ${say(piece)} », les marges des deux côtés d’un creux se chevauchent sur ${small(length)} : y cranter entre les lignes de couture, ou prendre une marge plus petite.`,
  'piece.no-room-for-notes': ({ piece }, { say }) =>
    `Pas de place pour les indications sur la pièce « ${say(piece)} ».`,
  'piece.no-room-for-notch': ({ piece, notch }, { say }) =>
    `Pas de place pour le nom du cran ${say(notch)} sur la pièce « ${say(piece)} ».`,
  'piece.no-room-for-letter': ({ piece, edge }, { say }) =>
    `Pas de place pour « ${say(edge)} » le long de son bord sur la pièce « ${say(piece)} ».`,
  'piece.no-room-for-level': ({ piece, level }, { say }) =>
    `Pas de place pour le nom du niveau « ${say(level)} » sur la pièce « ${say(piece)} ».`,
  'piece.no-room-for-label': ({ piece }, { say }) =>
    `Pas de place pour l’étiquette ; écrire le nom à la main sur la pièce « ${say(piece)} ».`,
  'piece.label-shortened': ({ piece }, { say }) =>
    `Seule une étiquette courte tient sur la pièce « ${say(piece)} ».`,
  'piece.grain-line-short': ({ piece, wanted, found }, { say, small }) =>
    `La ligne de droit-fil devrait faire ${small(wanted)} ; il n’y a que ${small(found)} sur la pièce « ${say(piece)} ».`,
  'piece.sheet-width': ({ width, least, most }, { exactLength }) =>
    `Une feuille large de ${exactLength(width)} ne convient pas : donner de ${exactLength(least)} à ${exactLength(most)}.`,
  'piece.gap': ({ gap, least, most }, { exactLength }) =>
    `Un écart de ${exactLength(gap)} entre les pièces ne convient pas : donner de ${exactLength(least)} à ${exactLength(most)}.`,
  'piece.wider-than-sheet': ({ piece, width, sheet, usable }, { say, small, exactLength }) =>
    `La pièce « ${say(piece)} » fait ${small(width)} de large avec ses marges ; sur une feuille de ${exactLength(sheet)}, ${exactLength(usable)} seulement sont utilisables.`,
  'test-bars.wider-than-sheet': ({ width, sheet, usable }, { small, exactLength }) =>
    `Les traits de contrôle demandent ${small(width)} de large ; sur une feuille de ${exactLength(sheet)}, ${exactLength(usable)} seulement sont utilisables.`,
};

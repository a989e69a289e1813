import { mmPerInch, type Phrase, type Say } from '../../../core/base/index.ts';
import type { SheetPhrases } from '../../../core/sheet/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';
import { ruled } from '../../ruled.ts';

const sides = { right: 'côté droit du corps', left: 'côté gauche du corps', centre: 'milieu' } as const;
const ways = { across: 'en largeur', up: 'en hauteur' } as const;
const machineLengths = {
  bladeOffset: 'Un décalage de lame',
  overcut: 'Un dépassement de coupe',
  kerf: 'Une largeur de trait de coupe',
} as const;

const join = {
  overlap:
    '3. On n’assemble que les pages qui ont des losanges sur une ligne. Couper le bord de la page du haut ou de gauche sur cette ligne et le poser sur la bande de sa voisine, pour que les deux moitiés de chaque losange se ferment ; les numéros égaux se rejoignent. Coller à plat.',
  butt: '3. On n’assemble que les pages qui ont des losanges sur une ligne. Couper les deux pages sur cette ligne, les mettre bord à bord, pour que les deux moitiés de chaque losange se ferment ; les numéros égaux se rejoignent. Coller à plat.',
} as const;

const cutTwins = { mirrored: 'couper une droite et une gauche', alike: 'couper 2 pièces pareilles' } as const;

function pagesInWords(names: readonly string[]): string {
  if (names.length === 0) return 'sur aucune page';
  return names.length === 1 ? `page ${names[0]}` : `pages ${names.join(', ')}`;
}

const edges = {
  left: 'bord gauche',
  right: 'bord droit',
  bottom: 'bord inférieur',
  top: 'bord supérieur',
} as const;

const projectedLines = {
  cut: 'couper ici',
  notch: 'crans',
  sew: 'coutures',
  level: 'niveaux et lignes',
  grain: 'droit-fil',
} as const;
const projected = {
  top: 'Le côté supérieur',
  right: 'Le côté droit',
  bottom: 'Le côté inférieur',
  left: 'Le côté gauche',
  diagonal: 'La diagonale',
} as const;

interface Head {
  readonly piece: Phrase;
  readonly material: Phrase;
  readonly count: number;
  readonly areSides: boolean;
}

function headOf({ piece, material, count, areSides }: Head, say: Say): string {
  return `${say(piece)} · couper ${areSides ? 'une droite et une gauche' : `${count} fois`} · ${say(material)}`;
}

/** What stands on printed pages, and what is wrong with paper, printer and cutting machine. */
export const sheet: Entries<SheetPhrases> = {
  'paper.a4': 'A4',
  'paper.letter': 'Letter',
  'paper.both': 'A4 ou Letter',
  'paper.a3': 'A3',
  'paper.ledger': 'Tabloid (11 × 17 pouces)',
  'paper.a0': 'A0',
  'paper.roll24': 'Rouleau 24 pouces',
  'paper.roll36': 'Rouleau 36 pouces',
  'paper.mat12x12': 'Tapis 12 × 12 pouces',
  'paper.mat12x24': 'Tapis 12 × 24 pouces',
  'paper.mat18x24': 'Tapis 18 × 24 pouces',
  'paper.mat24x36': 'Tapis 24 × 36 pouces',

  'cover.title': ({ project }) => `Première page – ${project}`,
  'cover.true-size': ({ paper }, { say }) =>
    `Pour ${say(paper)} : imprimer à 100 % (taille réelle), jamais « ajuster » ni « réduire ».`,
  'cover.corrected': ({ across, up }, { fixed }) =>
    `Corrigé pour une imprimante : ${fixed(100 * across, 2)} % en largeur, ${fixed(100 * up, 2)} % en hauteur.`,
  'cover.bar': ({ length, way }, { plain, fixed }) =>
    `${plain(length / 10, 1)} cm = ${fixed(length / mmPerInch, 3)} in ${ways[way]}`,
  'cover.square': [
    'Le carré fait 10 cm de côté,',
    'les traits à côté 4 in.',
    '',
    'Le mesurer, et les deux longs',
    'traits, avant d’imprimer le reste.',
    'Ils peuvent s’écarter de 0,5 mm,',
    'pas plus.',
  ].join('\n'),
  'cover.if-off': ({ across, up }) =>
    `1. Si un long trait ne fait pas ${across} mm en largeur et ${up} mm en hauteur, refaire les pages à partir des deux longueurs mesurées (correction de l’impression) ; cela rattrape une imprimante inexacte dans les deux sens.`,
  'cover.print-the-rest': ({ pages }) =>
    `2. Imprimer les autres pages de la même façon (${pages === 1 ? '1 page' : `${pages} pages`} de patron et un plan qui montre où va chacune). Les pièces droite et gauche qui sont pareilles ne sont dessinées qu’une fois : couper une droite et une gauche. Ce que règle et compas suffisent à tracer est sur la feuille de cotes.`,
  'cover.join': ({ joint }) => join[joint],
  'cover.measure-joints':
    '4. Avant de couper, mesurer de croix en croix par-dessus les jonctions : la distance est imprimée à côté des croix. Elle peut s’écarter de 1 mm.',
  'cover.lines':
    'Couper sur le trait plein ; le trait en tirets est la couture. Les petites entailles (ou pointes) au bord sont des crans. Les crans de même lettre et de même numéro se rejoignent ; dans F3/G3, le premier vaut pour la pièce droite, le second pour la gauche. Ils sont simples dans les coutures du devant, doubles dans le dos, triples au milieu dos.',
  'cover.clips':
    'Les traits courts qui s’arrêtent avant la couture montrent où cranter la marge après la couture : pas plus près des points qu’ils ne vont.',
  'cover.blades':
    'Lames : couper en s’éloignant des mains et refermer le cutter rotatif chaque fois que vous le posez.',
  'key.title': ({ project }) => `Plan des pages – ${project}`,
  'key.title-continued': ({ project }) => `Plan des pages, suite – ${project}`,
  'key.heading': 'Plan des pages',
  'key.heading-continued': 'Plan des pages, suite',
  'key.count': ({ pages, project }) => `${pages < 2 ? `${pages} page` : `${pages} pages`} : ${project}`,
  'key.told': ({ pieces }) =>
    `${pieces < 2 ? `${pieces} autre pièce ne demande` : `${pieces} autres pièces ne demandent`} pas de page : voir la feuille de cotes`,
  'key.row': ({ piece, side, material, pages, twins }, { say }) =>
    `${say(piece)} · ${twins ? cutTwins[twins] : `${sides[side]} · couper 1 fois`} · ${say(material)} · ${pagesInWords(pages)}`,
  'take-care.title': ({ project }) => `Attention – ${project}`,
  'take-care.heading': 'Attention',
  'take-care.heading-continued': 'Attention, suite',
  'numbers.title': ({ project }) => `Feuille de cotes – ${project}`,
  'numbers.heading': 'Feuille de cotes : pièces sans page',
  'numbers.heading-continued': 'Feuille de cotes, suite',
  'numbers.how':
    'Ces pièces se coupent d’après une autre pièce, ou se tracent directement sur le tissu ou le carton à la règle et au compas : les croquis ne sont pas à l’échelle. Le droit-fil, ou les cannelures du carton, montent le long de la feuille ; couper le tissu endroit dessus.',
  'numbers.piece': (head, { say }) => headOf(head, say),
  'numbers.layer': ({ of, hasLine, ...head }, { say }) =>
    `${headOf(head, say)} · d’après ${hasLine ? 'la ligne de la couche 2 sur' : 'le contour de'} « ${say(of)} », les cannelures en travers de celles de la couche 1`,
  'numbers.cover': ({ of, allowance, hasHoles, ...head }, tongue) =>
    `${headOf(head, tongue.say)} · décalquer la couche 1 de « ${tongue.say(of)} » avec ${allowanceInWords(allowance, tongue)} de marge tout autour${hasHoles ? ` ; décalquer aussi les trous pour le tube, le rembourrage, les languettes ou la cheville, couper chacun en étoile du milieu jusqu’à ${tongue.small(1)} de la ligne, une fente le long de son milieu, et rentrer les pointes` : ''}`,
  'numbers.length': ({ length, unit }, tongue) => ruled(length, unit, tongue),
  'numbers.rectangle': ({ width, height, unit }, tongue) =>
    `rectangle, couper ${ruled(width, unit, tongue)} de large, ${ruled(height, unit, tongue)} de haut`,
  'numbers.circle': ({ diameter, unit }, tongue) =>
    `cercle, couper ${ruled(diameter, unit, tongue)} de diamètre ; compas ouvert à ${ruled(diameter / 2, unit, tongue)}`,
  'numbers.no-allowance': 'sans marge',
  'numbers.allowance': ({ allowance }, tongue) =>
    `avec ${allowanceInWords(allowance, tongue)} de marge tout autour`,
  'numbers.allowances': ({ left, right, bottom, top, unit }, tongue) =>
    `avec marge : à gauche ${ruled(left, unit, tongue)}, à droite ${ruled(right, unit, tongue)}, en bas ${ruled(bottom, unit, tongue)}, en haut ${ruled(top, unit, tongue)}`,
  'numbers.side': ({ side, edge, notches, unit }, tongue) => {
    const places = notches.map(({ name, at }) => `${name} à ${ruled(at, unit, tongue)}`).join(' ; ');
    const from = side === 'left' || side === 'right' ? 'depuis le bas' : 'depuis la gauche';
    return `${edges[side]} : ${tongue.say(edge)}${notches.length > 0 ? ` ; ${notches.length > 1 ? 'crans' : 'cran'}, ${from} : ${places}` : ''}`;
  },
  'numbers.notch-round': ({ name, hour }) => `cran ${name} à ${hour} h, comme sur un cadran`,
  'numbers.line': ({ line, isUpright, at, spans: parts, unit }, tongue) => {
    const name = tongue.say(line) || 'ligne';
    const a = ruled(at, unit, tongue);
    const spans = parts
      .map(({ from, to }) => `${ruled(from, unit, tongue)} – ${ruled(to, unit, tongue)}`)
      .join(', ');
    return isUpright
      ? `${name} : verticale, à ${a} de la gauche, hauteur ${spans}`
      : `${name} : horizontale, à ${a} de haut, ${spans} depuis la gauche`;
  },
  'projector.how': ({ side, square, unit }, tongue) =>
    `Carré de ${ruled(side, unit, tongue)}, en carrés de ${ruled(square, unit, tongue)}\nMesurer sur la table ses quatre côtés et la diagonale en tirets.\nS’ils ne sont pas justes : déplacer le projecteur, ou les saisir et refaire ce fichier.\nLe droit-fil monte. Ne pas regarder dans l’objectif.`,
  'projector.frames': ({ side, unit, pages }, tongue) =>
    `Dessiné pour le carré que vous avez mesuré : il fait maintenant ${ruled(side, unit, tongue)} de chaque côté.\nLe mesurer encore une fois. Puis montrer ${pages === 1 ? 'la page suivante' : `les ${pages} pages suivantes`} avec le même zoom, leurs quatre croix là où sont ses coins : ne pas faire défiler, ne pas déplacer le projecteur.`,
  'projector.line': ({ kind }) => projectedLines[kind],
  'projector.far-off': ({ line, length, wanted, largest }, { plain, exactLength }) =>
    `${projected[line]} du carré projeté mesure ${exactLength(length)} au lieu de ${exactLength(wanted)} : plus de ${plain(100 * largest, 0)} % ne peuvent pas être corrigés. Régler d’abord le projecteur sur la taille du carré.`,
  'projector.no-square': ({ diagonal }, { exactLength }) =>
    `Aucun carré ne donne ces longueurs : avec une diagonale de ${exactLength(diagonal)}, les quatre côtés ne se rejoignent pas. Mesurer de nouveau, la diagonale du haut à gauche au bas à droite.`,
  'numbers.layer-line': 'couche 2 : couper ici',
  'labels.title': ({ project }) => `Étiquettes – ${project}`,
  'labels.how': 'Étiquettes à coudre : couper sur les traits pleins, replier sur les traits en tirets.',
  'labels.count': ({ pieces }) => (pieces < 2 ? `${pieces} pièce` : `${pieces} pièces`),

  'joint.glue': ({ page }) => `coller ici · ${page} se pose sur cette bande, jusqu’à la ligne`,
  'joint.glue-short': ({ page }) => `${page} se pose sur cette bande`,
  'joint.lay-on': ({ page }) => `couper sur la ligne · poser ce bord sur ${page}`,
  'joint.edge-to-edge': ({ page }) => `couper sur la ligne · ${page} vient bord à bord`,
  'joint.to-cross': ({ page }) => `assemblé, à la croix ${page} :`,
  'joint.to-cross-of-page': ({ page }) => `à la croix sur ${page} :`,
  'joint.cross-distance': ({ length }, { fixed }) => `${length} mm = ${fixed(length / mmPerInch, 2)} in`,
  'page.name': ({ number }) => `page ${number}`,
  'page.number': ({ number, pages }) => `page ${number} sur ${pages}`,

  'paper.unknown': ({ paper, known }) =>
    `Il n’y a pas de papier appelé « ${paper} ». Il y a : ${known.join(', ')}.`,
  'paper.margin': ({ margin, least }, { exactLength }) =>
    `Une marge de page de ${exactLength(margin)} ne convient pas : donner ${exactLength(least)} ou plus.`,
  'paper.overlap': ({ overlap, least, most }, { exactLength }) =>
    `Une bande de collage de ${exactLength(overlap)} ne convient pas : donner de ${exactLength(least)} à ${exactLength(most)}, ou assembler bord à bord.`,
  'paper.too-small': ({ paper, margin, left, least }, { say, small, exactLength }) =>
    `${say(paper)} avec des marges de page de ${exactLength(margin)} laisse ${small(left)} pour le patron ; il faut au moins ${exactLength(least)}. Prendre des marges plus petites ou un papier plus grand.`,
  'print.far-off': ({ bar, measured, off, largest }, { fixed, plain }) =>
    `Un trait de ${bar} mm qui mesure ${plain(measured, 2)} mm s’écarte de ${fixed(100 * off, 1)} % ; on ne peut corriger que ${plain(100 * largest, 1)} % au plus (de ${fixed(bar * (1 - largest), 1)} à ${fixed(bar * (1 + largest), 1)} mm). Ce n’est pas une imprimante inexacte, mais une mise à l’échelle du papier : imprimer de nouveau à 100 % (taille réelle) et mesurer de nouveau.`,
  'cutter.letters-lacking': ({ letters }) =>
    `Il manque aux lettres à trait simple ${letters.map((letter) => `« ${letter} »`).join(', ')} : des cases les remplacent. Prendre des noms en lettres latines, ou des lettres pleines.`,
  'cutter.length': ({ what, length, most }, { exactLength }) =>
    `${machineLengths[what]} de ${exactLength(length)} ne convient pas : donner de 0 à ${exactLength(most)}.`,
  'cutter.would-divide': ({ pieces, width, height }, { say, small }) =>
    `Le tapis de coupe est trop petit pour ${pieces.map((piece) => `« ${say(piece)} »`).join(', ')}. Un tapis de ${small(width)} × ${small(height)} contient chaque pièce entière. Du tissu coupé en morceaux n’aurait pas de marge là où ils se rejoignent : ne faire partager les pièces que pour des gabarits.`,
  'cutter.divided-boards': ({ pieces, lap }, { say, exactLength }) =>
    `Plus grand que le tapis de coupe, donc coupé en morceaux : ${pieces.map((piece) => `« ${say(piece)} »`).join(', ')}. Mettre les morceaux bord à bord et coller sur la jonction une bande du même carton qui dépasse de ${exactLength(lap)} des deux côtés ; partager la deuxième couche ailleurs.`,
  'cutter.mat-too-small': ({ width, least }, { exactLength }) =>
    `Un tapis de coupe large de ${exactLength(width)} est trop petit pour les pièces d’un mannequin : il faut au moins ${exactLength(least)}.`,
};

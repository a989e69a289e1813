import type { LineLevel, PanelWords, SeamNamePhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';
import { HALVES, SIDES } from './sides.ts';

const SEAM_ALONG: Readonly<Record<LineLevel, string>> = {
  hip: 'couture de hanches',
  highHip: 'couture des petites hanches',
  waist: 'couture de taille',
  underbust: 'couture sous la poitrine',
  lowerChest: 'couture sous la poitrine',
  bust: 'couture de poitrine',
  chest: 'couture de poitrine',
  upperChest: 'couture du haut de poitrine',
};
const ROWS = { lower: 'bas', middle: 'mi-hauteur', upper: 'haut' } as const;
const COLUMNS = { centre: 'centre', middle: 'intermédiaire', side: 'côté' } as const;

/** What lines, panels and openings are called. */
export const seamNames: Entries<SeamNamePhrases> = {
  'line.centreFront': 'milieu devant',
  'line.centreBack': 'milieu dos',
  'line.side': 'couture de côté',
  'line.shoulder': 'couture d’épaule',
  'line.neckBase': 'base du cou',
  'line.princessFront': 'princesse devant',
  'line.princessBack': 'princesse dos',
  'line.outerFront': 'couture extérieure devant',
  'line.outerBack': 'couture extérieure dos',
  'line.innerFront': 'couture intérieure devant',
  'line.innerBack': 'couture intérieure dos',
  'line.yokeBack': 'empiècement dos',
  'line.own': ({ number }) => `ligne ajoutée ${number}`,
  'line.along-level': ({ level, isFrontOnly }) =>
    `${SEAM_ALONG[level]}${isFrontOnly ? ', devant seulement' : ''}`,
  'line.middle': ({ panel }, { say }) => `milieu du panneau ${say(panel)}`,
  'opening.base': 'base',
  'opening.neck': 'cou',
  'opening.armholeRight': 'emmanchure droite',
  'opening.armholeLeft': 'emmanchure gauche',
  'panel.place': sayPanel,
};

/** `côté devant bas droit`. */
function sayPanel({ row, rowNumber, column, columnNumber, half, side }: PanelWords): string {
  const where = half && HALVES[half];
  const place =
    column === 'neckBand'
      ? ['bande d’encolure', where]
      : [column === 'whole' ? undefined : COLUMNS[column], where, columnNumber];
  // Panels are masculine in French, a band is feminine.
  const gender = column === 'neckBand' ? 'f' : 'm';
  return [...place, row && ROWS[row], rowNumber, side && SIDES[side][gender]]
    .filter((word) => word !== undefined)
    .join(' ');
}

import type { LineLevel, PanelWords, SeamNamePhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';

const SEAM_ALONG: Readonly<Record<LineLevel, string>> = {
  hip: 'Hüftnaht',
  highHip: 'hohe Hüftnaht',
  waist: 'Taillennaht',
  underbust: 'Unterbrustnaht',
  lowerChest: 'Unterbrustnaht',
  bust: 'Brustnaht',
  chest: 'Brustnaht',
  upperChest: 'Oberbrustnaht',
};
const ROWS = { lower: 'unten', middle: 'Mitte', upper: 'oben' } as const;
const COLUMNS = { centre: 'Mittelteil', middle: 'Zwischenteil', side: 'Seitenteil' } as const;
const HALVES = { front: 'vorn', back: 'hinten' } as const;
const SIDES = { right: 'rechts', left: 'links' } as const;

/** What lines, panels and openings are called. */
export const seamNames: Entries<SeamNamePhrases> = {
  'line.centreFront': 'vordere Mitte',
  'line.centreBack': 'hintere Mitte',
  'line.side': 'Seitennaht',
  'line.shoulder': 'Schulternaht',
  'line.neckBase': 'Halsansatz',
  'line.princessFront': 'Wiener Naht vorn',
  'line.princessBack': 'Wiener Naht hinten',
  'line.outerFront': 'äußere Teilungsnaht vorn',
  'line.outerBack': 'äußere Teilungsnaht hinten',
  'line.innerFront': 'innere Teilungsnaht vorn',
  'line.innerBack': 'innere Teilungsnaht hinten',
  'line.yokeBack': 'Passennaht hinten',
  'line.own': ({ number }) => `eigene Linie ${number}`,
  'line.along-level': ({ level, isFrontOnly }) => `${SEAM_ALONG[level]}${isFrontOnly ? ', nur vorn' : ''}`,
  'line.middle': ({ panel }, { say }) => `Teilungsnaht: ${say(panel)}`,
  'opening.base': 'Unterkante',
  'opening.neck': 'Hals',
  'opening.armholeRight': 'Armloch rechts',
  'opening.armholeLeft': 'Armloch links',
  'panel.place': ({ row, rowNumber, side, ...column }) =>
    [sayColumn(column), row && ROWS[row], rowNumber, side && SIDES[side]]
      .filter((word) => word !== undefined)
      .join(' '),
};

/** `Zwischenteil vorn 2`. */
function sayColumn({ column, columnNumber, half }: PanelWords): string {
  const where = half && HALVES[half];
  if (column === 'neckBand') return where ? `Halsbündchen ${where}` : 'Halsbündchen';
  if (column === 'whole') return half === 'front' ? 'Vorderteil' : 'Rückenteil';
  return [COLUMNS[column], where, columnNumber].filter((word) => word !== undefined).join(' ');
}

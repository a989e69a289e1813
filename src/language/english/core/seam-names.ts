import type { LineLevel, PanelWords, SeamNamePhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';

const LEVELS: Readonly<Record<LineLevel, string>> = {
  hip: 'hip',
  highHip: 'high hip',
  waist: 'waist',
  underbust: 'underbust',
  lowerChest: 'lower chest',
  bust: 'bust',
  chest: 'chest',
  upperChest: 'upper chest',
};

/** What lines, panels and openings are called. */
export const seamNames: Entries<SeamNamePhrases> = {
  'line.centreFront': 'centre front',
  'line.centreBack': 'centre back',
  'line.side': 'side',
  'line.shoulder': 'shoulder',
  'line.neckBase': 'neck base',
  'line.princessFront': 'princess front',
  'line.princessBack': 'princess back',
  'line.outerFront': 'outer front',
  'line.outerBack': 'outer back',
  'line.innerFront': 'inner front',
  'line.innerBack': 'inner back',
  'line.yokeBack': 'back yoke',
  'line.own': ({ number }) => `own line ${number}`,
  'line.along-level': ({ level, isFrontOnly }) =>
    `${LEVELS[level]} level${isFrontOnly ? ', front only' : ''}`,
  'line.middle': ({ panel }, { say }) => `middle of ${say(panel)}`,
  'opening.base': 'base',
  'opening.neck': 'neck',
  'opening.armholeRight': 'right armhole',
  'opening.armholeLeft': 'left armhole',
  'panel.place': sayPanel,
};

/** `lower side front right`. */
function sayPanel({ row, rowNumber, column, columnNumber, half, side }: PanelWords): string {
  const place =
    column === 'neckBand'
      ? [half, 'neck band']
      : [column === 'whole' ? undefined : column, half, columnNumber];
  return [row, rowNumber, ...place, side].filter((word) => word !== undefined).join(' ');
}

import type { LayingPhrases, UseId } from '../../../core/laying/index.ts';
import { amountToBuy } from '../../amount-to-buy.ts';
import type { Entries } from '../../catalogue.ts';
import { inYards } from '../../yards.ts';

/** Inside a sentence. */
const stocks: Readonly<Record<UseId, string>> = {
  shell: 'shell cloth',
  interfacing: 'interfacing',
  lining: 'lining',
  trial: 'cloth for the trial shell',
  webs: 'cloth for webs',
  covers: 'cloth for covers',
  arms: 'cloth for the arms',
  'test-tube': 'cloth for the test tube',
  card: 'card',
  foam: 'foam',
};

/** What is said of pieces laid on cloth and boards. */
export const laying: Entries<LayingPhrases> = {
  'use.shell': 'Shell',
  'use.interfacing': 'Interfacing',
  'use.lining': 'Lining',
  'use.trial': 'Trial shell',
  'use.webs': 'Webs, ties and sleeve',
  'use.covers': 'Covers of the plates',
  'use.arms': 'Arms',
  'use.test-tube': 'Test tube',
  'use.card': 'Card for the plates',
  'use.foam': 'Foam for the neck block',

  'laying.too-narrow': ({ use, piece, width, needed }, { say, length }) =>
    `The ${stocks[use]} is ${length(width)} wide, too narrow for “${say(piece)}”. It takes ${length(needed)} at least, selvedges included.`,
  'laying.too-large': ({ use, piece, length: long, width }, { say, length }) =>
    `No piece or sheet of the ${stocks[use]} holds “${say(piece)}”. It takes ${length(long)} along by ${length(width)} across at least.`,
  'laying.crosses-itself': ({ use, number }) =>
    `The outline of piece ${number} of the ${stocks[use]} crosses itself or bounds nothing. Set its corners in order, once round.`,
  'laying.no-room': ({ use, pieces, area }, { say, fixed }) =>
    `No room was found on the ${stocks[use]} for ${pieces.map((piece) => `“${say(piece)}”`).join(', ')}. They take ${fixed(area / 100, 0)} cm² at least: add a piece or a sheet, or let pieces lie both ways.`,
  'laying.print-gap': ({ seam, level, pieces, along, across }, { say, small }) =>
    `Seam ${seam}, ${pieces.map((piece) => `“${say(piece)}”`).join(' to ')}: at the ${say(level).toLowerCase()} the print cannot go on. It is off by ${small(along)} along the grain and ${small(across)} across.`,
  'laying.print-on-fold': ({ use }) =>
    `The ${stocks[use]} is folded, so nobody sees where its print lies on the lower layer. Lay it single to meet the print at the seams.`,

  'lay.title': ({ project }) => `Lay plans – ${project}`,
  'lay.roll': ({ length: used, width, wasted }, { length, percent }) =>
    `Takes ${length(used)} of cloth ${length(width)} wide; ${percent(wasted, 0)} falls off.`,
  'lay.sheets': ({ sheets, length: long, width, wasted }, { length, percent }) =>
    `${sheets === 1 ? '1 sheet' : `${sheets} sheets`} of ${length(long)} × ${length(width)}; ${percent(wasted, 0)} is left over.`,
  'lay.own': ({ sheets, wasted }, { percent }) =>
    `${sheets === 1 ? '1 piece' : `${sheets} pieces`} of what is at hand; ${percent(wasted, 0)} is left over.`,
  'lay.buy': ({ metric, yards, shrinkage }, { fixed, percent }) =>
    `Buy ${fixed(metric / 1000, 2)} m, or ${inYards(yards)} yd${shrinkage > 0 ? `: ${percent(shrinkage, 0)} may be lost in washing` : ''}.`,
  'lay.scale': ({ scale }) => `Scale 1 to ${scale}.`,
  'lay.how': ({ ways }) =>
    ways === 'one'
      ? 'Right side up, in one layer; every arrow points to the same end of the cloth.'
      : 'Right side up, in one layer; arrows may point to either end.',
  'lay.folded': ({ single }, { say }) =>
    `Fold the cloth along its length, right side out, and cut through both layers: a right and a left at once.${single.length > 0 ? ` From the upper layer alone: ${single.map(say).join(', ')}.` : ''}`,
  'lay.shared-lines': 'Where two pieces touch, one cut parts both.',
  'lay.print': ({ along, across, level }, { say, length }) =>
    `Print: one repeat is ${along > 0 ? `${length(along)} along` : ''}${along > 0 && across > 0 ? ', ' : ''}${across > 0 ? `${length(across)} across` : ''}. It goes on over the seams at the ${say(level).toLowerCase()}; pin partners there first.`,
  'lay.sheet': ({ number }) => `Sheet ${number}`,
  'lay.number': ({ number, piece }, { say }) => `${number}  ${say(piece)}`,
  'lay.left': ({ pieces }, { say }) => `Not laid, for want of room: ${pieces.map(say).join(', ')}.`,

  'lay.to-buy.title': ({ project }) => `${project} – to buy`,
  'lay.to-buy.heading': 'To buy',
  'lay.to-buy.amount': ({ quantity, unit }, tongue) => amountToBuy(quantity, unit, tongue, '×'),
  'lay.to-buy.cloth': ({ note, width, yards, wasted }, { say, length, percent }) =>
    `${inYards(yards)} yd of ${length(width)} width, as laid out (${percent(wasted, 0)} falls off)${after(say(note))}`,
  'lay.to-buy.interfacing': ({ note, width, yards }, { say, length }) =>
    `${inYards(yards)} yd of ${length(width)} width, for the whole laid length of the shell’s cloth${after(say(note))}`,
  'lay.to-buy.sheets': ({ note, length: long, width }, { say, length }) =>
    `sheets of ${length(long)} × ${length(width)}, as laid out${after(say(note))}`,
};

function after(note: string): string {
  return note === '' ? '' : `; ${note}`;
}

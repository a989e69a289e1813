import type { BookletColumn, BookletPart, BookletPhrases, PictureKey } from '../../../core/booklet/index.ts';
import type { Entries } from '../../catalogue.ts';

const PARTS: Readonly<Record<BookletPart, string>> = {
  buy: 'To buy',
  lays: 'How the pieces lie on cloth and card',
  work: 'Order of work',
  readings: 'Filling and readings',
};

const COLUMNS: Readonly<Record<BookletColumn, string>> = {
  level: 'level',
  girth: 'girth',
  width: 'width',
  depth: 'depth',
  read: 'read',
  zone: 'zone',
  filling: 'filling',
  weighed: 'weighed in',
};

const KEYS: Readonly<Record<PictureKey, string>> = {
  right: 'right side of the cloth, the outside',
  wrong: 'wrong side of the cloth, the inside',
  web: 'webs, ties and straps inside; while filling: what is full',
  bold: 'what is sewn or measured in this step',
  level: 'level line, all round where a girth is measured; thin and unbroken on flat pieces',
  dotted: 'what comes together; in pictures cut open, the outline of what is left out',
};

/** What stands in the booklet beside the order of work. */
export const booklet: Entries<BookletPhrases> = {
  'booklet.title': ({ project }) => `${project}: booklet`,
  'booklet.how':
    'Lay it beside the machine. Tick a box when its step is done, and write what you measure on the line behind its figure.',
  'booklet.print-how': ({ kind }) =>
    kind === 'a5'
      ? 'Pages of A5: print them on A5 paper, or two on a sheet of A4 with the booklet setting of the printer. Both at true size.'
      : 'Two pages a side, in the order for folding: print at true size on both sides of the paper, turned over along the short edge. Lay the sheets together as they come, fold them in the middle, and sew along the fold with a long stitch, or staple it.',
  'booklet.part': ({ part, page }) => `${PARTS[part]}: page ${page}`,
  'booklet.key-title': 'In the pictures',
  'booklet.key': ({ of }) => KEYS[of],
  'booklet.key-side':
    'The shell is drawn right side out, even where it is sewn wrong side out: so right stays right.',
  'booklet.foot': ({ project, page, pages }) => `${project} · page ${page} of ${pages}`,
  'booklet.readings': 'Filling and readings',
  'booklet.readings-how': ({ above }, { small }) =>
    `A girth may be over by ${small(above)}, never under. A level is judged when the zones above and below it are full: while filling, after a day, after a week, and before every new garment.`,
  'booklet.zones-how': ({ isAssumed, low, high }) =>
    isAssumed
      ? `What each zone takes, if a litre holds ${low} to ${high} g (an assumption): scale it by what you weighed into the test tube, and write down what went in.`
      : 'What each zone takes, by what you weighed into the test tube. Write down what went in.',
  'booklet.column': ({ of }) => COLUMNS[of],
  'booklet.length': ({ length }, { fineLength }) => fineLength(length),
  'booklet.mass': ({ from, to }, { mass }) => `${mass(from)} – ${mass(to)}`,
};

import type { Say } from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  foldText,
  makeLayer,
  makeRectangle,
  makeText,
} from '../drawing/index.ts';
import type { MaterialLine } from '../inside/index.ts';
import type { LayPaper } from './draw-lay-pages.ts';
import { phrase } from './phrases.ts';

const HEADING = 6;
const WORDS = 3.2;
const ROW = 4.1;
const BOX = 3.2;
/** Of the page, beside names: amounts stand in a column of their own, mm. */
const AMOUNT = 34;
/** Between two lines of the list. */
const BETWEEN = 1.4;

/** The list to buy by on pages, to tick off; 9 pt. */
export function drawListToBuy(
  lines: readonly MaterialLine[],
  project: string,
  { pageWidth, pageHeight, margin }: LayPaper,
  say: Say,
): Drawing[] {
  const pages: Drawing[] = [];
  const room = pageWidth - 2 * margin - BOX - 3 - AMOUNT;
  let [mark, text]: DrawingItem[][] = [[], []];
  let top = 0;
  const turn = (): void => {
    [mark, text] = [[], []];
    text.push(makeText(margin, margin + HEADING, say(phrase('lay.to-buy.heading')), HEADING));
    top = margin + HEADING + 10;
    const layers = [makeLayer('mark', mark), makeLayer('text', text)];
    const title = say(phrase('lay.to-buy.title', { project }));
    pages.push({ width: pageWidth, height: pageHeight, title, layers });
  };
  for (const { name, quantity, unit, note } of lines) {
    const words = say(note);
    const rows = [
      ...foldText(say(name), WORDS, room),
      ...(words === '' ? [] : foldText(words, WORDS, room + AMOUNT)),
    ];
    const height = rows.length * ROW + BETWEEN;
    if (pages.length === 0 || top + height > pageHeight - margin) turn();
    mark.push(makeRectangle(margin, top - BOX + 0.4, BOX, BOX));
    text.push(
      ...rows.map((row, k) => makeText(margin + BOX + 3, top + k * ROW, row, WORDS)),
      makeText(pageWidth - margin, top, say(phrase('lay.to-buy.amount', { quantity, unit })), WORDS, {
        anchor: 'end',
      }),
    );
    top += height;
  }
  return pages;
}

import { type Drawing, type DrawingItem, foldText, makeLayer, makeText } from '../drawing/index.ts';
import { phrase } from './phrases.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { PrintInfo } from './types.ts';

const WORDS = 3.6;
const LINE = 5;
/** From a caution's title to its words, mm. */
const INDENT = 40;
/** Between the two, mm. */
const GAP = 1.5;

/** Pages after the key that tell where the work with these pieces can hurt; none without cautions. */
export function drawCautions(
  { margin, pageWidth }: Pick<TileGrid, 'margin' | 'pageWidth'>,
  { cautions = [], project, say }: PrintInfo,
  pageHeight: number,
): Drawing[] {
  const pages: Drawing[] = [];
  let texts: DrawingItem[] = [];
  let y = 0;
  const turn = (): void => {
    const heading = phrase(pages.length === 0 ? 'take-care.heading' : 'take-care.heading-continued');
    texts = [makeText(margin, margin + 6, say(heading), 6)];
    y = margin + 18;
    const layers = [makeLayer('text', texts)];
    const title = say(phrase('take-care.title', { project }));
    pages.push({ width: pageWidth, height: pageHeight, title, layers });
  };
  for (const { title, text } of cautions) {
    const rows = foldText(say(text), WORDS, pageWidth - 2 * margin - INDENT);
    const titles = foldText(say(title), WORDS, INDENT - GAP);
    const height = Math.max(rows.length, titles.length) * LINE;
    const isOver = y + height > pageHeight - margin;
    if (pages.length === 0 || isOver) turn();
    for (const [i, row] of titles.entries()) texts.push(makeText(margin, y + i * LINE, row, WORDS));
    for (const [i, row] of rows.entries()) texts.push(makeText(margin + INDENT, y + i * LINE, row, WORDS));
    y += height + LINE / 2;
  }
  return pages;
}

import { wordsOf } from '../base/index.ts';
import { type Drawing, type DrawingItem, foldText, makeLayer, makeText } from '../drawing/index.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { PrintInfo } from './types.ts';

const WORDS = 3.6;
const LINE = 5;
/** From a caution's title to its words, mm. */
const INDENT = 40;

/** Pages after the key that tell where the work with these pieces can hurt; none without cautions. */
export function drawCautions(
  { margin, pageWidth }: Pick<TileGrid, 'margin' | 'pageWidth'>,
  { cautions = [], project }: PrintInfo,
  pageHeight: number,
): Drawing[] {
  const pages: Drawing[] = [];
  let texts: DrawingItem[] = [];
  let y = 0;
  const turn = (): void => {
    texts = [makeText(margin, margin + 6, pages.length === 0 ? 'Take care' : 'Take care, continued', 6)];
    y = margin + 18;
    const layers = [makeLayer('text', texts)];
    pages.push({ width: pageWidth, height: pageHeight, title: `Take care – ${project}`, layers });
  };
  for (const { title, text } of cautions) {
    const rows = foldText(wordsOf(text), WORDS, pageWidth - 2 * margin - INDENT);
    const isOver = y + rows.length * LINE > pageHeight - margin;
    if (pages.length === 0 || isOver) turn();
    texts.push(makeText(margin, y, wordsOf(title), WORDS));
    for (const row of rows) {
      texts.push(makeText(margin + INDENT, y, row, WORDS));
      y += LINE;
    }
    y += LINE / 2;
  }
  return pages;
}

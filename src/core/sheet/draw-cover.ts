import { mmPerInch, type Phrase, verbatim } from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  foldText,
  makeLayer,
  makeRectangle,
  makeText,
} from '../drawing/index.ts';
import { BAR_LENGTHS, type PrintCorrection } from './correct-print.ts';
import { drawBar, shorten } from './draw-page-names.ts';
import { findPaper } from './papers.ts';
import { phrase } from './phrases.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { PrintInfo, TiledDrawing } from './types.ts';

const SQUARE = 100;
const FOUR_INCHES = 4 * mmPerInch;
const WORDS = 3.6;
const LINE = 5;

/** Lengths of the long bars on the first page, across and up it, mm. */
export function barsOfCover(
  { margin, pageWidth }: Pick<TileGrid, 'margin' | 'pageWidth'>,
  pageHeight: number,
): { readonly across: number; readonly up: number } {
  const longest = (space: number): number => BAR_LENGTHS.find((bar) => bar <= space) ?? 50;
  return { across: longest(pageWidth - 2 * margin - 8), up: longest(pageHeight - 2 * margin - 52) };
}

/**
 * The first page: whose pattern this is, bars across and up the page and a square to measure before anything else is
 * printed, in centimetres and inches, and how to join the pages. The square's left and top sides carry 4 in bars.
 */
export function drawCover(
  { grid, tiles, joints }: TiledDrawing,
  info: PrintInfo,
  pageHeight: number,
  correction: PrintCorrection,
): Drawing {
  const { margin, pageWidth: width } = grid;
  const { project, say } = info;
  const right = width - margin;
  const room = right - margin;
  const { across, up } = barsOfCover(grid, pageHeight);

  // 1. Whose it is.
  const texts: DrawingItem[] = [];
  const put = (x: number, y: number, text: string, size: number): void => {
    texts.push(makeText(x, y, shorten(text, size, right - x), size));
  };
  put(margin, margin + 7, project, 7);
  put(margin, margin + 14, [info.body, info.date].filter(Boolean).join(' · '), 4.2);
  const paper = findPaper(grid.paperId)?.name ?? verbatim(grid.paperId);
  put(margin, margin + 20, say(phrase('cover.true-size', { paper })), 4.2);
  if (correction.x !== 1 || correction.y !== 1) {
    const corrected = phrase('cover.corrected', { across: correction.x - 1, up: correction.y - 1 });
    put(margin, margin + 26, say(corrected), 4.2);
  }

  // 2. What to measure.
  const items: DrawingItem[] = [];
  const barY = margin + 36;
  items.push(...drawBar(margin + 1.5, barY, across, false, 'test/bar-x'));
  put(margin + 4, barY - 1.5, say(phrase('cover.bar', { length: across, way: 'across' })), WORDS);
  const barX = right - 2;
  items.push(...drawBar(barX, margin + 44, up, true, 'test/bar-y'));
  texts.push(
    makeText(barX - 1.8, margin + 44 + up / 2, say(phrase('cover.bar', { length: up, way: 'up' })), WORDS, {
      anchor: 'middle',
      angle: -Math.PI / 2,
    }),
  );
  const [x, y] = [margin + 6, margin + 50];
  items.push(makeRectangle(x, y, SQUARE, SQUARE, { id: 'test/square-100' }));
  items.push(...drawBar(x, y - 4, FOUR_INCHES, false, 'test/bar-4in-x'));
  items.push(...drawBar(x - 4, y, FOUR_INCHES, true, 'test/bar-4in-y'));
  put(x + 4, y - 5, '4 in', WORDS);
  texts.push(makeText(x - 5, y + 12, '4 in', WORDS, { anchor: 'middle', angle: -Math.PI / 2 }));
  const inSquare = say(phrase('cover.square')).split('\n');
  for (const [i, text] of inSquare.entries()) texts.push(makeText(x + 5, y + 12 + 7 * i, text, 4.2));

  // 3. What to do.
  let line = y + SQUARE + 12;
  for (const paragraph of instructions(grid.overlap, joints.length > 0, tiles.length, across, up)) {
    for (const text of foldText(say(paragraph), WORDS, room - 12)) {
      texts.push(makeText(margin, line, text, WORDS));
      line += LINE;
    }
    line += 1.2;
  }
  return {
    width,
    height: pageHeight,
    title: say(phrase('cover.title', { project })),
    layers: [makeLayer('mark', items), makeLayer('text', texts)],
  };
}

function instructions(
  overlap: number,
  hasJoints: boolean,
  pages: number,
  across: number,
  up: number,
): Phrase[] {
  const joint = overlap > 0 ? 'overlap' : 'butt';
  return [
    phrase('cover.if-off', { across, up }),
    phrase('cover.print-the-rest', { pages }),
    ...(hasJoints ? [phrase('cover.join', { joint }), phrase('cover.measure-joints')] : []),
    phrase('cover.lines'),
    phrase('cover.clips'),
    phrase('cover.blades'),
  ];
}

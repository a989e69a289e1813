import { mmPerInch, type Phrase, type Say, verbatim } from '../base/index.ts';
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
const FIRST_WORDS = 4.2;
const FIRST_LINE = 6;
/** Free beside the square, and left of the bar up the page with its words, mm. */
const BESIDE_SQUARE = 8;
const BESIDE_BAR = 10;

/** Lengths of the long bars on the first page, across and up it, mm. */
export function barsOfCover(
  { margin, pageWidth }: Pick<TileGrid, 'margin' | 'pageWidth'>,
  pageHeight: number,
): { readonly across: number; readonly up: number } {
  const longest = (space: number): number => BAR_LENGTHS.find((bar) => bar <= space) ?? 50;
  return { across: longest(pageWidth - 2 * margin - 8), up: longest(pageHeight - 2 * margin - 52) };
}

/**
 * The first page: whose pattern this is, what must be known before, bars across and up the page and a square to measure before anything else is
 * printed, in centimetres and inches, and how to join the pages. The square's left and top sides carry 4 in bars.
 */
export function drawCover(
  { grid, tiles, joints }: TiledDrawing,
  info: PrintInfo,
  pageHeight: number,
  correction: PrintCorrection,
): Drawing {
  const bars = barsOfCover(grid, pageHeight);
  const { project, say } = info;
  const page: CoverPage = { grid, say, items: [], texts: [] };
  drawHeading(page, info, correction);
  drawMeasures(page, bars);
  drawFirst(page, info.first ?? []);
  drawInstructions(page, instructions(grid.overlap, joints.length > 0, tiles.length, bars.across, bars.up));
  return {
    width: grid.pageWidth,
    height: pageHeight,
    title: say(phrase('cover.title', { project })),
    layers: [makeLayer('mark', page.items), makeLayer('text', page.texts)],
  };
}

interface CoverPage {
  readonly grid: TileGrid;
  readonly say: Say;
  readonly items: DrawingItem[];
  readonly texts: DrawingItem[];
}

/** One line of words, no longer than to the right margin. */
function put({ grid, texts }: CoverPage, x: number, y: number, text: string, size: number): void {
  texts.push(makeText(x, y, shorten(text, size, grid.pageWidth - grid.margin - x), size));
}

/** Whose it is, on which paper. */
function drawHeading(page: CoverPage, info: PrintInfo, correction: PrintCorrection): void {
  const { grid, say } = page;
  const { margin } = grid;
  put(page, margin, margin + 7, info.project, 7);
  put(page, margin, margin + 14, [info.body, info.date].filter(Boolean).join(' · '), 4.2);
  const paper = findPaper(grid.paperId)?.name ?? verbatim(grid.paperId);
  put(page, margin, margin + 20, say(phrase('cover.true-size', { paper })), 4.2);
  if (correction.x !== 1 || correction.y !== 1) {
    const corrected = phrase('cover.corrected', { across: correction.x - 1, up: correction.y - 1 });
    put(page, margin, margin + 26, say(corrected), 4.2);
  }
}

/** Left and top of the square to measure. */
function squareAt({ margin }: TileGrid): readonly [number, number] {
  return [margin + 6, margin + 50];
}

/** What to measure: two bars and a square. */
function drawMeasures(page: CoverPage, { across, up }: ReturnType<typeof barsOfCover>): void {
  const { grid, say, items, texts } = page;
  const { margin } = grid;
  const barY = margin + 36;
  items.push(...drawBar(margin + 1.5, barY, across, false, 'test/bar-x'));
  put(page, margin + 4, barY - 1.5, say(phrase('cover.bar', { length: across, way: 'across' })), WORDS);
  const barX = grid.pageWidth - margin - 2;
  items.push(...drawBar(barX, margin + 44, up, true, 'test/bar-y'));
  texts.push(
    makeText(barX - 1.8, margin + 44 + up / 2, say(phrase('cover.bar', { length: up, way: 'up' })), WORDS, {
      anchor: 'middle',
      angle: -Math.PI / 2,
    }),
  );
  const [x, y] = squareAt(grid);
  items.push(makeRectangle(x, y, SQUARE, SQUARE, { id: 'test/square-100' }));
  items.push(...drawBar(x, y - 4, FOUR_INCHES, false, 'test/bar-4in-x'));
  items.push(...drawBar(x - 4, y, FOUR_INCHES, true, 'test/bar-4in-y'));
  put(page, x + 4, y - 5, '4 in', WORDS);
  texts.push(makeText(x - 5, y + 12, '4 in', WORDS, { anchor: 'middle', angle: -Math.PI / 2 }));
  const inSquare = say(phrase('cover.square')).split('\n');
  for (const [i, text] of inSquare.entries()) texts.push(makeText(x + 5, y + 12 + 7 * i, text, 4.2));
}

/** Between the square and the bar up the page, where nothing else stands, and larger than what follows. */
function drawFirst(page: CoverPage, paragraphs: readonly Phrase[]): void {
  const { grid, say, texts } = page;
  const [left, top] = squareAt(grid);
  const x = left + SQUARE + BESIDE_SQUARE;
  const width = grid.pageWidth - grid.margin - BESIDE_BAR - x;
  let line = top + BESIDE_SQUARE;
  for (const paragraph of paragraphs) {
    for (const text of foldText(say(paragraph), FIRST_WORDS, width)) {
      texts.push(makeText(x, line, text, FIRST_WORDS));
      line += FIRST_LINE;
    }
  }
}

/** What to do, below the square. */
function drawInstructions({ grid, say, texts }: CoverPage, paragraphs: readonly Phrase[]): void {
  const { margin, pageWidth } = grid;
  let line = squareAt(grid)[1] + SQUARE + 12;
  for (const paragraph of paragraphs) {
    for (const text of foldText(say(paragraph), WORDS, pageWidth - margin - margin - 12)) {
      texts.push(makeText(margin, line, text, WORDS));
      line += LINE;
    }
    line += 1.2;
  }
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

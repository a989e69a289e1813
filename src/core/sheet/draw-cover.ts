import { mmPerInch } from '../base/index.ts';
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
  const right = width - margin;
  const room = right - margin;
  const { across, up } = barsOfCover(grid, pageHeight);

  // 1. Whose it is.
  const texts: DrawingItem[] = [];
  const put = (x: number, y: number, text: string, size: number): void => {
    texts.push(makeText(x, y, shorten(text, size, right - x), size));
  };
  put(margin, margin + 7, info.project, 7);
  put(margin, margin + 14, [info.body, info.date].filter(Boolean).join(' · '), 4.2);
  put(
    margin,
    margin + 20,
    `For ${grid.paperName}: print at 100 % (actual size), never “fit” or “shrink”.`,
    4.2,
  );
  const corrected = correction.x !== 1 || correction.y !== 1;
  if (corrected) {
    const percent = (factor: number): string => `${(100 * (factor - 1)).toFixed(2)} %`;
    put(
      margin,
      margin + 26,
      `Corrected for one printer: ${percent(correction.x)} across, ${percent(correction.y)} up the page.`,
      4.2,
    );
  }

  // 2. What to measure.
  const items: DrawingItem[] = [];
  const barY = margin + 36;
  const inWords = (bar: number): string => `${bar / 10} cm = ${(bar / mmPerInch).toFixed(3)} in`;
  items.push(...drawBar(margin + 1.5, barY, across, false, 'test/bar-x'));
  put(margin + 4, barY - 1.5, `${inWords(across)} across the page`, WORDS);
  const barX = right - 2;
  items.push(...drawBar(barX, margin + 44, up, true, 'test/bar-y'));
  texts.push(
    makeText(barX - 1.8, margin + 44 + up / 2, `${inWords(up)} up the page`, WORDS, {
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
  const inSquare = [
    'The square is 10 cm on every side,',
    'the bars beside it are 4 in long.',
    '',
    'Measure it and both long bars',
    'before you print the rest.',
    'They may be off by 0.5 mm,',
    'no more.',
  ];
  for (const [i, text] of inSquare.entries()) texts.push(makeText(x + 5, y + 12 + 7 * i, text, 4.2));

  // 3. What to do.
  let line = y + SQUARE + 12;
  for (const paragraph of instructions(grid.overlap, joints.length > 0, tiles.length, across, up)) {
    for (const text of foldText(paragraph, WORDS, room - 12)) {
      texts.push(makeText(margin, line, text, WORDS));
      line += LINE;
    }
    line += 1.2;
  }
  return {
    width,
    height: pageHeight,
    title: `Cover – ${info.project}`,
    layers: [makeLayer('mark', items), makeLayer('text', texts)],
  };
}

function instructions(
  overlap: number,
  hasJoints: boolean,
  pages: number,
  across: number,
  up: number,
): string[] {
  const off = `1. If a long bar is not ${across} mm across and ${up} mm up the page, have the pages made again from the two lengths you measured (print correction); that cures an inexact printer in both directions.`;
  const joining =
    overlap > 0
      ? '3. Only pages with diamonds on a line are joined. Cut the upper or left page edge off along that line and lay it on the strip of its neighbour, so that both halves of each diamond close; equal numbers meet. Tape flat.'
      : '3. Only pages with diamonds on a line are joined. Cut both pages along that line, put them edge to edge, so that both halves of each diamond close; equal numbers meet. Tape flat.';
  return [
    off,
    `2. Print the other pages the same way (${pages === 1 ? '1 page' : `${pages} pages`} of pattern and a key that shows where each belongs). Large pieces have pages of their own, small ones share the pages whose names begin with A.`,
    ...(hasJoints
      ? [
          joining,
          '4. Before cutting, measure from cross to cross over the joints: the distance is printed beside the crosses. It may be off by 1 mm.',
        ]
      : []),
    'Cut along the solid outline; the dashed line is the seam. Short cuts (or points) at the edge are notches. Notches of equal name meet: single ones in front seams, double at the back, triple at the centre back.',
    'Short lines that end before the seam show where to clip the allowance after sewing: no closer to the stitches than they reach.',
    'Blades: cut away from your hands and close a rotary cutter whenever you put it down.',
  ];
}

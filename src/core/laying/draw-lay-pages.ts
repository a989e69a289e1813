import { type Phrase, type Say, verbatim, withUsual } from '../base/index.ts';
import { type Drawing, type DrawingItem, foldText, makeLayer, makeText } from '../drawing/index.ts';
import type { Piece } from '../pattern/index.ts';
import { nameOfPlace } from '../seams/index.ts';
import { drawLay, type LayDrawing, scaleForView, viewsOfPlan } from './draw-lay.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import { lengthToBuy } from './length-to-buy.ts';
import { wayOfMeeting } from './match-print.ts';
import { phrase } from './phrases.ts';
import { isPrinted } from './turns-of-piece.ts';
import type { Laying, LayPlan, Stock } from './types.ts';
import { findUse } from './uses.ts';

const HEADING = 5;
const WORDS = 3.2;
const ROW = 4.4;
/** Between two plans on a page, mm. */
const BETWEEN = 8;
/** A plan takes at most so much of a page's height, so that its words stand beside it. */
const MOST_OF_PAGE = 0.8;

/** Paper the plans are drawn on, mm. */
export interface LayPaper {
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly margin: number;
}

interface Block {
  readonly height: number;
  readonly draw: (top: number) => LayDrawing & { readonly words: DrawingItem[] };
}

/**
 * Every plan of a form on pages: its heading, how much is taken and bought, how the cloth lies, the plan to scale, and the names
 * of pieces too small for theirs. Several to a page where there is room; text of 9 pt.
 */
export function drawLayPages(
  plans: readonly LayPlan[],
  pieces: readonly Piece[],
  laying: Laying,
  project: string,
  paper: LayPaper,
  say: Say,
): Drawing[] {
  const blocks = plans.flatMap((plan) => blocksOf(plan, pieces, laying[plan.use] ?? {}, paper, say));
  const { pageWidth, pageHeight, margin } = paper;
  const pages: Drawing[] = [];
  let layers = new Map<string, DrawingItem[]>();
  let top = margin;
  const turn = (): void => {
    if (layers.size > 0)
      pages.push({
        width: pageWidth,
        height: pageHeight,
        title: say(phrase('lay.title', { project })),
        layers: [...layers].map(([name, items]) => makeLayer(name, items)),
      });
    layers = new Map(['fill', 'cut', 'mark', 'text'].map((name) => [name, []]));
    top = margin;
  };
  turn();
  let isEmpty = true;
  for (const block of blocks) {
    if (!isEmpty && top + block.height > pageHeight - margin) turn();
    const drawn = block.draw(top);
    for (const { name, items } of drawn.layers) layers.get(name)?.push(...items);
    layers.get('text')?.push(...drawn.words);
    top += block.height + BETWEEN;
    isEmpty = false;
  }
  if (!isEmpty) turn();
  return pages;
}

/** A block for the roll or for each sheet. */
function blocksOf(
  plan: LayPlan,
  pieces: readonly Piece[],
  stock: Stock,
  { pageWidth, pageHeight, margin }: LayPaper,
  say: Say,
): Block[] {
  const room = pageWidth - 2 * margin;
  return viewsOfPlan(plan).map((view, i) => {
    // A short length of a wide cloth takes less of the page across it.
    const isUpright = view.length < view.width;
    const box = { x: margin, width: room, height: MOST_OF_PAGE * (pageHeight - 2 * margin), isUpright };
    const scale = scaleForView(view, box);
    const heading = [
      say(phrase(`use.${plan.use}`)),
      ...(plan.sheetsUsed > 1 ? [say(phrase('lay.sheet', { number: i + 1 }))] : []),
    ].join(' – ');
    const told = i === 0 ? tellOfPlan(plan, pieces, stock) : [];
    const rows = [...told, phrase('lay.scale', { scale })].flatMap((words) =>
      foldText(say(words), WORDS, room),
    );
    const above = HEADING + 4 + rows.length * ROW;
    const { numbered } = drawLay(plan, view, pieces, stock, { ...box, y: 0 }, say);
    const legend = numbered.flatMap((id, k) => {
      const name = pieces.find((piece) => piece.id === id)?.name ?? verbatim(id);
      return foldText(say(phrase('lay.number', { number: k + 1, piece: name })), WORDS, room / 3 - 3);
    });
    const inColumn = Math.ceil(legend.length / 3);
    const height =
      above + (isUpright ? view.length : view.width) / scale + (legend.length > 0 ? 3 + inColumn * ROW : 0);
    return {
      height,
      draw(top) {
        const drawing = drawLay(plan, view, pieces, stock, { ...box, y: top + above }, say);
        const under = top + above + drawing.height + 3;
        return {
          ...drawing,
          words: [
            makeText(margin, top + HEADING - 1, heading, HEADING),
            ...rows.map((row, k) => makeText(margin, top + HEADING + 2 + (k + 0.8) * ROW, row, WORDS)),
            ...legend.map((row, k) =>
              makeText(
                margin + (room / 3) * Math.floor(k / inColumn),
                under + ((k % inColumn) + 0.8) * ROW,
                row,
                WORDS,
              ),
            ),
          ],
        };
      },
    };
  });
}

/** A plan in sentences: what it takes, what to buy, how to lay the cloth. */
export function tellOfPlan(plan: LayPlan, pieces: readonly Piece[], stock: Stock): Phrase[] {
  const { ground, length, sheetsUsed, area, taken, left } = plan;
  const options = withUsual(LAYING_OPTIONS, stock);
  const print = withUsual(LAYING_OPTIONS.print, stock.print ?? {});
  const wasted = 1 - area / taken;
  const width = ground.width * (ground.isFolded ? 2 : 1);
  const use = findUse(plan.use);
  const isOneWay = (options.ways ?? (isPrinted(print) ? 'one' : 'both')) === 'one';
  const nameOf = (id: string): Phrase => pieces.find((piece) => piece.id === id)?.name ?? verbatim(id);
  const single = plan.placed.filter(({ piece }) => !plan.under?.some((pair) => pair.piece === piece));
  return [
    ground.kind === 'roll'
      ? phrase('lay.roll', { length, width, wasted })
      : stock.pieces
        ? phrase('lay.own', { sheets: sheetsUsed, wasted })
        : phrase('lay.sheets', {
            sheets: sheetsUsed,
            ...viewsOfPlan(plan)[0],
            wasted,
          }),
    ...(ground.kind === 'roll'
      ? [phrase('lay.buy', { ...lengthToBuy(plan, stock), shrinkage: options.shrinkage })]
      : []),
    ...(use.isCloth
      ? [
          ground.isFolded
            ? phrase('lay.folded', { single: single.map(({ piece }) => nameOf(piece)) })
            : phrase('lay.how', { ways: isOneWay ? 'one' : 'both' }),
        ]
      : []),
    ...((options.leastGap ?? use.gap) === 0 ? [phrase('lay.shared-lines')] : []),
    ...(wayOfMeeting(print) !== undefined
      ? [phrase('lay.print', { along: print.along, across: print.across, level: nameOfPlace(print.level) })]
      : []),
    ...(left.length > 0 ? [phrase('lay.left', { pieces: left.map(nameOf) })] : []),
  ];
}

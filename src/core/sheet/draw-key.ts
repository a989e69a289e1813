import {
  type Drawing,
  type DrawingItem,
  makeLayer,
  makePath,
  makeRectangle,
  makeText,
} from '../drawing/index.ts';
import type { Piece } from '../pattern/index.ts';
import { foldText } from './fold-text.ts';
import type { PrintInfo } from './print-pieces.ts';
import type { TiledDrawing } from './types.ts';

const SIDE_WORDS = { right: "wearer's right", left: "wearer's left", centre: 'centre' };
const ROW = 5.5;
const WORDS = 3.6;

/** The second page: a small map of all pages with the outlines on them, and every piece with its pages, to tick off. */
export function drawKey(
  tiled: TiledDrawing,
  drawing: Drawing,
  pieces: readonly Piece[],
  pagesOf: ReadonlyMap<string, readonly string[]>,
  info: PrintInfo,
  pageHeight: number,
): Drawing {
  const { grid, tiles } = tiled;
  const { margin, pageWidth: width } = grid;
  const room = width - 2 * margin;
  const rowsOfTable = pieces.flatMap((piece) =>
    foldText(
      `${piece.name} · ${SIDE_WORDS[piece.side]} · cut 1 · ${piece.material} · ${wordPages(pagesOf.get(piece.id) ?? [])}`,
      WORDS,
      room - 8,
    ).map((text, i) => ({ text, isFirst: i === 0 })),
  );
  const tableHeight = rowsOfTable.length * ROW + 10;
  const mapHeight = Math.max(50, pageHeight - 2 * margin - tableHeight - 24);
  const scale = Math.min(room / drawing.width, mapHeight / drawing.height);
  const [x0, y0] = [margin, margin + 16];

  const map: DrawingItem[] = tiles.map(({ cell, name }) =>
    makeRectangle(
      x0 + cell.minX * scale,
      y0 + cell.minY * scale,
      (cell.maxX - cell.minX) * scale,
      (cell.maxY - cell.minY) * scale,
      { id: `key/${name}` },
    ),
  );
  const outlines = drawing.layers.flatMap(({ items }) =>
    items.flatMap((item) =>
      item.kind === 'path' && item.closed
        ? [
            makePath(
              item.points.map((v, i) => (i % 2 === 0 ? x0 : y0) + v * scale),
              { closed: true },
            ),
          ]
        : [],
    ),
  );
  const size = Math.min(7, grid.cellWidth * scale * 0.3);
  const names = tiles.map(({ cell, name }) =>
    makeText(
      x0 + ((cell.minX + cell.maxX) / 2) * scale,
      y0 + ((cell.minY + cell.maxY) / 2) * scale + 0.36 * size,
      name,
      size,
      { anchor: 'middle' },
    ),
  );
  const tableY = y0 + drawing.height * scale + 12;
  const table = rowsOfTable.map(({ text }, i) => makeText(margin + 7, tableY + i * ROW, text, WORDS));
  const ticks = rowsOfTable.flatMap(({ isFirst }, i) =>
    isFirst ? [makeRectangle(margin + 1, tableY + i * ROW - 3, 3.4, 3.4)] : [],
  );
  return {
    width,
    height: pageHeight,
    title: `Key – ${info.project}`,
    layers: [
      makeLayer('join', map),
      makeLayer('cut', outlines),
      makeLayer('page', names),
      makeLayer('mark', ticks),
      makeLayer('text', [
        makeText(margin, margin + 6, 'Key to the pages', 6),
        makeText(margin, margin + 12, `${tiles.length} pages; those left out hold nothing.`, WORDS),
        ...table,
      ]),
    ],
  };
}

function wordPages(names: readonly string[]): string {
  if (names.length === 0) return 'no page';
  return names.length === 1 ? `page ${names[0]}` : `pages ${names.join(', ')}`;
}

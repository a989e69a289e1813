import type { Phrase } from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  foldText,
  makeLayer,
  makePath,
  makeRectangle,
  makeText,
} from '../drawing/index.ts';
import { materialInWords, type Piece } from '../pattern/index.ts';
import { shorten } from './draw-page-names.ts';
import { phrase } from './phrases.ts';
import type { PrintInfo, TiledDrawing } from './types.ts';

const ROW = 5.5;
const WORDS = 3.6;

/**
 * The pages after the cover: a small map of all pages with the outlines on them, and every drawn piece with its pages, to tick off;
 * a list longer than the page goes on overleaf.
 */
export function drawKey(
  tiled: TiledDrawing,
  drawing: Drawing,
  pieces: readonly Piece[],
  toldCount: number,
  pagesOf: ReadonlyMap<string, readonly string[]>,
  info: PrintInfo,
  pageHeight: number,
): Drawing[] {
  const { grid, tiles } = tiled;
  const { project, say } = info;
  const { margin, pageWidth } = grid;
  const room = pageWidth - 2 * margin;
  const rows = pieces.flatMap(({ id, name, side, material, twins }) => {
    const pages = pagesOf.get(id) ?? [];
    const row = phrase('key.row', {
      piece: name,
      side,
      material: materialInWords(material),
      pages,
      ...(twins && { twins: twins.kind }),
    });
    return foldText(say(row), WORDS, room - 8).map((text, i) => ({ text, isFirst: i === 0 }));
  });
  if (toldCount > 0) {
    const row = say(phrase('key.told', { pieces: toldCount }));
    rows.push(...foldText(row, WORDS, room - 8).map((text, i) => ({ text, isFirst: i === 0 })));
  }
  const bottom = pageHeight - margin;
  const mapTop = margin + 16;
  const mapHeight = Math.max((bottom - mapTop) * 0.45, bottom - mapTop - 12 - rows.length * ROW);
  const scale = Math.min(room / drawing.width, mapHeight / drawing.height);
  const page = (title: Phrase, top: number, map: KeyMap, words: readonly DrawingItem[]): Drawing => {
    const here = rows.splice(0, Math.max(1, Math.floor((bottom - top) / ROW)));
    return {
      width: pageWidth,
      height: pageHeight,
      title: say(title),
      layers: [
        makeLayer('page', map.frames),
        makeLayer('mark', [
          ...map.outlines,
          ...here.flatMap(({ isFirst }, i) =>
            isFirst ? [makeRectangle(margin + 1, top + i * ROW - 3, 3.4, 3.4)] : [],
          ),
        ]),
        makeLayer('text', [
          ...words,
          ...map.names,
          ...here.map(({ text }, i) => makeText(margin + 7, top + i * ROW, text, WORDS)),
        ]),
      ],
    };
  };
  const heading = (text: Phrase): DrawingItem => makeText(margin, margin + 6, say(text), 6);
  const many = say(phrase('key.count', { pages: tiles.length, project }));
  const count = makeText(margin, margin + 12, shorten(many, WORDS, room), WORDS);
  const first = page(
    phrase('key.title', { project }),
    mapTop + drawing.height * scale + 12,
    drawMap(tiled, drawing, margin, mapTop, scale),
    [heading(phrase('key.heading')), count],
  );
  const pages = [first];
  while (rows.length > 0) {
    const title = phrase('key.title-continued', { project });
    pages.push(page(title, margin + 18, NO_MAP, [heading(phrase('key.heading-continued'))]));
  }
  return pages;
}

interface KeyMap {
  readonly frames: readonly DrawingItem[];
  readonly outlines: readonly DrawingItem[];
  readonly names: readonly DrawingItem[];
}

const NO_MAP: KeyMap = { frames: [], outlines: [], names: [] };

/** Cells as frames with their names, and the closed outlines on them. */
function drawMap(
  { grid, tiles }: TiledDrawing,
  drawing: Drawing,
  x0: number,
  y0: number,
  scale: number,
): KeyMap {
  const frames = tiles.map(({ cell, name }) =>
    makeRectangle(
      x0 + cell.minX * scale,
      y0 + cell.minY * scale,
      (cell.maxX - cell.minX) * scale,
      (cell.maxY - cell.minY) * scale,
      { id: `key/${name}` },
    ),
  );
  const outlines = drawing.layers.flatMap(({ name, items }) =>
    items.flatMap((item) =>
      name === 'cut' && item.kind === 'path' && item.closed
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
  return { frames, outlines, names };
}

import {
  type Drawing,
  type DrawingItem,
  foldText,
  makeLayer,
  makeRectangle,
  makeText,
} from '../drawing/index.ts';
import { materialInWords, type Piece, sideInWords } from '../pattern/index.ts';
import { shorten } from './draw-page-names.ts';
import { phrase } from './phrases.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { PrintInfo } from './types.ts';

/** A label with the turned-in rims it is sewn by, mm. */
const LABEL = { width: 60, height: 30 };
/** Turned under all round before sewing. */
const RIM = 5;
const FORM_LABEL = { width: 90, height: 50 };

/**
 * Pages of labels to print on cloth or paper and sew in: a large one for the form, then one for every piece with its name,
 * side, project, body, date and revision. Solid lines are cut, dashed ones turned under.
 */
export function drawLabels(pieces: readonly Piece[], info: PrintInfo, grid: TileGrid): Drawing[] {
  const { margin, pageWidth } = grid;
  const { project, say } = info;
  const pageHeight = grid.isRoll ? 297 : grid.pageHeight;
  const columns = Math.max(1, Math.floor((pageWidth - 2 * margin) / LABEL.width));
  const firstTop = margin + 14 + FORM_LABEL.height + 4;
  const rowsBelow = (top: number): number =>
    Math.max(1, Math.floor((pageHeight - margin - top) / LABEL.height));
  const pages: Drawing[] = [];
  let left = [...pieces];
  while (left.length > 0 || pages.length === 0) {
    const isFirst = pages.length === 0;
    const top = isFirst ? firstTop : margin;
    const here = left.slice(0, columns * rowsBelow(top));
    left = left.slice(here.length);
    const layers = {
      cut: [] as DrawingItem[],
      sew: [] as DrawingItem[],
      text: [] as DrawingItem[],
    };
    const put = (x: number, y: number, size: typeof LABEL, rows: readonly [string, number][]): void => {
      layers.cut.push(makeRectangle(x, y, size.width, size.height));
      layers.sew.push(makeRectangle(x + RIM, y + RIM, size.width - 2 * RIM, size.height - 2 * RIM));
      let baseline = y + RIM + 0.6;
      for (const [text, height] of rows) {
        baseline += 1.22 * height;
        layers.text.push(
          makeText(x + RIM + 1.5, baseline, shorten(text, height, size.width - 2 * RIM - 3), height),
        );
      }
    };
    if (isFirst) {
      const how = say(phrase('labels.how'));
      layers.text.push(makeText(margin, margin + 6, shorten(how, 3.6, pageWidth - 2 * margin), 3.6));
      put(margin, margin + 10, FORM_LABEL, [
        ...foldText(project, 6, FORM_LABEL.width - 2 * RIM - 3)
          .slice(0, 2)
          .map((row): [string, number] => [row, 6]),
        [info.body, 5],
        [info.date, 4.5],
        [say(phrase('labels.count', { pieces: pieces.length })), 4.5],
      ]);
    }
    for (const [i, piece] of here.entries()) {
      const x = margin + (i % columns) * LABEL.width;
      const y = top + Math.floor(i / columns) * LABEL.height;
      put(x, y, LABEL, [
        ...rowsOfName(say(piece.name)),
        [`${say(sideInWords(piece.side))} · ${say(materialInWords(piece.material))}`, 2.4],
        [project, 2.6],
        [info.body, 2.4],
        [info.date, 2.4],
      ]);
    }
    pages.push({
      width: pageWidth,
      height: pageHeight,
      title: say(phrase('labels.title', { project })),
      layers: [makeLayer('cut', layers.cut), makeLayer('sew', layers.sew), makeLayer('text', layers.text)],
    });
  }
  return pages;
}

/** A name as large as one row takes it, else in two smaller ones: names that differ only at their ends stay apart. */
function rowsOfName(name: string): [string, number][] {
  const space = LABEL.width - 2 * RIM - 3;
  const rows = foldText(name, 4.2, space);
  if (rows.length === 1) return [[name, 4.2]];
  return foldText(name, 2.7, space).map((row) => [row, 2.7]);
}

import { expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import { cornersOfText } from '../../src/core/drawing/index.ts';
import { drawLabels, planTiles } from '../../src/core/sheet/index.ts';
import { inEnglish } from '../in-english.ts';
import { samplePieces } from './sample-pieces.ts';

const INFO = {
  say: inEnglish,
  project: 'A very long name of a play that nobody could ever read on one label',
  body: 'bust 94 cm',
  date: '2026-01-02 · rev 0M8M56',
};

const LONG = 'cushion plate right, layer 2 – side with the poles outwards';

it('prints a label for every piece and one for the form, each text inside the dashed line of its label', () => {
  const [first, ...others] = samplePieces();
  const pieces = [{ ...first, name: verbatim(LONG) }, ...others];
  for (const paper of ['a4', 'letter', 'roll24']) {
    const grid = planTiles({ paper });
    if (!grid.ok) throw new Error(paper);
    const pages = drawLabels(pieces, INFO, grid.value);
    const rims = pages.map(({ layers }) =>
      layers[1].items.map((item) => (item.kind === 'path' ? item.points : new Float64Array())),
    );
    expect(rims.flat().length).toBe(pieces.length + 1);
    const texts = pages.flatMap(({ layers }, page) => layers[2].items.map((item) => ({ item, page })));
    for (const piece of pieces) {
      const name = inEnglish(piece.name);
      // Whole, over two rows where one does not take it: layers of one plate differ at the end of their names only.
      const rows = texts.map(({ item }, i) => {
        const next = texts[i + 1]?.item;
        if (item.kind !== 'text') return '';
        return item.size !== 2.7 || next?.kind !== 'text' || next.size !== 2.7
          ? item.text
          : `${item.text} ${next.text}`;
      });
      expect(rows.filter((row) => row === name).length, name).toBe(1);
      // A maker knows pieces by name and side, not by the program's ids.
      expect(
        texts.some(({ item }) => item.kind === 'text' && item.text.includes(piece.id) && piece.id !== name),
      ).toBe(false);
    }
    for (const { item, page } of texts.slice(1)) {
      if (item.kind !== 'text') continue;
      const box = cornersOfText(item);
      const isInside = rims[page].some(
        (rim) => box[0] >= rim[0] && box[1] >= rim[1] - 0.01 && box[4] <= rim[4] && box[5] <= rim[5] + 0.01,
      );
      expect(isInside, item.text).toBe(true);
    }
    // Nothing in the margin, nothing over another label.
    for (const { layers, width, height } of pages)
      for (const cut of layers[0].items) {
        if (cut.kind !== 'path') continue;
        expect(Math.min(...cut.points)).toBeGreaterThanOrEqual(10);
        expect(cut.points[4]).toBeLessThanOrEqual(width - 10);
        expect(cut.points[5]).toBeLessThanOrEqual(height - 10);
      }
  }
});

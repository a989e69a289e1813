import { describe, expect, it } from 'vitest';
import {
  flowPages,
  pagesOfFlow,
  placePicture,
  writeList,
  writeParagraph,
} from '../../src/core/booklet/flow-pages.ts';
import { cornersOfText, type Drawing, makeLayer, makeRectangle } from '../../src/core/drawing/index.ts';

const PAPER = { pageWidth: 210, pageHeight: 297, margin: 10 };
const PICTURE: Drawing = {
  width: 30,
  height: 60,
  title: 'a box',
  layers: [makeLayer('outline', [makeRectangle(0, 0, 30, 60)])],
};
const SENTENCE =
  'Pin letter to letter and notch to notch; level lines may miss each other by a little, no more. ';

/** Upright boxes of all texts of a page. */
function boxesOf({ layers }: Drawing): { left: number; right: number; top: number; bottom: number }[] {
  return layers.flatMap(({ items }) =>
    items.flatMap((item) => {
      if (item.kind !== 'text') return [];
      const corners = cornersOfText(item);
      const [xs, ys] = [0, 1].map((axis) => corners.filter((_, i) => i % 2 === axis));
      return [
        { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) },
      ];
    }),
  );
}

describe('text beside a picture', () => {
  it.each(['paragraphs', 'a list with lines to write on'])(
    'keeps clear of it, and is wide below it: %s',
    (kind) => {
      const flow = flowPages('a page', PAPER);
      placePicture(flow, PICTURE);
      const rows = Array.from({ length: 30 }, () => SENTENCE.repeat(2).trim());
      if (kind === 'paragraphs') for (const row of rows) writeParagraph(flow, row, { size: 3 });
      else writeList(flow, rows, { size: 3, hasBox: true, hasLine: true });
      const [page] = pagesOfFlow(flow);
      const boxes = boxesOf(page);
      // At the right margin: from 170 to 200 across, from 10 to 70 down.
      expect(boxes.filter(({ right, top }) => right > 170 && top < 70)).toEqual([]);
      expect(boxes.some(({ right, top }) => right > 172 && top > 70)).toBe(true);
    },
  );

  it('goes on over as many pages as it needs, each within the margins', () => {
    const flow = flowPages('pages', PAPER);
    writeParagraph(flow, SENTENCE.repeat(200).trim(), { size: 3 });
    const pages = pagesOfFlow(flow);
    expect(pages.length).toBeGreaterThan(1);
    const words = pages.flatMap(({ layers }) =>
      layers.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))),
    );
    expect(words.join(' ')).toBe(SENTENCE.repeat(200).trim());
    for (const { left, right, top, bottom } of pages.flatMap(boxesOf)) {
      expect(left).toBeGreaterThan(9.5);
      expect(right).toBeLessThan(200.5);
      expect(top).toBeGreaterThan(9.5);
      expect(bottom).toBeLessThan(287.5);
    }
  });

  it('does not part a number from its fraction or unit', () => {
    for (let letters = 1; letters < 60; letters++) {
      const flow = flowPages('a page', PAPER);
      writeParagraph(flow, `${'x'.repeat(letters)} and ${'y '.repeat(60)}14 13/16 in`, { size: 3 });
      const rows = pagesOfFlow(flow)[0].layers.flatMap(({ items }) =>
        items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
      );
      expect(rows.some((row) => row.includes('14 13/16 in'))).toBe(true);
    }
  });
});

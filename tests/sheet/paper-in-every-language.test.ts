import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import {
  cornersOfText,
  type Drawing,
  type DrawingItem,
  type DrawingText,
} from '../../src/core/drawing/index.ts';
import { type TubeStanding, tellTube } from '../../src/core/form/index.ts';
import { arrangePieces, draftPiece } from '../../src/core/pattern/index.ts';
import { drawLabels, planTiles, printPieces } from '../../src/core/sheet/index.ts';
import { LANGUAGES, type Language, loadCatalogue, speakerFor } from '../../src/language/index.ts';
import { samplePanels } from '../pattern/synthetic-panels.ts';

/** Words of ours are judged, so those of makers and of other rooms are numbers here. */
const INFO = { project: '1', body: '94', date: '2026-11-25' };
const CAUTIONS = [{ title: verbatim('10 20 30 40 50 60 70 80'), text: verbatim('1234 '.repeat(60).trim()) }];

/** The longest that is said of the test tube: what going without it leaves open. */
const LEVEL = { level: verbatim('1234567890'), less: 12, more: 24 };
const SKIPPED: TubeStanding = {
  kind: 'skipped',
  levels: ['a', 'b', 'c', 'd'].map((id) => ({ ...LEVEL, id })),
};

/** The widest sheet of a home printer, the smallest, and a roll. */
const PRINTED_ON = ['letter', 'both', 'roll24'] as const;

async function drawAll(language: Language) {
  const { say } = speakerFor(await loadCatalogue(language));
  const pieces = samplePanels().map((input, i) => {
    const id = `${i}`;
    const numbered = { ...input, id, name: verbatim(id), material: 'shell', levelLines: [] };
    const made = draftPiece(numbered, { ...INFO, say });
    if (!made.ok) throw new Error(input.id);
    return made.value;
  });
  const sheet = arrangePieces(pieces, { say });
  if (!sheet.ok) throw new Error('sheet');
  const prints = PRINTED_ON.map((paper) => {
    const info = { ...INFO, say, first: [tellTube(SKIPPED, false)], cautions: CAUTIONS };
    const job = printPieces(pieces, info, { paper, correction: { x: 1.0004, y: 0.9996 } });
    const grid = planTiles({ paper });
    if (!job.ok || !grid.ok) throw new Error(paper);
    const { pages, tiled } = job.value;
    const front = pages.slice(0, pages.length - tiled.pages.length);
    return { front, tiled: tiled.pages, labels: drawLabels(pieces, info, grid.value) };
  });
  return { sheet: sheet.value, prints };
}

const itemsOf = ({ layers }: Drawing): DrawingItem[] => layers.flatMap(({ items }) => items);
const textsOf = (drawing: Drawing): DrawingText[] =>
  itemsOf(drawing).filter((item): item is DrawingText => item.kind === 'text');

const hasWords = ({ text }: DrawingText): boolean => /\p{L}{3}/u.test(text);

function boxOf(item: DrawingText) {
  const corners = cornersOfText(item);
  const xs = corners.filter((_, i) => i % 2 === 0);
  const ys = corners.filter((_, i) => i % 2 === 1);
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}

/** Texts that begin inside the square of 100 mm. */
function expectSquareHoldsItsWords(drawing: Drawing): void {
  const square = itemsOf(drawing).find(({ id }) => id === 'test/square-100');
  if (square?.kind !== 'path') throw new Error('no square');
  const [x, y] = square.points;
  const inside = textsOf(drawing).filter(
    (text) => text.x > x && text.x < x + 100 && text.y > y && text.y < y + 100,
  );
  expect(inside.length).toBeGreaterThan(4);
  for (const text of inside) {
    expect(boxOf(text).maxX, text.text).toBeLessThan(x + 100);
    expect(boxOf(text).maxY, text.text).toBeLessThan(y + 100);
  }
}

function expectNoTextOverAnother(page: Drawing): void {
  const boxes = textsOf(page).map((text) => ({ text: text.text, ...boxOf(text) }));
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1)) {
      const apart = a.maxX <= b.minX || b.maxX <= a.minX || a.maxY <= b.minY + 0.8 || b.maxY <= a.minY + 0.8;
      expect(apart, `${a.text} / ${b.text}`).toBe(true);
    }
}

describe.each(LANGUAGES)('paper in %s', (language) => {
  it('has room for its words: nothing cut short, over an edge, or over other words', async () => {
    const { sheet, prints } = await drawAll(language);
    expectSquareHoldsItsWords(sheet);
    for (const { front, tiled, labels } of prints) {
      expectSquareHoldsItsWords(front[0]);
      for (const page of front) {
        for (const text of textsOf(page).filter(hasWords)) {
          expect(text.text).not.toContain('…');
          const { minX, maxX, maxY } = boxOf(text);
          const isOnPaper = minX > 9.8 && maxX < page.width - 9.8 && maxY < page.height - 9;
          expect(isOnPaper, text.text).toBe(true);
        }
        // The map of the pages is small; its names are one apiece.
        if (page !== front[1]) expectNoTextOverAnother(page);
      }
      expect(textsOf(labels[0])[0].text).not.toContain('…');
      // The words at a cross are kept free 42 mm to its right.
      for (const page of tiled)
        for (const item of itemsOf(page)) {
          if (!/^check\/.*\/across$/.test(item.id ?? '') || item.kind !== 'path') continue;
          const [x, y] = [item.points[0] + 3, item.points[1]];
          const words = textsOf(page).filter(
            (text) => Math.abs(text.x - x - 4) < 1e-6 && Math.abs(text.y - y) < 4,
          );
          expect(words).toHaveLength(2);
          for (const text of words) expect(boxOf(text).maxX, text.text).toBeLessThanOrEqual(x + 42);
        }
    }
  });
});

it('says nothing in English on German paper', async () => {
  const [english, german] = await Promise.all([drawAll('en'), drawAll('de')]);
  const wordsOf = ({ sheet, prints }: typeof english): string[] => [
    sheet.title,
    ...textsOf(sheet).map(({ text }) => text),
    ...prints.flatMap(({ front, tiled, labels }) =>
      [...front, ...tiled, ...labels].flatMap((page) => [
        page.title,
        ...textsOf(page).map(({ text }) => text),
      ]),
    ),
  ];
  const known = new Set(wordsOf(english));
  const shared = wordsOf(german).filter((text) => known.has(text) && /\p{L}{3}/u.test(text));
  expect(shared).toEqual([]);
});

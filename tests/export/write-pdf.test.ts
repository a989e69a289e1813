import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { type Drawing, makeLayer, makePath, makeRectangle, makeText } from '../../src/core/drawing/index.ts';
import { writePdf } from '../../src/core/export/index.ts';
import { correctionFromBars, correctPage, printPieces } from '../../src/core/sheet/index.ts';
import { inEnglish } from '../in-english.ts';
import { askPoppler, type GreyImage, rasterisePdf } from '../rasterise-pdf.ts';
import { samplePieces } from '../sheet/sample-pieces.ts';

const FONT = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
/** PDF's own unit: 1/72 in (ISO 32000-1 §8.3.2.3). */
const POINTS_PER_MM = 72 / 25.4;

function write(pages: Drawing[], title = 'Test'): Promise<Uint8Array> {
  return writePdf({
    say: inEnglish,
    pages,
    title,
    font: FONT,
    fontName: 'DejaVuSans',
    creator: 'Loftseam test',
  });
}

/** 150 × 140 mm with a 100 mm square at (20, 30) and an L that tells up from down. */
const SQUARE: Drawing = {
  width: 150,
  height: 140,
  title: 'square',
  layers: [
    makeLayer('cut', [makeRectangle(20, 30, 100, 100)]),
    makeLayer('sew', [makePath([5, 5, 5, 15, 10, 15])]),
    makeLayer('text', [
      makeText(30, 60, 'Größe 36⅜ ″ ← Łódź', 6),
      makeText(75, 20, 'Middle', 5, { anchor: 'middle' }),
    ]),
  ],
};

/** First and last dark pixel of one row. */
function darkSpan({ width, pixels }: GreyImage, y: number): [number, number] {
  const row = pixels.subarray(y * width, (y + 1) * width);
  return [row.findIndex((value) => value < 128), row.findLastIndex((value) => value < 128)];
}

describe('a 100 mm square', () => {
  it('is 1000 pixels at 254 dpi in both directions, line middle to line middle (poppler)', async () => {
    const [image] = rasterisePdf(await write([SQUARE]), 254);
    // The page itself is rounded up to whole pixels.
    expect(Math.abs(image.width - 1500)).toBeLessThanOrEqual(1);
    expect(Math.abs(image.height - 1400)).toBeLessThanOrEqual(1);
    // Halfway down the square: its left and right sides, lines 0.3 mm thick.
    const [left, right] = darkSpan(image, 1000);
    expect(Math.abs((left + right + 1) / 2 - 700)).toBeLessThanOrEqual(1);
    expect(Math.abs(right - left + 1 - 3 - 1000)).toBeLessThanOrEqual(1);
    const column = Uint8Array.from({ length: image.height }, (_, y) => image.pixels[y * image.width + 1000]);
    const top = column.findIndex((value) => value < 128);
    const bottom = column.findLastIndex((value) => value < 128);
    expect(Math.abs(bottom - top + 1 - 3 - 1000)).toBeLessThanOrEqual(1);
    expect(Math.abs(top + 1.5 - 300)).toBeLessThanOrEqual(1);
  });

  it('stands the right way up: the L is at the top left', async () => {
    const [{ width, pixels }] = rasterisePdf(await write([SQUARE]), 254);
    const isDark = (x: number, y: number): boolean => pixels[y * width + x] < 160;
    expect([isDark(50, 60), isDark(90, 150), isDark(150, 60)]).toEqual([true, true, false]);
  });

  it('comes out true after correction on a printer that prints 198.5 and 200.2 for 200', async () => {
    const correction = correctionFromBars({ x: 198.5, y: 200.2 });
    if (!correction.ok) throw new Error('correction');
    expect(correction.value.x).toBeCloseTo(1.007557, 6);
    expect(correction.value.y).toBeCloseTo(0.999001, 6);
    const [{ layers }] = [correctPage(SQUARE, correction.value)];
    const [item] = layers[0].items;
    if (item.kind !== 'path') throw new Error('path');
    // What that printer makes of it.
    expect(((item.points[2] - item.points[0]) * 198.5) / 200).toBeCloseTo(100, 9);
    expect(((item.points[5] - item.points[3]) * 200.2) / 200).toBeCloseTo(100, 9);
  });
});

describe('correction', () => {
  it('knows the 180 mm bar, and refuses what is scaling to fit (A4 on Letter is 5.9 % off)', () => {
    const fine = correctionFromBars({ x: 178.9, y: 200.2 });
    expect(fine.ok && fine.value.x).toBeCloseTo(180 / 178.9, 9);
    const fit = correctionFromBars({ x: 180 * 0.941, y: 200 * 0.941 });
    expect(fit.ok).toBe(false);
    expect(fit.issues.map(({ code, path }) => [code, path])).toEqual([
      ['print-far-off', 'measured-x'],
      ['print-far-off', 'measured-y'],
    ]);
  });
});

describe('the file', () => {
  it('has pages as large as the drawings, layers by name, letters that can be searched (pdfjs)', async () => {
    const wide: Drawing = { ...SQUARE, width: 914.4, height: 1500, layers: [makeLayer('join', [])] };
    const bytes = await write([SQUARE, wide]);
    const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
    expect(document.numPages).toBe(2);
    for (const [i, { width, height }] of [SQUARE, wide].entries()) {
      const [x0, y0, x1, y1] = (await document.getPage(i + 1)).view;
      expect([x0, y0]).toEqual([0, 0]);
      expect(x1).toBeCloseTo(width * POINTS_PER_MM, 2);
      expect(y1).toBeCloseTo(height * POINTS_PER_MM, 2);
    }
    const config = await document.getOptionalContentConfig();
    const names = [...config].map(([, group]) => (group as { name: string }).name);
    expect(names).toEqual(['Cut lines', 'Sew lines', 'Lettering', 'Joining marks']);
    const { items } = await (await document.getPage(1)).getTextContent();
    expect(items.map((item) => ('str' in item ? item.str : '')).join('|')).toContain('Größe 36⅜ ″ ← Łódź');
  });

  it('embeds a subset of its font and names no date (poppler)', async () => {
    const bytes = await write([SQUARE]);
    const fonts = askPoppler('pdffonts', bytes).split('\n')[2];
    expect(fonts).toMatch(/^[A-Z]{6}\+DejaVuSans\s+CID TrueType\s+Identity-H\s+yes yes yes/);
    const info = askPoppler('pdfinfo', bytes);
    expect(info).toMatch(/Pages:\s+1\n/);
    expect(info).not.toMatch(/CreationDate|ModDate/);
    expect(bytes.length).toBeLessThan(20_000);
  });

  it('is the same bytes for the same drawing', async () => {
    expect(Buffer.compare(await write([SQUARE]), await write([SQUARE]))).toBe(0);
  });

  it('switches a layer off', async () => {
    // The switch itself is the reader's; what must hold is that the square hangs on its group alone.
    const bytes = await write([{ ...SQUARE, layers: SQUARE.layers.slice(0, 1) }]);
    const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
    const page = await document.getPage(1);
    const { fnArray, argsArray } = await page.getOperatorList();
    const { OPS } = await import('pdfjs-dist/legacy/build/pdf.mjs');
    const start = fnArray.indexOf(OPS.beginMarkedContentProps);
    const end = fnArray.indexOf(OPS.endMarkedContent);
    const drawn = fnArray.flatMap((op, i) => (op === OPS.constructPath ? [i] : []));
    expect(argsArray[start][0]).toBe('OC');
    expect(drawn.length).toBeGreaterThan(0);
    expect(drawn.every((i) => i > start && i < end)).toBe(true);
  });

  it('survives odd letters: markup, right-to-left, what the font lacks, control characters', async () => {
    const texts = ['<b>&amp;(\\)', 'שלום', '测试', 'a\u0007b', ''].map((text, i) =>
      makeText(10, 10 + 9 * i, text, 5),
    );
    const bytes = await write([{ ...SQUARE, layers: [makeLayer('text', texts)] }], '<title> (odd) \\');
    expect(askPoppler('pdftotext', bytes)).toContain('<b>&amp;(\\)');
    expect(askPoppler('pdfinfo', bytes)).toContain('<title> (odd) \\');
  });

  it('sets right-to-left words from the right, also beside Latin ones (places of words by poppler)', async () => {
    const bytes = await write([
      {
        ...SQUARE,
        layers: [
          makeLayer('text', [makeText(10, 20, 'Maren שלום עולם 2026', 6), makeText(10, 40, 'مرحبا', 6)]),
        ],
      },
    ]);
    const words = askPoppler('pdftotext', bytes, ['-bbox']).matchAll(/xMin="([\d.]+)"[^>]*>([^<]+)</g);
    const left = new Map([...words].map(([, x, word]) => [word, Number(x)]));
    // -bbox names letters as they stand, from the left.
    const standing = (word: string): string => [...word].reverse().join('');
    const places = ['Maren', standing('עולם'), standing('שלום'), '2026'];
    const inOrder = places.map((word) => left.get(word) ?? Number.NaN);
    // Read from the left: Maren, then the Hebrew phrase with its first word at the right end, then the year.
    expect(inOrder).toEqual([...inOrder].sort((p, q) => p - q));
    expect(inOrder.every(Number.isFinite)).toBe(true);
    expect(left.has(standing('مرحبا'))).toBe(true);
  });

  it('refuses a page longer than the format allows, and numbers that are none', async () => {
    await expect(write([{ ...SQUARE, height: 5081 }])).rejects.toThrow(InvariantError);
    const broken = makeLayer('cut', [makePath([0, 0, Number.NaN, 1])]);
    await expect(write([{ ...SQUARE, layers: [broken] }])).rejects.toThrow(InvariantError);
  });

  it.each(['a4', 'letter', 'both', 'a3', 'ledger', 'a0', 'roll24', 'roll36'])(
    'prints pieces on %s',
    async (paper) => {
      const job = printPieces(
        samplePieces(),
        { say: inEnglish, project: 'P', body: 'b', date: '' },
        { paper },
      );
      if (!job.ok) throw new Error(inEnglish(job.issues[0].message));
      const bytes = await write([...job.value.pages]);
      expect(bytes.length).toBeLessThan(2_000_000);
      expect(Number(/Pages:\s+(\d+)/.exec(askPoppler('pdfinfo', bytes))?.[1])).toBe(job.value.pages.length);
    },
  );
});

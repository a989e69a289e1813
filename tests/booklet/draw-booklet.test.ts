import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { drawBooklet } from '../../src/core/booklet/index.ts';
import { cornersOfText, type Drawing, type DrawingText } from '../../src/core/drawing/index.ts';
import { exportForm } from '../../src/core/files/index.ts';
import { layAll, layTasks } from '../../src/core/laying/index.ts';
import { inEnglish } from '../in-english.ts';
import { sampleForm } from '../picture/sample-form.ts';

/** ISO 216 A4 and A5, Letter of ANSI/ASME Y14.1 and its half; margins of 10 mm. */
const PAPERS = { a4: [210, 297], letter: [215.9, 279.4], a5: [148, 210], half: [139.7, 215.9] } as const;
const MARGIN = 10;
/** 8 pt, the least a maker reads beside the machine; 1 pt = 25.4 / 72 mm. */
const LEAST_LETTERS = (8 * 25.4) / 72;

const form = sampleForm('average', 2000);

const pieces = [...form.pieces, ...form.inside!.pieces];
/** Laid as quickly as can be: the pages matter, not how much cloth they save. */
const plans = layTasks({ ...form, pieces }, {}).flatMap((task) => {
  const laid = layAll({ ...task, budget: 1000 });
  return laid.ok ? [laid.value] : [];
});

function bookletOn([pageWidth, pageHeight]: readonly [number, number]): Drawing[] {
  return drawBooklet(form, {
    plans,
    materials: form.inside!.materials,
    paper: { pageWidth, pageHeight, margin: MARGIN },
    say: inEnglish,
    date: '2026-01-02',
  });
}

const textsOf = ({ layers }: Drawing): DrawingText[] =>
  layers.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item] : [])));

/** Upright box of a text: left, top, right, bottom. */
function boxOf(text: DrawingText): [number, number, number, number] {
  const corners = cornersOfText(text);
  const xs = [0, 2, 4, 6].map((i) => corners[i]);
  const ys = [1, 3, 5, 7].map((i) => corners[i]);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

describe.each(Object.entries(PAPERS))('the booklet on %s', (_, size) => {
  let pages: Drawing[];
  beforeAll(() => {
    pages = bookletOn(size);
  });

  it('has every page as large as the paper, nothing beyond its edges, and no letters under 8 pt', () => {
    for (const page of pages) {
      expect([page.width, page.height]).toEqual([...size]);
      for (const text of textsOf(page)) {
        const [left, top, right, bottom] = boxOf(text);
        expect(left, text.text).toBeGreaterThan(3);
        expect(top, text.text).toBeGreaterThan(3);
        expect(right, text.text).toBeLessThan(size[0] - 3);
        expect(bottom, text.text).toBeLessThan(size[1] - 3);
        expect(text.size, text.text).toBeGreaterThanOrEqual(LEAST_LETTERS);
      }
      for (const { items } of page.layers)
        for (const item of items) {
          if (item.kind !== 'path') continue;
          const isOut = item.points.some((value, i) => !(value > 3 && value < size[i % 2] - 3));
          expect(isOut, item.id).toBe(false);
          // The number of the page stands alone.
          const lowest = Math.max(...item.points.filter((_, i) => i % 2 === 1));
          expect(lowest, item.id).toBeLessThan(size[1] - MARGIN - 3);
        }
    }
  });

  it('writes no line over another', () => {
    for (const page of pages) {
      const boxes = textsOf(page).map((text) => ({ text: text.text, box: boxOf(text) }));
      for (const [i, { text, box: a }] of boxes.entries())
        for (const { text: other, box: b } of boxes.slice(i + 1)) {
          // Ascenders and descenders of neighbouring rows may come near each other.
          const across = Math.min(a[2], b[2]) - Math.max(a[0], b[0]);
          const down = Math.min(a[3], b[3]) - Math.max(a[1], b[1]);
          expect(across > 0.2 && down > 1.2, `${text} | ${other}`).toBe(false);
        }
    }
  });

  it('keeps the words of tables to fill in within their columns', () => {
    const tables = pages.filter(({ title }) => title === 'Filling and readings');
    expect(tables.length).toBeGreaterThan(0);
    for (const page of tables) {
      const lines = page.layers.flatMap(({ items }) => {
        return items.flatMap((item) =>
          item.kind === 'path' && item.points.length === 4 && item.points[0] === item.points[2]
            ? [item.points]
            : [],
        );
      });
      expect(lines.length).toBeGreaterThan(2);
      for (const text of textsOf(page)) {
        const [left, top, right, bottom] = boxOf(text);
        const crossed = lines.filter(([x, from, , to]) => {
          return x > left && x < right && Math.min(from, to) < top && Math.max(from, to) > bottom;
        });
        expect(crossed, text.text).toEqual([]);
      }
    }
  });
});

/** Of the same form and plans, on A4 unless folded. */
const options = {
  formats: ['booklet'],
  papers: ['a4'],
  date: '2026-01-02',
  say: inEnglish,
  font: { name: 'DejaVuSans', bytes: readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf') },
};
const laid = { ...form, laid: plans };

describe('the booklet while it is drawn', () => {
  it('tells how far it is, more with every picture, and stops when it is told to, without an issue', async () => {
    const shares: number[] = [];
    const goesOn = async (share: number) => {
      shares.push(share);
      return shares.length < 3;
    };
    expect(await exportForm(laid, { ...options, goesOn })).toEqual({ ok: false, issues: [] });
    expect(shares.length).toBe(3);
    expect(shares.every((share, i) => share > (shares[i - 1] ?? -1) && share < 1)).toBe(true);
  });

  it('folded has half as many pages, of A4 across', async () => {
    const files = await exportForm(laid, { ...options, print: { booklet: 'folded' } });
    if (!files.ok) throw new Error(inEnglish(files.issues[0].message));
    const content = files.value[0].content as Uint8Array;
    const pdf = await getDocument({ data: content.slice(), useSystemFonts: false }).promise;
    const { items } = await (await pdf.getPage(1)).getTextContent();
    const words = items.map((item) => ('str' in item ? item.str : '')).join(' ');
    const [, single] = /page 1 of (\d+)/.exec(words) ?? [];
    expect(pdf.numPages).toBe(2 * Math.ceil(Number(single) / 4));
    // 1 pt = 25.4 / 72 mm.
    const [, , width, height] = (await pdf.getPage(1)).view.map((points) => (points * 25.4) / 72);
    expect(width).toBeCloseTo(297, 3);
    expect(height).toBeCloseTo(210, 3);
  });
});

describe('the booklet as a file', () => {
  let words: string;
  let pageCount: number;
  let bytes: number;
  beforeAll(async () => {
    const files = await exportForm(form, {
      formats: ['booklet'],
      papers: ['a4'],
      date: '2026-01-02',
      say: inEnglish,
      font: { name: 'DejaVuSans', bytes: readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf') },
    });
    if (!files.ok) throw new Error(inEnglish(files.issues[0].message));
    expect(files.value.map(({ name }) => name)).toEqual(['print-booklet.pdf']);
    const content = files.value[0].content as Uint8Array;
    bytes = content.length;
    const pdf = await getDocument({ data: content.slice(), useSystemFonts: false }).promise;
    pageCount = pdf.numPages;
    const pages: string[] = [];
    for (let n = 1; n <= pageCount; n++) {
      const { items } = await (await pdf.getPage(n)).getTextContent();
      pages.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
    }
    // A sentence may go on over the foot of a page.
    const feet = new RegExp(`${form.project.name} · page \\d+ of \\d+`, 'g');
    words = pages.join(' ').replace(feet, ' ').replace(/\s+/g, ' ');
  });

  it('has at most 24 pages of A4 and 2 MB for the average form with arms', () => {
    expect(pageCount).toBeLessThanOrEqual(24);
    expect(bytes).toBeLessThan(2e6);
  });

  it('tells every step in its order, each sentence, seam, check and caution of it, once in the order of work', () => {
    let from = 0;
    for (const [i, step] of form.making!.steps.entries()) {
      const at = words.indexOf(`${i + 1}. ${inEnglish(step.title)}`, from);
      expect(at, inEnglish(step.title)).toBeGreaterThan(-1);
      from = at;
      for (const sentence of step.text) expect(words).toContain(inEnglish(sentence).replace(/\s+/g, ' '));
      for (const { letter, name } of step.seams) expect(words).toContain(`${letter} ${inEnglish(name)}`);
      for (const { name } of step.checks) expect(words).toContain(inEnglish(name));
      for (const { text } of step.cautions) expect(words.split(inEnglish(text)).length - 1).toBe(1);
    }
  });

  it('leaves a line or a cell to write every level and zone down', () => {
    for (const { name } of [...form.making!.stuffing.targets, ...form.making!.stuffing.zones])
      expect(words).toContain(inEnglish(name));
  });
});

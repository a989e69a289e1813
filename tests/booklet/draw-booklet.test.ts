import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { drawBooklet } from '../../src/core/booklet/index.ts';
import { cornersOfText, type Drawing, type DrawingText } from '../../src/core/drawing/index.ts';
import { exportForm } from '../../src/core/files/index.ts';
import { layAll, layTasks } from '../../src/core/laying/index.ts';
import { inEnglish } from '../in-english.ts';
import { sampleForm } from '../picture/sample-form.ts';

/** ISO 216 A4 and A5, and Letter of ANSI/ASME Y14.1; margins of 10 mm. */
const PAPERS = { a4: [210, 297], letter: [215.9, 279.4], a5: [148, 210] } as const;
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

import { describe, expect, it } from 'vitest';
import { pictureStep, picturesOfSteps } from '../../src/core/booklet/index.ts';
import type { Drawing } from '../../src/core/drawing/index.ts';
import { writeSvg } from '../../src/core/export/index.ts';
import type { WorkStep } from '../../src/core/form/index.ts';
import { inEnglish } from '../in-english.ts';
import { sampleForm } from '../picture/sample-form.ts';

/** With arms, without, and with a shell that bulges most. */
const FORMS = ['average', 'straight', 'large-bust'].map((demo) => {
  // Of fewer triangles the bust's outline is of corners, and longer to write down than that of a form as it is made.
  const form = sampleForm(demo, demo === 'large-bust' ? 6000 : 2000);
  return { demo, form, steps: form.making!.steps, drawings: picturesOfSteps(form, inEnglish) };
});
const [{ form, steps, drawings }] = FORMS;
/** Half of an A5 page beside its words, mm; the smallest letters, mm (8 pt); bytes. Our own limits. */
const ROOM = { width: 145, height: 85 };
const SMALLEST = 2.83;
const MOST_BYTES = 18_000;
/** Steps that show the same on purpose: the form on its stand, and its levels. */
const ALIKE = [
  ['use', 'stand'],
  ['rest', 'tapes'],
];

function textsOf({ layers }: Drawing): string[] {
  return layers.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])));
}

function boldOf({ layers }: Drawing): number {
  return layers.find(({ name }) => name === 'bold')?.items.length ?? 0;
}

/** All that is drawn, without its title. */
function bodyOf(drawing: Drawing): string {
  return writeSvg({ ...drawing, title: '' }, { say: inEnglish, isCompact: true });
}

describe.each(FORMS)('the pictures of the steps of $demo', ({ form, steps, drawings }) => {
  it('are there for every step, with its title, and have room on a page', () => {
    expect(steps.length).toBeGreaterThan(30);
    expect([...drawings.keys()]).toEqual(steps.map(({ id }) => id));
    for (const step of steps) {
      const drawing = drawings.get(step.id)!;
      expect(drawing.title).toBe(inEnglish(step.title));
      expect(drawing.layers.length).toBeGreaterThan(1);
      expect(drawing.width, step.id).toBeLessThanOrEqual(ROOM.width);
      expect(drawing.height, step.id).toBeLessThanOrEqual(ROOM.height);
      expect(writeSvg(drawing, { say: inEnglish, isCompact: true }).length, step.id).toBeLessThan(MOST_BYTES);
    }
  });

  it('have no letters smaller than 8 pt, and none outside the picture', () => {
    for (const [id, { layers, width, height }] of drawings) {
      for (const item of layers.flatMap(({ items }) => items)) {
        if (item.kind !== 'text') continue;
        expect(item.size, id).toBeGreaterThanOrEqual(SMALLEST);
        expect(item.x > 0 && item.x < width && item.y > 0 && item.y < height, `${id}: ${item.text}`).toBe(
          true,
        );
      }
    }
  });

  it('are each of a kind of their own, and none is the form as it merely stands', () => {
    const plain = pictureStep(form, { ...steps[0], id: 'something-new', seams: [], pieces: [] }, inEnglish);
    const stepOf = new Map([[bodyOf(plain), 'something-new']]);
    for (const [id, drawing] of drawings) {
      const body = bodyOf(drawing);
      const other = stepOf.get(body);
      if (other && ALIKE.some((pair) => pair.includes(other) && pair.includes(id))) continue;
      expect(other, id).toBeUndefined();
      stepOf.set(body, id);
    }
  });
});

describe('the picture of a step', () => {
  it('is the same drawn alone and among all', () => {
    for (const id of ['cloth', 'sew-side', 'sew-closing', 'supports']) {
      const step = steps.find((one) => one.id === id)!;
      expect(bodyOf(pictureStep(form, step, inEnglish))).toBe(bodyOf(drawings.get(id)!));
    }
  });

  it('shows what is sewn in bold, with its letters: up to six on the form, all of them on flat pieces', () => {
    const sewing = steps.filter(({ seams }) => seams.some(({ kind }) => kind === 'shell'));
    expect(sewing.length).toBeGreaterThan(4);
    for (const step of sewing) {
      const drawing = drawings.get(step.id)!;
      const letters = step.seams.map(({ letter }) => letter);
      const shown = new Set(textsOf(drawing));
      expect(boldOf(drawing)).toBeGreaterThan(0);
      expect(
        letters.slice(0, 6).filter((letter) => !shown.has(letter)),
        step.id,
      ).toEqual([]);
      expect([...shown].filter((text) => /^[A-Z]{1,2}$/.test(text) && !letters.includes(text))).toEqual([]);
    }
  });

  it('of the sleeve names every line that something is sewn to', () => {
    const step = steps.find(({ id }) => id === 'sew-sleeve')!;
    const shown = textsOf(drawings.get('sew-sleeve')!);
    for (const letter of new Set(step.seams.map((seam) => seam.letter))) expect(shown).toContain(letter);
  });

  it('of cloth and first page shows the lengths that the step asks for', () => {
    // 400 mm; bars and square of the cover, as the order of work says them.
    expect(textsOf(drawings.get('cloth')!)).toEqual(['40.0 cm', '40.0 cm']);
    const asked = steps.find(({ id }) => id === 'print')!.checks.map(({ value }) => `${value / 10}.0 cm`);
    expect(textsOf(drawings.get('print')!).toSorted()).toEqual(asked.toSorted());
  });

  it('shows the closing line gaping in every step on the form before it is sewn', () => {
    // What gapes shows the wrong side of the cloth behind it: more of it than where no step is left that closes the shell.
    const left = steps.filter(({ id }) => id !== 'sew-closing' && id !== 'turn-out');
    const closed = { ...form, making: { ...form.making!, steps: left } };
    for (const id of ['trial', 'sew-shoulder', 'sew-neck', 'sew-closing']) {
      const step = steps.find((one) => one.id === id)!;
      const open = areaOf(drawings.get(id)!, WRONG_SIDE);
      expect(open, id).toBeGreaterThan(1.3 * areaOf(pictureStep(closed, step, inEnglish), WRONG_SIDE));
    }
  });

  it('of filling shows more filled with each zone', () => {
    const filled = steps
      .filter(({ phase, id }) => phase === 'fill' && id.startsWith('fill-'))
      .map(({ id }) => areaOf(drawings.get(id)!, FILLED));
    expect(filled.length).toBeGreaterThan(4);
    expect(filled.toSorted((a, b) => a - b)).toEqual(filled);
    expect(filled[0]).toBeLessThan(0.5 * filled[filled.length - 1]);
  });

  it('of an unknown step is the form as it stands', () => {
    const unknown: WorkStep = { ...steps[0], id: 'something-new', seams: [], pieces: [] };
    const { width, height } = pictureStep(form, unknown, inEnglish);
    expect(width).toBeGreaterThan(30);
    expect(height).toBeGreaterThan(60);
  });
});

/** Tints of filled cloth and of cloth's wrong side. */
const FILLED = '#dcdcdc';
const WRONG_SIDE = '#bdbdbd';

/** Area in a tint, mm². */
function areaOf({ layers }: Drawing, tint: string): number {
  const items = layers.find(({ name }) => name === 'fill')?.items ?? [];
  return items.reduce((sum, item) => {
    if (item.kind !== 'path' || item.style?.fill !== tint) return sum;
    const p = item.points;
    let twice = 0;
    for (let i = 0; i < p.length; i += 2) {
      const j = (i + 2) % p.length;
      twice += p[i] * p[j + 1] - p[j] * p[i + 1];
    }
    return sum + Math.abs(twice) / 2;
  }, 0);
}

import { describe, expect, it } from 'vitest';
import { pictureStep } from '../../src/core/booklet/index.ts';
import type { Drawing } from '../../src/core/drawing/index.ts';
import type { WorkStep } from '../../src/core/form/index.ts';
import { inEnglish } from '../in-english.ts';
import { sampleForm } from '../picture/sample-form.ts';

const form = sampleForm('average', 2000);
const steps = form.making!.steps;
const drawings = new Map(steps.map((step) => [step.id, pictureStep(form, step, inEnglish)]));
/** Wide enough for A4 between margins of 15 mm; a page's height less its title. */
const ROOM = { width: 180, height: 200 };

function textsOf({ layers }: Drawing): string[] {
  return layers.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])));
}

function boldOf({ layers }: Drawing): number {
  return layers.find(({ name }) => name === 'bold')?.items.length ?? 0;
}

describe('the picture of a step', () => {
  it('is there for every step, with its title, and has room on a page', () => {
    expect(steps.length).toBeGreaterThan(25);
    for (const step of steps) {
      const { width, height, title, layers } = drawings.get(step.id)!;
      expect(title).toBe(inEnglish(step.title));
      expect(layers.length).toBeGreaterThan(1);
      expect(width).toBeLessThan(ROOM.width);
      expect(height).toBeLessThan(ROOM.height);
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
      // On the form in space a seam of the far side may be hidden; half of them are seen.
      const seen = letters.filter((letter) => shown.has(letter));
      const isFlat = step.seams.every((seam) => seam.isFlat);
      expect(seen.length).toBeGreaterThanOrEqual(isFlat ? letters.length : Math.min(6, letters.length) / 2);
      expect([...shown].filter((text) => /^[A-Z]{1,2}$/.test(text) && !letters.includes(text))).toEqual([]);
    }
  });

  it('of filling shows more filled with each zone', () => {
    const filled = steps
      .filter(({ phase, id }) => phase === 'fill' && id.startsWith('fill-'))
      .map(({ id }) => darkOf(drawings.get(id)!));
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

/** Area in the tint of filled cloth, mm². */
function darkOf({ layers }: Drawing): number {
  const items = layers.find(({ name }) => name === 'fill')?.items ?? [];
  return items.reduce((sum, item) => {
    if (item.kind !== 'path' || item.style?.fill !== '#dcdcdc') return sum;
    const p = item.points;
    let twice = 0;
    for (let i = 0; i < p.length; i += 2) {
      const j = (i + 2) % p.length;
      twice += p[i] * p[j + 1] - p[j] * p[i + 1];
    }
    return sum + Math.abs(twice) / 2;
  }, 0);
}

import { describe, expect, it } from 'vitest';
import average from '../../../shared/demos/average.loftseam.json' with { type: 'json' };
import broadChest from '../../../shared/demos/broad-chest.loftseam.json' with { type: 'json' };
import unevenShoulders from '../../../shared/demos/uneven-shoulders.loftseam.json' with { type: 'json' };
import { measures } from '../../../src/app/language/german/measures.ts';
import { german } from '../../../src/app/language/german.ts';
import { createNumbers } from '../../../src/app/language/index.ts';
import { createTranslator } from '../../../src/app/language/translate.ts';
import { MEASURES, SHAPE_CATEGORIES } from '../../../src/core/body/index.ts';
import { CLOTHS } from '../../../src/core/flatten/index.ts';
import type { Form } from '../../../src/core/form/index.ts';
import { makeForm } from '../../../src/core/pipeline/index.ts';
import { parseProject } from '../../../src/core/project/index.ts';
import { LAYOUTS } from '../../../src/core/seams/index.ts';
import { type Correction, wordCorrection } from '../../../src/core/simulate/index.ts';
import { CAUTIONS } from '../../../src/core/supports/index.ts';

const { core } = german;

/** A whole form, coarse, and what was told while it was made. */
function make(demo: object, layout?: string): { form: Form; told: string[] } {
  const read = parseProject(JSON.stringify(demo));
  if (!read.ok) throw new Error(read.issues[0].message);
  const seams = layout === undefined ? read.value.seams : { ...read.value.seams, layout };
  const told: string[] = [];
  const made = makeForm(
    { ...read.value, seams },
    { targetTriangles: 3000, onProgress: (_fraction, _stage, what) => void told.push(what) },
  );
  if (!made.ok) throw new Error(made.issues[0].message);
  return { form: made.value, told };
}

/** Names and sentences the app shows of a form. */
function textsOf({ form, told }: ReturnType<typeof make>): string[] {
  const steps = form.workshop?.steps ?? [];
  return [
    ...told,
    ...form.report.issues.map(({ message }) => message),
    ...[form.shell.panels, form.shell.seams, form.shell.levels].flat().map(({ name }) => name),
    ...(form.inside?.pieces ?? []).map(({ name }) => name),
    ...(form.inside?.shape.braces ?? []).map(({ name }) => name),
    ...(form.inside?.materials ?? []).flatMap(({ name, note }) => (note ? [name, note] : [name])),
    ...(form.workshop?.stuffing.zones ?? []).map(({ name }) => name),
    ...form.report.panels.flatMap(({ cloth }) => cloth.zones.map(({ message }) => message)),
    ...steps.flatMap(({ title, text, checks, seams, pieces }) => [
      title,
      ...text,
      ...checks.map(({ name }) => name),
      ...seams.flatMap(({ name, note }) => (note ? [name, note] : [name])),
      ...pieces.map(({ name }) => name),
    ]),
  ];
}

const figuresIn = (text: string): string[] => (text.match(/\d+(\.\d+)?/g) ?? []).sort();

describe('what the core says, in German', () => {
  it('knows every measure, question of shape, layout, cloth and caution', () => {
    for (const measure of MEASURES) {
      const { name, how } = core.measure(measure);
      expect([name, how], measure.id).not.toContain(measure.name);
      expect(how, measure.id).not.toBe(measure.how);
      expect(measures[measure.id]?.english).toBe(measure.name);
    }
    for (const category of SHAPE_CATEGORIES) {
      const { name, why } = core.category(category);
      expect(name, category.id).not.toBe(category.name);
      expect(why, category.id).not.toBe(category.why);
      for (const choice of category.choices)
        expect(core.choice(category, choice), `${category.id}.${choice.id}`).not.toBe(choice.name);
    }
    for (const layout of LAYOUTS) {
      expect(core.layout(layout).name, layout.id).not.toBe(layout.name);
      expect(core.layout(layout).description, layout.id).not.toBe(layout.description);
    }
    for (const cloth of CLOTHS) expect(core.cloth(cloth), cloth.id).not.toBe(cloth.name);
    for (const caution of CAUTIONS) {
      const said = core.caution(caution);
      expect(said.text, caution.id).not.toBe(caution.text);
      // A figure in a caution is what keeps people unhurt.
      expect(figuresIn(said.text), caution.id).toEqual(figuresIn(caution.text));
    }
  });

  it.each([
    ['an average figure with arms', average, undefined],
    ['a flat chest', broadChest, 'upright12BustWaist'],
    ['unlike shoulders', unevenShoulders, 'upright16'],
    ['a yoke', average, 'upright8Yoke'],
  ] as const)('says everything shown of %s, with the same figures', (_, demo, layout) => {
    const texts = new Set(textsOf(make(demo, layout)));
    expect(texts.size).toBeGreaterThan(150);
    expect([...texts].filter((text) => core.text(text) === text)).toEqual([]);
    for (const text of texts) expect(figuresIn(core.text(text)), text).toEqual(figuresIn(text));
  });

  it('uses the words of the trade', () => {
    // Terms of dressmaking, common practice in German.
    expect(core.name('princess front')).toBe('Wiener Naht vorn');
    expect(core.name('side front right')).toBe('Seitenteil vorn rechts');
    expect(core.name('lower centre back left')).toBe('Mittelteil hinten unten links');
    expect(measures.bustGirth?.name).toBe('Brustumfang');
    expect(german.panels.seamAllowance).toBe('Nahtzugabe');
    expect(german.grain.title).toBe('Fadenlauf');
  });

  it('corrects a form as the core does, figure by figure', () => {
    const numbers = createNumbers('de');
    const change = { change: -4, depth: -6.4, width: 5.2 };
    const seam = { kind: 'seam', levelId: 'waist', off: 12, each: 1.5, letters: ['A', 'B'] } as const;
    const corrections = [
      { kind: 'misread', levelId: 'hip', girth: 500, least: 801.5, most: 1002.5 },
      { kind: 'growth', share: 0.0123, growth: 0.0145 },
      { kind: 'scale', share: -0.0205 },
      {
        kind: 'fill',
        levelId: 'hip',
        off: 13,
        mass: -0.123,
        zones: ['waist-hip', 'hip-base'],
        isAlone: true,
      },
      { kind: 'fill', levelId: 'hip', off: -7.4, mass: 1.25, zones: ['waist-hip'], isAlone: false },
      { kind: 'shape', levelId: 'bust', widthOff: -8, depthOff: 9.5, change: null, ties: [] },
      {
        kind: 'shape',
        levelId: 'bust',
        widthOff: -8,
        depthOff: 9.5,
        change,
        ties: [{ name: 'left web', change: -4 }],
      },
      { ...seam, isPossible: true, isFilled: true },
      { ...seam, off: -12, each: -1.5, isPossible: false, isFilled: false },
    ] as unknown as readonly Correction[];
    for (const unit of ['cm', 'in'] as const) {
      for (const correction of corrections) {
        const [told, said] = [
          wordCorrection(correction, (id) => id, unit),
          core.correction(correction, (id) => id, unit, numbers),
        ];
        const [a, b] = [`${told.title} ${told.text}`, `${said.title} ${said.text}`];
        expect(b).not.toBe(a);
        expect(figuresIn(b.replaceAll(/(\d),(?=\d)/g, '$1.')), b).toEqual(figuresIn(a));
      }
    }
  });
});

describe('finding words', () => {
  const find = createTranslator(
    [
      ['needle', 'Nadel'],
      ['{a:text} and {b:text}', '{b} und {a}'],
      ['cut {n:num} of {p:name}', '{p}: {n} schneiden'],
      ['the {s:side} sleeve', 'der {s} Ärmel'],
    ],
    { side: { left: 'linke', right: 'rechte' } },
  );

  it('fits a phrase whole or not at all', () => {
    expect(find('Needle')).toBe('Nadel');
    expect(find('needle and the left sleeve')).toBe('der linke Ärmel und Nadel');
    expect(find('needle and thread')).toBe('needle and thread');
    expect(find('the upper sleeve')).toBe('the upper sleeve');
  });

  it('keeps names that are the maker’s own, and figures', () => {
    expect(find('cut 2.5 of needle')).toBe('Nadel: 2.5 schneiden');
    expect(find('cut 12 of Mother’s coat')).toBe('Mother’s coat: 12 schneiden');
    expect(find('cut two of needle')).toBe('cut two of needle');
  });
});

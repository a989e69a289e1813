import { describe, expect, it } from 'vitest';
import {
  describeBodies,
  type KeptBody,
  type KeptCard,
  layOutWardrobe,
  type WardrobeOrder,
} from '../../src/app/store/index.ts';
import { serializeProject } from '../../src/core/project/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

type Project = ReturnType<typeof projectForTests>;

const NO_CARDS: ReadonlyMap<string, KeptCard> = new Map();

function kept(id: string, at: number, change: Partial<Project>): KeptBody {
  const project = { ...projectForTests(), name: id, ...change };
  return { id, name: project.name, at, text: serializeProject(project) };
}

const measures = (bustGirth: number, waistGirth: number, hipGirth: number): Partial<Project> => ({
  body: { ...projectForTests().body, measures: { bustGirth, waistGirth, hipGirth } },
});

function names(bodies: readonly KeptBody[], asked: { order?: WardrobeOrder; search?: string } = {}) {
  const { order = 'changed', search = '' } = asked;
  const cards = layOutWardrobe(describeBodies({ bodies, cards: NO_CARDS }), { order, search, locale: 'en' });
  return cards.map(({ bodies: own }) => own.map(({ body }) => body.id));
}

describe('the wardrobe', () => {
  it('puts bodies of one person on one card, newest first, and leaves others apart', () => {
    const bodies = [
      kept('plain', 1, { person: { name: 'Odile' } }),
      kept('Odile', 2, {}),
      kept('corset', 3, { person: { name: ' Odile ', label: 'over the corset' } }),
      kept('other', 4, { person: { name: 'Bram' } }),
    ];
    expect(names(bodies)).toEqual([['other'], ['corset', 'plain'], ['Odile']]);
  });

  it('orders by last change, by name as people read it, and by size', () => {
    const bodies = [
      kept('Act 10', 1, measures(900, 700, 980)),
      kept('Éloise', 2, measures(900, 690, 980)),
      kept('Act 9', 3, measures(1100, 900, 1100)),
      kept('zoe', 4, { body: { ...projectForTests().body, measures: {} } }),
      kept('Ezra', 5, measures(900, 690, 960)),
    ];
    expect(names(bodies).flat()).toEqual(['Ezra', 'zoe', 'Act 9', 'Éloise', 'Act 10']);
    // Numbers by their value, accents beside their letter: the root order of Unicode's CLDR, as Intl.Collator has it.
    expect(names(bodies, { order: 'name' }).flat()).toEqual(['Act 9', 'Act 10', 'Éloise', 'Ezra', 'zoe']);
    expect(names(bodies, { order: 'size' }).flat()).toEqual(['Ezra', 'Éloise', 'Act 10', 'Act 9', 'zoe']);
  });

  it('finds every word in name, person or label, whatever its accents and capitals', () => {
    const bodies = [
      kept('a', 1, { name: 'Second act', person: { name: 'Éloise', label: 'Over the corset' } }),
      kept('b', 2, { name: 'First act', person: { name: 'Éloise' } }),
      kept('c', 3, { name: 'Bram' }),
    ];
    expect(names(bodies, { search: 'eloise' })).toEqual([['b', 'a']]);
    expect(names(bodies, { search: 'CORSET elo' })).toEqual([['a']]);
    expect(names(bodies, { search: 'bram act' })).toEqual([]);
    expect(names(bodies, { search: '  ' }).flat()).toHaveLength(3);
  });

  it('tells size, and how far the making has got', () => {
    const entry = { date: '2026-03-14', state: 'filled', levels: {} } as const;
    const body = kept('a', 1, {
      ...measures(930, 765, 1010),
      making: { done: ['use', 'print', 'arms'] },
      checking: { entries: [entry, entry] },
    });
    const told = (cards: ReadonlyMap<string, KeptCard>) =>
      layOutWardrobe(describeBodies({ bodies: [body], cards }), {
        order: 'name',
        search: '',
        locale: 'en',
      })[0].bodies[0];
    expect(told(NO_CARDS)).toMatchObject({
      ...{ size: [930, 765, 1010], measured: 3, isPrinted: true, steps: null, ticked: 3, readings: 2 },
    });
    // A step that may be left out counts for neither.
    const card = { id: 'a', picture: null, steps: ['use', 'print', 'cut', 'sew'] };
    expect(told(new Map([['a', card]])).steps).toEqual({ done: 2, all: 4 });
  });

  it('takes the mean of left and right, and shows what cannot be read by its name alone', () => {
    const sided = kept('sided', 2, {
      body: { ...projectForTests().body, measures: { bustGirth: { left: 900, right: 910 } } },
    });
    const texts = ['{"format":', 'null', '[]', '{"person":7,"body":{"measures":3},"making":{"done":"x"}}'];
    const broken = texts.map((text, i) => ({ id: `broken ${i}`, name: 'Hurt', at: -i, text }));
    const [first, ...rest] = describeBodies({ bodies: [sided, ...broken], cards: NO_CARDS });
    expect(first.size).toEqual([905, null, null]);
    expect(rest).toHaveLength(4);
    for (const card of rest)
      expect(card).toMatchObject({ size: [null, null, null], person: null, measured: 0, ticked: 0 });
  });
});

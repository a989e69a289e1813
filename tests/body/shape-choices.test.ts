import { describe, expect, it } from 'vitest';
import { type Figure, fitBody, SHAPE_CATEGORIES, shapeCategoriesOf } from '../../src/core/body/index.ts';

const MEASURES = {
  bustGirth: 1000,
  waistGirth: 860,
  hipGirth: 1000,
  backWaistLength: 440,
  neckBaseGirth: 400,
};

function numbersOf(figure: Figure, shape: Readonly<Record<string, string>>): string {
  const fitted = fitBody({ figure, measures: MEASURES, shape });
  if (!fitted.ok) throw new Error('no body');
  return JSON.stringify(fitted.value.shape);
}

/** The last answer is the strongest. */
function strongest(id: string): string {
  return SHAPE_CATEGORIES.find((one) => one.id === id)?.choices.at(-1)?.id ?? '';
}

import { QUESTIONS } from '../../src/core/body/shape-questions.ts';

it('every question stands under one part', () => {
  // Four sections and all others.
  expect(new Set(SHAPE_CATEGORIES.map(({ id }) => id)).size).toBe(4 + QUESTIONS.length);
  expect(SHAPE_CATEGORIES.length).toBe(4 + QUESTIONS.length);
});

describe('questions of shape', () => {
  it.each(['bust', 'chest'] as const)('are those that change a body with a %s, and no others', (figure) => {
    const plain = numbersOf(figure, {});
    const changing = SHAPE_CATEGORIES.filter(({ id, choices, onlyWith }) => {
      // Some change a body only beside another answer.
      const beside: Record<string, string> = onlyWith ? { [onlyWith]: strongest(onlyWith) } : {};
      const before = onlyWith ? numbersOf(figure, beside) : plain;
      // The strongest first, which is most likely to change it.
      return choices
        .toReversed()
        .some((choice) => numbersOf(figure, { ...beside, [id]: choice.id }) !== before);
    });
    expect(shapeCategoriesOf(figure).map(({ id }) => id)).toEqual(changing.map(({ id }) => id));
    expect(changing.length).toBe(figure === 'bust' ? 34 : 27);
  });

  it('of a hump’s height only who has a hump is asked', () => {
    const idsOf = (shape: Readonly<Record<string, string | number>>) =>
      shapeCategoriesOf('chest', shape).map(({ id }) => id);
    expect(idsOf({})).not.toContain('humpBelow');
    expect(idsOf({ hump: 'none' })).not.toContain('humpBelow');
    expect(idsOf({ hump: 0 })).not.toContain('humpBelow');
    expect(idsOf({ hump: 20 })).toContain('humpBelow');
    expect(idsOf({ hump: 'slight' })).toContain('humpBelow');
  });

  it.each(['bust', 'chest'] as const)(
    'answered as usual, all change no bit of a body with a %s',
    (figure) => {
      const usual = Object.fromEntries(shapeCategoriesOf(figure).map((one) => [one.id, one.usual]));
      expect(numbersOf(figure, usual)).toBe(numbersOf(figure, {}));
      const fitted = fitBody({ figure, measures: MEASURES, shape: usual });
      expect(fitted.ok && fitted.value.shape.isMirrorSymmetric).toBe(true);
    },
  );

  it.each([
    ['breastLeft', 'half'],
    ['breastLevels', 'rightHigher'],
    ['trunkShift', 'left'],
    ['trunkTurn', 'rightForward'],
  ])('%s makes the sides unlike', (id, answer) => {
    const fitted = fitBody({ figure: 'bust', measures: MEASURES, shape: { [id]: answer } });
    expect(fitted.ok && fitted.value.shape.isMirrorSymmetric).toBe(false);
  });

  it('both breasts smaller alike leave the sides alike', () => {
    const shape = { breastLeft: 'half', breastRight: 'half' };
    const fitted = fitBody({ figure: 'bust', measures: MEASURES, shape });
    expect(fitted.ok && fitted.value.shape.isMirrorSymmetric).toBe(true);
  });
});

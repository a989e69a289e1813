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

describe('questions of shape', () => {
  it.each(['bust', 'chest'] as const)('are those that change a body with a %s, and no others', (figure) => {
    const plain = numbersOf(figure, {});
    const changing = SHAPE_CATEGORIES.filter(({ id, choices }) =>
      choices.some((choice) => numbersOf(figure, { [id]: choice.id }) !== plain),
    );
    expect(shapeCategoriesOf(figure).map(({ id }) => id)).toEqual(changing.map(({ id }) => id));
    expect(changing.length).toBe(figure === 'bust' ? 14 : 12);
  });
});

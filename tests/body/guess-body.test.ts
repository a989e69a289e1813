import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type BodyInput, type GuessedBody, guessBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { cauchyGirth, denseRow } from './measure-surface.ts';

const survey = JSON.parse(readFileSync('shared/survey/statistics.json', 'utf8'));
const place = (id: string) => survey.variables.indexOf(id);

function guessOrThrow(input: BodyInput): GuessedBody {
  const guessed = guessBody(input);
  if (!guessed.ok) throw new Error(guessed.issues.map(({ code }) => code).join());
  return guessed.value;
}

const levelGirth = ({ body }: GuessedBody, level: string) => {
  const { v } = body.levels.find(({ id }) => id === level) ?? { v: Number.NaN };
  return cauchyGirth(denseRow(surfaceOfBody(body), v));
};

describe.each(['bust', 'chest'] as const)('a body guessed for the figure %s', (figure) => {
  const { mean, covariance } = survey[figure];

  it('is usual in all five while nothing is typed', () => {
    const guessed = guessOrThrow({ figure, measures: {} });
    expect(Object.keys(guessed.estimates)).toHaveLength(5);
    for (const [id, estimate] of Object.entries(guessed.estimates)) {
      expect(estimate.mean, id).toBeCloseTo(mean[place(id)], 6);
      expect(estimate.spread, id).toBeCloseTo(Math.sqrt(covariance[place(id)][place(id)]), 6);
    }
    expect(Math.abs(levelGirth(guessed, 'bust') - mean[place('bustGirth')])).toBeLessThan(0.5);
  });

  it('follows a typed girth by the regression line of the survey, and keeps what is typed', () => {
    const guessed = guessOrThrow({ figure, measures: { bustGirth: 1080 } });
    // The line of least squares through two variables (any statistics book): y = m + s₁₂ / s₁₁ (x − m₁), s₂₂ − s₁₂² / s₁₁.
    const [x, y] = [place('bustGirth'), place('waistGirth')];
    const slope = covariance[x][y] / covariance[x][x];
    const expected = mean[y] + slope * (1080 - mean[x]);
    expect(guessed.estimates.waistGirth?.mean).toBeCloseTo(expected, 6);
    const left = covariance[y][y] - slope * covariance[x][y];
    expect(guessed.estimates.waistGirth?.spread).toBeCloseTo(Math.sqrt(left), 6);
    expect(guessed.estimates.bustGirth).toBeUndefined();
    // The surface itself is measured: by Cauchy's mean-width formula, within what a tape is met by.
    expect(Math.abs(levelGirth(guessed, 'bust') - 1080)).toBeLessThan(0.5);
    expect(Math.abs(levelGirth(guessed, 'waist') - expected)).toBeLessThan(0.5);
  });
});

it('takes the place of nothing that is typed wrong', () => {
  const guessed = guessBody({ figure: 'bust', measures: { waistGirth: -10 } });
  expect(guessed.ok).toBe(false);
  expect(guessed.ok ? [] : guessed.issues.map(({ code }) => code)).toEqual(['measure-not-positive']);
});

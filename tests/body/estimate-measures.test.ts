import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import statistics from '../../shared/survey/statistics.json' with { type: 'json' };
import { estimateMeasures } from '../../src/core/body/index.ts';

const at = (id: string): number => statistics.variables.indexOf(id);

describe('estimateMeasures', () => {
  it('with one value known is the textbook regression line and its residual spread', () => {
    const { mean, covariance } = statistics.bust;
    const [x, y] = [at('bustGirth'), at('hipGirth')];
    const slope = covariance[x][y] / covariance[x][x];
    const { hipGirth } = estimateMeasures('bust', { bustGirth: 1000 });
    expect(hipGirth.mean).toBeCloseTo(mean[y] + slope * (1000 - mean[x]), 6);
    expect(hipGirth.spread).toBeCloseTo(Math.sqrt(covariance[y][y] - slope * covariance[x][y]), 6);
  });

  it('with nothing known is the survey’s mean; never widens as more is known', () => {
    const none = estimateMeasures('chest', {});
    expect(none.waistGirth.mean).toBeCloseTo(statistics.chest.mean[at('waistGirth')], 9);
    const some = estimateMeasures('chest', { bustGirth: 1000, hipGirth: 1000 });
    for (const [id, { spread }] of Object.entries(some)) {
      expect(spread, id).toBeLessThanOrEqual(none[id].spread + 1e-9);
    }
  });

  it('agrees with means over people of the survey sample that never entered a formula here', () => {
    // NATICK/TR-89/044 sample rows shipped in shared/survey; columns as named there.
    const [head, ...rows] = readFileSync('shared/survey/survey1988-women.csv', 'utf8').trim().split('\n');
    const column = head.split(',').indexOf('chestcircumference');
    const sample = rows.map((r) => Number(r.split(',')[column]));
    const mean = sample.reduce((a, b) => a + b, 0) / sample.length;
    const { bustGirth } = estimateMeasures('bust', {});
    // Within three standard errors of the mean.
    expect(Math.abs(mean - bustGirth.mean)).toBeLessThan((3 * bustGirth.spread) / Math.sqrt(sample.length));
  });
});

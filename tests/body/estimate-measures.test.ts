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

  it('with the waist at the navel agrees with the navel’s own columns, person by person', () => {
    // NATICK/TR-89/044 sample rows shipped in shared/survey: the regression of navel columns made afresh from these rows.
    const [head, ...rows] = readFileSync('shared/survey/survey1988-women.csv', 'utf8').trim().split('\n');
    const names = head.split(',');
    const column = (name: string) => rows.map((r) => Number(r.split(',')[names.indexOf(name)]));
    const [bust, waist, hip, back] = [
      'chestcircumference',
      'waistcircumference',
      'buttockcircumference',
      'waistbacklength',
    ].map(column);
    const rise = column('cervicaleheight').map((z, i) => z - column('waistheightomphalion')[i]);
    const misses = { waistGirth: [] as number[], backWaistLength: [] as number[], napeRise: [] as number[] };
    rows.forEach((_, i) => {
      const known = { bustGirth: bust[i], hipGirth: hip[i] };
      const estimates = estimateMeasures('bust', known, 'navel');
      misses.waistGirth.push((waist[i] - estimates.waistGirth.mean) / estimates.waistGirth.spread);
      misses.backWaistLength.push(
        (back[i] - estimates.backWaistLength.mean) / estimates.backWaistLength.spread,
      );
      misses.napeRise.push((rise[i] - estimates.napeRise.mean) / estimates.napeRise.spread);
    });
    for (const [id, list] of Object.entries(misses)) {
      const mean = list.reduce((a, b) => a + b, 0) / list.length;
      const rms = Math.sqrt(list.reduce((a, b) => a + b * b, 0) / list.length);
      // Three standard errors of a mean, and of a standard deviation, over 60 people.
      expect(Math.abs(mean), id).toBeLessThan(0.39);
      expect(Math.abs(rms - 1), id).toBeLessThan(0.3);
    }
  });

  it('puts an elastic waist between the narrowest and the navel', () => {
    for (const figure of ['bust', 'chest'] as const) {
      const [narrowest, elastic, navel] = (['narrowest', 'elastic', 'navel'] as const).map((waist) =>
        estimateMeasures(figure, { bustGirth: 950 }, waist),
      );
      for (const id of ['waistGirth', 'backWaistLength', 'napeRise', 'sideLength']) {
        expect(elastic[id].mean, id).toBeGreaterThan(narrowest[id].mean);
        expect(elastic[id].mean, id).toBeLessThan(navel[id].mean);
      }
    }
  });
});

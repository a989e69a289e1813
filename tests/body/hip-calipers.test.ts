import { describe, expect, it } from 'vitest';
import { measuresOfRow, readSurveyRows, type SurveyRow } from '../../src/cli/survey-columns.ts';
import type { Figure } from '../../src/core/body/index.ts';
import { fitOrThrow } from './read-demo.ts';

function meanAndError(values: readonly number[]): { readonly mean: number; readonly error: number } {
  const n = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1);
  return { mean, error: Math.sqrt(variance / n) };
}

// Calipers of the 1988 survey (shared/survey/SOURCE.md), every second of its sample: within 3 mm and two standard errors.
describe('the hip of a faired body, against calipers', () => {
  it.each<[Figure, string]>([
    ['bust', 'women'],
    ['chest', 'men'],
  ])('%s: %s', (figure, who) => {
    const rows = readSurveyRows(`shared/survey/survey1988-${who}.csv`).filter((_, i) => i % 2 === 0);
    const offBy = (row: SurveyRow): readonly [number, number] => {
      const { hip } = fitOrThrow({ figure, measures: measuresOfRow(row, figure) }, { fair: true }).sections;
      return [hip.width - row.hipbreadth, hip.depth - row.buttockdepth];
    };
    const off = rows.map(offBy);
    for (const axis of [0, 1] as const) {
      const { mean, error } = meanAndError(off.map((one) => one[axis]));
      expect(Math.abs(mean)).toBeLessThan(3 + 2 * error);
    }
  });
});

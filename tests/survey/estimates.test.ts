import { describe, expect, it } from 'vitest';
import { fitBody } from '../../src/core/body/index.ts';
import { inEnglish } from '../in-english.ts';
import {
  firstMeasureIds,
  measuresOfSurveyRow,
  projectFromSurveyRow,
  readSurvey,
  type SurveyFile,
} from './project-from-survey-row.ts';

/**
 * Bodies made from five measures only, against what the survey's measurers read on the same people. An honest estimate
 * misses by its own spread: (found − measured) / spread has mean 0 and root mean square 1.
 */
function missesInSpreads(file: SurveyFile, figure: 'bust' | 'chest'): Map<string, number[]> {
  const misses = new Map<string, number[]>();
  for (const row of readSurvey(file).filter((_, i) => i % 2 === 0)) {
    const measured = measuresOfSurveyRow(row);
    const body = fitBody(projectFromSurveyRow(row, figure, firstMeasureIds).body);
    if (!body.ok) throw new Error(`line ${row.row}: ${inEnglish(body.issues[0].message)}`);
    for (const tape of body.value.tapes) {
      if (tape.status !== 'estimated' || measured[tape.id] === undefined) continue;
      const miss = (tape.got - measured[tape.id]) / tape.spread!;
      misses.set(tape.id, [...(misses.get(tape.id) ?? []), miss]);
    }
  }
  return misses;
}

describe('estimates from five measures', () => {
  it.each([
    ['survey1988-women', 'bust'],
    ['survey1988-men', 'chest'],
  ] as const)('lie within their spread of what was measured: %s', (file, figure) => {
    const misses = missesInSpreads(file, figure);
    expect(misses.size).toBeGreaterThanOrEqual(10);
    const all = [...misses.values()].flat();
    for (const [id, list] of misses) {
      const mean = list.reduce((sum, x) => sum + x, 0) / list.length;
      const rms = Math.sqrt(list.reduce((sum, x) => sum + x * x, 0) / list.length);
      // Off by a whole spread on average is bias, not chance: the mean of 15 has a standard deviation of 0.26.
      expect(Math.abs(mean), `${id} on average`).toBeLessThan(1);
      expect(rms, `${id} altogether`).toBeLessThan(1.7);
    }
    const overall = Math.sqrt(all.reduce((sum, x) => sum + x * x, 0) / all.length);
    expect(overall).toBeGreaterThan(0.7);
    expect(overall).toBeLessThan(1.3);
  });
});

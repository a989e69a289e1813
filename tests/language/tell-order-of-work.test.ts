import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { WorkStep } from '../../src/core/form/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { englishCore, loadCatalogue, tellOrderOfWork } from '../../src/language/index.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

/** Numbered steps, one text each, told in either language of the same form. */
let [english, german]: string[][] = [[], []];

function stepsOf(text: string): string[] {
  return text.split(/^(?=\[[ x]\] \d)/m).slice(1);
}

beforeAll(async () => {
  const raw = JSON.parse(readFileSync('shared/demos/uneven-shoulders.loftseam.json', 'utf8'));
  const inside = { ...raw.inside, webPlaces: 'seams', measuredGrowth: 0.0213 };
  const project = parseProject(JSON.stringify({ ...raw, inside }));
  if (!project.ok) throw new Error('demo does not open');
  const form = sharedPipeline.makeForm(project.value, COARSE);
  const steps: readonly WorkStep[] = (form.ok && form.value.making?.steps) || [];
  const options = { unit: 'cm', project: 'Maren', done: ['use'] } as const;
  const catalogue = await loadCatalogue('de');
  english = stepsOf(tellOrderOfWork(steps, { ...options, catalogue: englishCore }));
  german = stepsOf(tellOrderOfWork(steps, { ...options, catalogue }));
});

describe('the order of work in German', () => {
  it('has the steps of the English one, with the same numbers in each', () => {
    expect(english.length).toBeGreaterThan(25);
    expect(german.length).toBe(english.length);
    english.forEach((text, i) => {
      const said = (german[i].match(/\d+(,\d+)?/g) ?? []).map((number) => number.replace(',', '.'));
      expect(said.sort(), german[i]).toEqual((text.match(/\d+(\.\d+)?/g) ?? []).sort());
    });
  });

  it('writes numbers with a comma', () => {
    expect(german.join('')).toMatch(/\d,\d cm/);
    expect(german.join('')).not.toMatch(/\d\.\d/);
  });

  it('leaves no line in English', () => {
    const lines = new Set(english.flatMap((text) => text.split('\n')));
    const alike = german.flatMap((text) => text.split('\n')).filter((line) => lines.has(line));
    expect(alike.filter((line) => line !== '')).toEqual([]);
  });

  it('keeps seams and checks in their columns', () => {
    const rows = german.flatMap((text) => text.match(/^ {6}(Naht [A-Z]|prüfen).*$/gm) ?? []);
    expect(rows.length).toBeGreaterThan(60);
    for (const row of rows) expect(row.slice(13)).toMatch(/^. \S/);
  });
});

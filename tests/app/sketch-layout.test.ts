/** Rough figures of layouts against the form made in full; within how much is ours, no source: what “about” may mean on a card. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { createLayoutSketcher } from '../../src/app/worker/sketch-layout.ts';
import { layAll, layTask } from '../../src/core/laying/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
const read = parseProject(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error('average');
const average = read.value;

describe('what a layout would come to', () => {
  const body = sharedPipeline.fitBody(average);
  if (!body.ok) throw new Error('body');
  const sketch = createLayoutSketcher();
  const of = (layout: string) => sketch(average, body.value, layout);
  /** Evaluations: near enough to what a long search finds. */
  const BUDGET = 100_000;
  const LAYOUTS = ['upright8', 'upright12', 'upright12BustWaist'];

  it.each(LAYOUTS)('%s: strain and cloth as in the form made in full, about', (layout) => {
    const made = sharedPipeline.makeForm({ ...average, seams: { layout } }, COARSE);
    if (!made.ok) throw new Error(layout);
    const about = of(layout)!;
    const strain = made.value.report.strain!;
    expect(about.strain / strain).toBeGreaterThan(0.75);
    expect(about.strain / strain).toBeLessThan(1.33);
    const laid = layAll(layTask(made.value, 'shell', {}, BUDGET));
    if (!laid.ok) throw new Error('laid');
    expect(about.cloth / laid.value.length).toBeGreaterThan(0.8);
    expect(about.cloth / laid.value.length).toBeLessThan(1.4);
  });

  it('hours differ between layouts by as much as the whole work does, about', () => {
    const hoursOf = (layout: string) => {
      const made = sharedPipeline.makeForm({ ...average, seams: { layout } }, COARSE);
      if (!made.ok) throw new Error(layout);
      return made.value.making!.hours;
    };
    const [few, many] = ['upright8', 'upright12BustWaist'];
    const more = hoursOf(many) - hoursOf(few);
    expect(more).toBeGreaterThan(2);
    expect((of(many)!.hours - of(few)!.hours) / more).toBeGreaterThan(0.85);
    expect((of(many)!.hours - of(few)!.hours) / more).toBeLessThan(1.15);
  });

  it('there is none for a layout that is not there', () => {
    expect(of('no such layout')).toBeNull();
  });
});

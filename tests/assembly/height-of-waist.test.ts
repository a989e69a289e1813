import { describe, expect, it } from 'vitest';
import average from '../../shared/demos/average.loftseam.json' with { type: 'json' };
import { surfaceOfBody } from '../../src/core/body/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { pointAt } from '../body/measure-surface.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

function make(heights: object, inside: object = {}): Form {
  const project = parseProject(
    JSON.stringify({
      ...average,
      body: { ...average.body, measures: { ...average.body.measures, ...heights } },
      inside: { ...average.inside, ...inside },
    }),
  );
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const form = sharedPipeline.makeForm(project.value, COARSE);
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  return form.value;
}

const marked = (form: Form, level: string): number =>
  form.making?.steps.find(({ id }) => id === 'tapes')?.checks.find(({ id }) => id === `height-${level}`)
    ?.value ?? Number.NaN;
const poleToBuy = (form: Form): number =>
  form.inside?.materials.find(({ id }) => id === 'tube')?.quantity ?? Number.NaN;

describe('how high the form stands', () => {
  const usual = make({});

  it('is as high as the person, by every number that depends on it', () => {
    const tall = make({ waistHeight: 1110 });
    expect(marked(usual, 'waist')).toBeCloseTo(1040, 9);
    expect(marked(tall, 'waist')).toBeCloseTo(1110, 9);
    expect(marked(tall, 'bust') - marked(usual, 'bust')).toBeCloseTo(70, 6);
    expect(poleToBuy(tall) - poleToBuy(usual)).toBeCloseTo(70, 6);
    // The same weights, higher over the same feet, tip sooner.
    expect(tall.inside?.stand.tipAngleDeg).toBeLessThan(usual.inside?.stand.tipAngleDeg ?? 0);
  });

  it('brings the nape to its measured height when the waist’s is not known', () => {
    const form = make({ napeHeight: 1500 });
    const { u, v } = form.body.landmarks.neckBack;
    const nape = pointAt(surfaceOfBody(form.body), u, v)[2] - pointAt(surfaceOfBody(form.body), u, 0)[2];
    expect(marked(form, 'waist') + nape).toBeCloseTo(1500, 6);
  });

  it('is what was chosen for the form before what was measured', () => {
    const form = make({ waistHeight: 1110 }, { waistHeight: 950 });
    expect(marked(form, 'waist')).toBeCloseTo(950, 9);
  });
});

import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { FilledGiven } from '../../src/core/filled/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

/** The usual case: a tube of 200 mm grows so much at 3 kPa on 40 N/mm (Laplace, Hooke). */
const GROWTH = 0.3 / 39.7;

const pipeline = createPipeline();

/** A demo's form, its growth taken off, and all that filling it needs. */
export function demoToFill(id: string, targetTriangles: number): { form: Form; given: FilledGiven } {
  const file = path.join(import.meta.dirname, `../../shared/demos/${id}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const options = { ...project.value.inside, measuredGrowth: GROWTH };
  const made = pipeline.makeForm(
    { ...project.value, inside: options },
    { speaker: ENGLISH, targetTriangles, date: '2026-01-31' },
  );
  if (!made.ok || !made.value.inside)
    throw new Error(made.issues.map(({ message }) => inEnglish(message)).join('\n'));
  const { shell, flat, inside } = made.value;
  return { form: made.value, given: { shell, flat, inside: inside.shape, options } };
}

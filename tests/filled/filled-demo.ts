import { readFileSync } from 'node:fs';
import path from 'node:path';
import { type FilledGiven, filledProblem, measureFilled } from '../../src/core/filled/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import type { InsideOptions } from '../../src/core/inside/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { sharedPipeline } from '../shared-pipeline.ts';
import { solved } from '../statics/solved.ts';

/** The usual case: a tube of 200 mm grows so much at 3 kPa on 40 N/mm (Laplace, Hooke). */
const GROWTH = 0.3 / 39.7;

/** A demo's form, its growth taken off or, with `fills`, cut for the filling, and all that filling it needs. */
export function demoToFill(id: string, targetTriangles: number, fills = false, choices: InsideOptions = {}) {
  const file = path.join(import.meta.dirname, `../../shared/demos/${id}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const options: InsideOptions = { ...project.value.inside, measuredGrowth: GROWTH, ...choices };
  const made = sharedPipeline.makeForm(
    { ...project.value, inside: options },
    { speaker: ENGLISH, targetTriangles, date: '2026-01-31', fills },
  );
  if (!made.ok || !made.value.inside)
    throw new Error(made.issues.map(({ message }) => inEnglish(message)).join('\n'));
  const form: Form = made.value;
  const { shell, flat } = form;
  const given: FilledGiven = { shell, flat, inside: made.value.inside.shape, options };
  const fill = () => {
    const filled = filledProblem(given);
    return measureFilled(filled, solved(filled.problem));
  };
  return { form, given, fill };
}

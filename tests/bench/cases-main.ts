import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import type { BenchCase, BenchParts } from './types.ts';

const targetTriangles = 20_000;

function averageProject(): Project {
  const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return { ...project.value, seams: { layout: 'upright8' } };
}

/** Makes the whole form from nothing, stage by stage. */
function makeAll(project: Project): BenchParts {
  const form = createPipeline().makeForm(project, {
    speaker: ENGLISH,
    targetTriangles,
    now: () => performance.now(),
  });
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  return { checksum: checksumOf(form.value), partsMs: form.value.report.timingsMs };
}

/** What a person waits for when only the seam allowance changes. */
function prepareAllowanceChange(): (allowance: number) => number {
  const pipeline = createPipeline();
  const project = averageProject();
  const change = (allowance: number) => {
    const form = pipeline.makeForm(
      { ...project, cloth: { allowance } },
      { speaker: ENGLISH, targetTriangles },
    );
    if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
    return checksumOf(form.value);
  };
  change(10);
  return change;
}

/** What the picture waits for at each step of a measure pulled to and fro, once the program is warm. */
function prepareDrag(): () => number {
  const pipeline = createPipeline();
  const project = averageProject();
  const options = { speaker: ENGLISH, targetTriangles: 2_500, isDraft: true, upTo: 'seams' } as const;
  let step = 0;
  const pull = () => {
    step += 1;
    const measures = { ...project.body.measures, waistGirth: 760 + 3 * (step % 10) };
    const form = pipeline.makeForm({ ...project, body: { ...project.body, measures } }, options);
    if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
    return form.value.report.body.area;
  };
  for (let i = 0; i < 15; i++) pull();
  return pull;
}

function checksumOf(form: Form): number {
  return form.report.seams.reduce((sum, seam) => sum + seam.lengthsFlat[0] + seam.lengthsFlat[1], 0);
}

const cases: BenchCase[] = [
  { name: 'main/average-upright8-20k', prepare: averageProject, run: makeAll },
  {
    name: 'main/average-upright8-20k-allowance',
    prepare: prepareAllowanceChange,
    run: (change: (allowance: number) => number) => {
      change(12);
      return change(10);
    },
  },
  { name: 'main/average-rough-step', prepare: prepareDrag, run: (pull: () => number) => pull(), runs: 40 },
];

export default cases;

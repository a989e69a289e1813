import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import type { BenchCase, BenchParts } from './types.ts';

/** One body made once, then its inside designed anew for another tube: what a maker waits for who changes the pole. */
function prepareTubeChange(demo: string): () => BenchParts {
  const file = path.join(import.meta.dirname, `../../shared/demos/${demo}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const pipeline = createPipeline();
  let thickness = 25;
  return () => {
    thickness = thickness === 25 ? 26 : 25;
    const inside = { ...project.value.inside, tubeDiameter: thickness };
    const made = pipeline.makeForm(
      { ...project.value, inside },
      { speaker: ENGLISH, now: () => performance.now() },
    );
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    return { checksum: sumOfLengths(made.value), partsMs: { inside: made.value.report.timingsMs.inside } };
  };
}

function sumOfLengths(form: Form): number {
  const { braces } = form.inside!.shape;
  return braces.reduce((sum, { rungs }) => sum + rungs.reduce((all, { length }) => all + length, 0), 0);
}

const cases: BenchCase[] = ['average', 'large-bust'].map((demo) => ({
  name: `inside/${demo}-other-tube`,
  prepare: () => prepareTubeChange(demo),
  run: (change: () => BenchParts) => change(),
  // An even number, so that the last run has the same tube every time.
  runs: 8,
}));

export default cases;

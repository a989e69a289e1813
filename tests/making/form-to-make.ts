import { readFileSync } from 'node:fs';
import type { Form } from '../../src/core/form/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import type { SeamLine } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

/** A coarse form of a demo. It is cut as unrolled, which no order of work depends on and which spares filling it in space. */
export function formToMake(
  demo: string,
  layout?: string | readonly SeamLine[],
  inside = {},
  measures = {},
): Form {
  const raw = JSON.parse(readFileSync(`shared/demos/${demo}.loftseam.json`, 'utf8'));
  const seams = typeof layout === 'string' ? { layout } : layout ? { lines: layout } : raw.seams;
  const body = { ...raw.body, measures: { ...raw.body.measures, ...measures } };
  const whole = { ...raw, body, seams, inside: { ...raw.inside, recut: false, ...inside } };
  const project = parseProject(JSON.stringify(whole));
  if (!project.ok) throw new Error(project.issues.map(({ message }) => inEnglish(message)).join('\n'));
  const form = sharedPipeline.makeForm(project.value, COARSE);
  if (!form.ok) throw new Error(form.issues.map(({ message }) => inEnglish(message)).join('\n'));
  return form.value;
}

/** The form without those inner pieces, and without braces of the kinds. */
export function without(form: Form, isLeftOut: (piece: string) => boolean, kinds: string[] = []): Form {
  if (!form.inside) throw new Error('no inside');
  const { inside, body } = form;
  const braces = inside.shape.braces.filter(({ kind }) => !kinds.includes(kind));
  const gone = inside.shape.braces.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id);
  const pieces = inside.pieces.filter(({ id }) => !isLeftOut(id) && !gone.includes(id));
  const arms = pieces.some(({ material }) => material === 'arms') ? body.arms : [];
  return {
    ...form,
    body: { ...body, arms },
    inside: { ...inside, pieces, shape: { ...inside.shape, braces } },
  };
}

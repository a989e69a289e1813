import { readFileSync } from 'node:fs';
import type { Form } from '../../src/core/form/index.ts';
import { makeForm } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

/** A demo person's form of few triangles, its panels cut as unrolled; as a shell only, nothing else of it is made. */
export function sampleForm(demo: string, targetTriangles: number, isShellOnly = false): Form {
  const project = parseProject(readFileSync(`shared/demos/${demo}.loftseam.json`, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const inside = { ...project.value.inside, recut: false };
  const upTo = isShellOnly ? ({ isDraft: true, upTo: 'seams' } as const) : {};
  const form = makeForm({ ...project.value, inside }, { speaker: ENGLISH, targetTriangles, ...upTo });
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  return form.value;
}

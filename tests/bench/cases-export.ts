import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { exportForm } from '../../src/core/files/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import type { BenchCase } from './types.ts';

const targetTriangles = 20_000;
const FONT = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');

/** Twelve upright panels with webs, plates and covers. */
function makeTwelve(): Form {
  const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const form = createPipeline().makeForm(
    { ...project.value, seams: { layout: 'upright12' } },
    { speaker: ENGLISH, targetTriangles },
  );
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  return form.value;
}

async function write(form: Form, formats: readonly string[]): Promise<number> {
  const font = { name: 'DejaVuSans', bytes: readFileSync(FONT) };
  const files = await exportForm(form, { say: inEnglish, formats, font });
  if (!files.ok) throw new Error(inEnglish(files.issues[0].message));
  return files.value.reduce((sum, { content }) => sum + content.length, 0);
}

const cases: BenchCase[] = [
  { name: 'export/upright12-all-formats', prepare: makeTwelve, run: (form: Form) => write(form, ['zip']) },
  { name: 'export/upright12-pdf', prepare: makeTwelve, run: (form: Form) => write(form, ['pdf']) },
  { name: 'export/upright12-svg', prepare: makeTwelve, run: (form: Form) => write(form, ['svg']) },
];

export default cases;

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { exportForm } from '../../src/core/files/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline, type MakeOptions } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { loadCatalogue, speakerFor } from '../../src/language/index.ts';
import { ENGLISH } from '../in-english.ts';

const project = parseProject(readFileSync('shared/demos/petite.loftseam.json', 'utf8'));
const GERMAN = speakerFor(await loadCatalogue('de'));

function make(pipeline: ReturnType<typeof createPipeline>, speaker: MakeOptions['speaker']): Form {
  if (!project.ok) throw new Error('demo');
  const form = pipeline.makeForm(project.value, { speaker, targetTriangles: 1500 });
  if (!form.ok) throw new Error(speaker.say(form.issues[0].message));
  return form.value;
}

const lettersOf = (form: Form) =>
  [...form.pieces, ...(form.inside?.pieces ?? [])].map(({ texts }) => texts.map(({ text }) => text));

it('letters pieces anew when the language changes, and leaves their lines', () => {
  const pipeline = createPipeline();
  const english = make(pipeline, ENGLISH);
  const german = make(pipeline, GERMAN);
  expect(lettersOf(german)).toEqual(lettersOf(make(createPipeline(), GERMAN)));
  for (const [i, letters] of lettersOf(german).entries()) expect(letters).not.toEqual(lettersOf(english)[i]);
  expect(german.pieces.map(({ cutLine }) => cutLine)).toEqual(english.pieces.map(({ cutLine }) => cutLine));
});

it('keeps in German files what programs read: keys, ids and numbers with a point', async () => {
  const form = make(createPipeline(), GERMAN);
  const font = { name: '', bytes: new Uint8Array() };
  const formats = ['dxf', 'csv', 'json'];
  const [german, english] = await Promise.all(
    [GERMAN, ENGLISH].map(async ({ say }) => {
      const files = await exportForm(form, { say, formats, font });
      if (!files.ok) throw new Error(say(files.issues[0].message));
      return Object.fromEntries(files.value.map(({ name, content }) => [name, `${content}`]));
    }),
  );
  // The exchange of pieces names its notes in English (ASTM D6673-10, from memory).
  for (const key of ['Piece Name: ', 'Quantity: 1', 'Material: ', 'Units: METRIC'])
    expect(german['panels.dxf']).toContain(key);
  expect(german['panels.dxf']).toContain('Material: Au\\U+00DFenstoff');
  for (const table of ['seams.csv', 'tapes.csv']) {
    const [rows, other] = [german, english].map((files) => files[table].trimEnd().split('\n'));
    expect(rows[0]).not.toBe(other[0]);
    expect(rows[0].split(',')).toHaveLength(other[0].split(',').length);
    expect(rows.length).toBe(other.length);
  }
  expect(german['tapes.csv'].split('\n').slice(1)).toEqual(english['tapes.csv'].split('\n').slice(1));
  const [report, told] = [german, english].map((files) => JSON.parse(files['report.json']));
  expect(report.tapes).toEqual(told.tapes);
  expect(report.panels.map(({ id }: { id: string }) => id)).toEqual(
    told.panels.map(({ id }: { id: string }) => id),
  );
});

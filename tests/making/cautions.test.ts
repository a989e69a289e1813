import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { exportForm } from '../../src/core/files/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

/** What every maker is to be told, by words that must stand there: the job's own list. */
const MUST_SAY = {
  blades: /cut away from your body/,
  glue: /open windows/,
  magnets: /pierce the gut.*15 cm from pacemakers/s,
  iron: /burns skin/,
  dust: /mask/,
  tipping: /10°/,
  fire: /local code and ask the venue/,
  rigging: /licensed person/,
};

function make(change: (raw: { body: { measures: Record<string, unknown> } }) => void): Form {
  const raw = JSON.parse(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
  change(raw);
  const project = parseProject(JSON.stringify(raw));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const form = sharedPipeline.makeForm(project.value, COARSE);
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  return form.value;
}

/** Words of the page headed “Take care”, rows joined. */
async function careOf(form: Form): Promise<string> {
  const font = {
    name: 'DejaVu Sans',
    bytes: readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  };
  const files = await exportForm(form, { say: inEnglish, formats: ['pdf'], font });
  if (!files.ok) throw new Error(inEnglish(files.issues[0].message));
  const content = files.value.find(({ name }) => name.endsWith('.pdf'))!.content as Uint8Array;
  const pdf = await getDocument({ data: content.slice() }).promise;
  for (let i = 1; i <= Math.min(6, pdf.numPages); i++) {
    const { items } = await (await pdf.getPage(i)).getTextContent();
    const words = items.map((item) => ('str' in item ? item.str.trim() : '')).filter(Boolean);
    if (words[0] === 'Take care') return words.join(' ');
  }
  return '';
}

describe('cautions', () => {
  const armed = make(() => undefined);

  it('all stand in the order of work, at a step', () => {
    const said = armed
      .making!.steps.flatMap(({ cautions }) => cautions.map(({ text }) => text))
      .map(inEnglish)
      .join(' ');
    for (const [id, words] of Object.entries(MUST_SAY)) expect(said, id).toMatch(words);
    const has = (step: string, id: string) =>
      armed.making!.steps.find((one) => one.id === step)!.cautions.some((one) => one.id === id);
    for (const [step, id] of [
      ['use', 'tipping'],
      ['use', 'rigging'],
      ['cloth', 'iron'],
      ['test-tube', 'blades'],
      ['test-tube', 'dust'],
      ['boards', 'glue'],
      ['magnets', 'magnets'],
      ['fill-top-upperChest', 'fire'],
      ['rest', 'lifting'],
    ])
      expect(has(step, id), `${id} at ${step}`).toBe(true);
    // Once each.
    expect(armed.making!.steps.flatMap(({ cautions }) => cautions)).toHaveLength(9);
  });

  it('are printed with the pattern', async () => {
    const said = await careOf(armed);
    for (const [id, words] of Object.entries(MUST_SAY)) expect(said, id).toMatch(words);
  });

  it('are those of the pieces printed: none of magnets where there are no arms', async () => {
    const bare = make(({ body }) => {
      delete body.measures.upperArmGirth;
    });
    expect(bare.body.arms).toHaveLength(0);
    const said = await careOf(bare);
    expect(said).toMatch(MUST_SAY.tipping);
    expect(said).not.toMatch(/swallowed magnets/);
  });
});

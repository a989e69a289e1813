import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';

const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
const parsed = parseProject(readFileSync(file, 'utf8'));
if (!parsed.ok) throw new Error(inEnglish(parsed.issues[0].message));
const project = { ...parsed.value, seams: { layout: 'upright8' } };

it('answers a drag with lines, cut and strain; the lines saved make the same seams', () => {
  const pipeline = createPipeline();
  const first = pipeline.previewSeams(project);
  if (!first.ok) throw new Error(inEnglish(first.issues[0].message));
  const pulled = first.value.points.filter((point) => point.lineId === 'princessFront')[2];
  const edit = { lineId: pulled.lineId, anchor: pulled.anchor, to: { u: pulled.u - 0.2, v: pulled.v + 25 } };
  const dragged = pipeline.previewSeams(project, { edit });
  if (!dragged.ok) throw new Error(inEnglish(dragged.issues[0].message));
  const { lines, points, strain, snapped } = dragged.value;
  expect(snapped?.kind).toBe('none');
  const now = points.find((point) => point.lineId === pulled.lineId && point.anchor === pulled.anchor)!;
  expect(now.u).toBeCloseTo(edit.to.u, 9);
  expect(now.v).toBeCloseTo(edit.to.v, 6);
  // Strain depends on where the line runs, and not on the route by which it came there.
  expect(strain.rms).not.toBe(first.value.strain.rms);
  const saved = createPipeline().previewSeams({ ...project, seams: { lines } });
  if (!saved.ok) throw new Error(inEnglish(saved.issues[0].message));
  expect(saved.value.strain.rms).toBeCloseTo(strain.rms, 12);
  expect(structuredClone(dragged.value).shell.seams.length).toBe(saved.value.shell.seams.length);
});

it('refuses a drag that crosses another line, by name, and answers the next one', () => {
  const pipeline = createPipeline();
  const crossing = { lineId: 'princessFront', anchor: 2, to: { u: -0.5, v: 300 }, snapWithin: 0 };
  const refused = pipeline.previewSeams(project, { edit: crossing });
  expect(refused.ok).toBe(false);
  expect(refused.issues[0].path).toMatch(/^seams\.lines\./);
  expect(pipeline.previewSeams(project).ok).toBe(true);
});

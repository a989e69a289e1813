import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { layTasks } from '../../src/core/laying/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

/** Of cloth that grows by a thirtieth, and with the trial shell to be laid. */
function project() {
  const raw = JSON.parse(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
  const inside = { ...raw.inside, recut: false, measuredGrowth: 1 / 30 };
  const read = parseProject(JSON.stringify({ ...raw, inside, laying: { trial: { isLaid: true } } }));
  if (!read.ok) throw new Error('the demo is a project');
  return read.value;
}

/** Round a level, from the lines drawn on the pieces. */
function round(pieces: readonly Piece[], level: string): number {
  let sum = 0;
  for (const { points } of pieces.flatMap(({ levelLines }) => levelLines.filter(({ id }) => id === level)))
    for (let i = 2; i < points.length; i += 2)
      sum += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  return sum;
}

test('the trial shell’s pieces are laid where they are wanted: as large as the body, though the form’s are cut smaller', () => {
  const wanted = project();
  const form = sharedPipeline.makeForm(wanted, COARSE);
  if (!form.ok) throw new Error('a form');
  const { trial = [], pieces, inside } = form.value;
  expect(trial.map(({ id }) => id)).toEqual(pieces.map(({ id }) => id));
  // Typed girths of the demo, within what level lines at this fineness are off.
  for (const [level, girth] of [
    ['waist', 765],
    ['hip', 1010],
  ] as const) {
    expect(Math.abs(round(trial, level) - girth), level).toBeLessThan(4);
    expect(girth - round(pieces, level), level).toBeGreaterThan(10);
  }
  const all = [...pieces, ...(inside?.pieces ?? []), ...trial];
  const task = layTasks({ ...form.value, pieces: all }, wanted.laying).find(({ use }) => use === 'trial');
  expect(task?.pieces).toEqual(trial);
});

test('they are not made where nobody lays them', () => {
  const { laying: _laying, ...rest } = project();
  const form = sharedPipeline.makeForm(rest, COARSE);
  expect(form.ok && form.value.trial).toBeUndefined();
});

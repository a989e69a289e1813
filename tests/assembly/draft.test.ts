import { describe, expect, it } from 'vitest';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { readDemo } from '../body/read-demo.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

function projectWithBust(bustGirth: number) {
  const body = readDemo('average');
  const parsed = parseProject({
    format: 'loftseam-project',
    version: 1,
    name: 'Maren Ostley',
    displayUnits: 'cm',
    body: { ...body, measures: { ...body.measures, bustGirth } },
    seams: {},
    cloth: {},
    inside: {},
    cutting: {},
  });
  if (!parsed.ok)
    throw new Error(
      parsed.issues
        .map((i) => i.message)
        .map(inEnglish)
        .join(' '),
    );
  return parsed.value;
}

const COARSE = { speaker: ENGLISH, targetTriangles: 1500 };

describe('a draft while dragging', () => {
  it('meets the same tapes, and never stands in for the final form', () => {
    const pipeline = createPipeline();
    pipeline.makeForm(projectWithBust(940), COARSE);
    const draft = pipeline.makeForm(projectWithBust(946), { ...COARSE, isDraft: true });
    const final = pipeline.makeForm(projectWithBust(946), COARSE);
    const fresh = createPipeline().makeForm(projectWithBust(946), COARSE);
    if (!draft.ok || !final.ok || !fresh.ok) throw new Error('a form could not be made');
    for (const tape of draft.value.report.tapes.filter((t) => t.status !== 'estimated')) {
      expect(Math.abs(tape.got - tape.target), tape.id).toBeLessThan(0.5);
    }
    expect(final.value.body.unknowns).toEqual(fresh.value.body.unknowns);
  });

  it('that ends early is the same draft in all else, and the rest comes when asked for', () => {
    const pipeline = createPipeline();
    const options = { ...COARSE, isDraft: true };
    const shape = pipeline.makeForm(projectWithBust(946), { ...options, upTo: 'seams' });
    const bare = createPipeline().makeForm(projectWithBust(946), { ...options, upTo: 'panels' });
    const whole = pipeline.makeForm(projectWithBust(946), options);
    const alone = createPipeline().makeForm(projectWithBust(946), options);
    if (!shape.ok || !bare.ok || !whole.ok || !alone.ok) throw new Error('a form could not be made');
    expect(bare.value.pieces).toEqual([]);
    expect(bare.value.drawings).toEqual([]);
    const { pieces, drawings, ...rest } = alone.value;
    expect(pieces.length).toBe(alone.value.shell.panels.length);
    expect(drawings.length).toBeGreaterThan(0);
    const stages = ['tape', 'body', 'seams', 'panels'];
    expect(bare.value).toEqual({ ...rest, pieces: [], drawings: [], stages });
    // Drafts go without anything inside.
    expect(rest.stages).toEqual([...stages, 'cutting']);
    expect(shape.value.stages).toEqual(['tape', 'body', 'seams']);
    expect(shape.value.shell).toEqual(rest.shell);
    expect(shape.value.report.tapes).toEqual(rest.report.tapes);
    expect(shape.value.flat).toEqual([]);
    expect(shape.value.report).toMatchObject({ panels: [], seams: [], levels: [] });
    expect(whole.value.flat.length).toBe(alone.value.flat.length);
    expect(whole.value.pieces.map(({ id }) => id)).toEqual(pieces.map(({ id }) => id));
  });
});

import { describe, expect, it } from 'vitest';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { readDemo } from '../body/read-demo.ts';

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
  if (!parsed.ok) throw new Error(parsed.issues.map((i) => i.message).join(' '));
  return parsed.value;
}

const COARSE = { targetTriangles: 1500 };

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
});

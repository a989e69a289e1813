/** A grain given to one panel: the piece turns, lengths stay, the strain is told along the threads. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
const read = parseProject(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
const project: Project = { ...read.value, seams: { layout: 'upright8' } };
const pipeline = createPipeline();
const TURN = 0.25;
const TURNED = 'sideFrontRight';

function make(grain?: Record<string, number>): { form: Form; warnings: string[] } {
  const cloth = { ...project.cloth, ...(grain ? { grain } : {}) };
  const made = pipeline.makeForm(
    { ...project, cloth },
    { speaker: ENGLISH, targetTriangles: 2000, isDraft: true },
  );
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return { form: made.value, warnings: made.issues.map(({ path: at }) => at) };
}

const plain = make().form;
const { form } = make({ [TURNED]: TURN });
const at = plain.shell.panels.findIndex(({ id }) => id === TURNED);

describe('a grain of one panel', () => {
  it('turns that panel clockwise by as much, so that the grain runs up the cloth, and no other', () => {
    const [c, s] = [Math.cos(TURN), Math.sin(TURN)];
    for (const [d, { positions }] of plain.flat.entries()) {
      const turned = form.flat[d].positions;
      for (let i = 0; i < positions.length; i += 2) {
        const [x, y] = [positions[i], positions[i + 1]];
        // Rotation by −TURN, from the definition.
        const expected = d === at ? [c * x + s * y, c * y - s * x] : [x, y];
        expect(turned[i]).toBeCloseTo(expected[0], 9);
        expect(turned[i + 1]).toBeCloseTo(expected[1], 9);
      }
    }
  });

  it('turns the piece’s sewing and level lines with it; its grain line stays upright', () => {
    const angleOf = (one: Form): number => {
      const { points } = one.pieces[at].levelLines[0];
      return Math.atan2(points[points.length - 1] - points[1], points[points.length - 2] - points[0]);
    };
    expect(angleOf(form) - angleOf(plain)).toBeCloseTo(-TURN, 9);
    const [x0, , x1] = form.pieces[at].grainLine;
    expect(x1).toBeCloseTo(x0, 9);
    const lengths = (one: Form) => one.report.seams.map(({ lengthsFlat: [a] }) => a);
    for (const [k, length] of lengths(form).entries()) expect(length).toBeCloseTo(lengths(plain)[k], 9);
  });

  it('is told in the report, and the best grain stays where it was on the upright panel', () => {
    const before = plain.report.panels[at].cloth;
    const after = form.report.panels[at].cloth;
    expect(after.grainAngle - before.grainAngle).toBeCloseTo(TURN, 12);
    expect(Math.sin(after.bestGrain.angle - before.bestGrain.angle)).toBeCloseTo(0, 3);
    expect(after.bestGrain.usage).toBeCloseTo(before.bestGrain.usage, 5);
  });

  it('asks least of the cloth when it is the best one', () => {
    const { bestGrain, usage } = plain.report.panels[at].cloth;
    const best = make({ [TURNED]: bestGrain.angle - Math.PI / 2 }).form.report.panels[at].cloth;
    expect(best.usage).toBeCloseTo(bestGrain.usage, 6);
    expect(best.usage).toBeLessThanOrEqual(usage);
  });

  it('warns of a panel that is not there', () => {
    const made = make({ sleeve: 0.1 });
    expect(made.warnings).toContain('cloth.grain.sleeve');
    expect(made.form.flat).toEqual(plain.flat);
  });
});

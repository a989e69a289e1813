import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
const read = parseProject(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
const project = { ...read.value, inside: { ...read.value.inside, garmentMass: 5 } };
const options = { targetTriangles: 2000, fills: true };

describe('tryFilling', () => {
  const pipeline = createPipeline();
  const made = pipeline.makeForm(project, { ...options, speaker: ENGLISH });
  if (!made.ok || !made.value.filled) throw new Error('the demo can be filled');
  const { filled, inside } = made.value;
  const tried = (trial: Parameters<typeof pipeline.tryFilling>[2]) => {
    const found = pipeline.tryFilling(project, options, trial);
    if (!found.ok || !found.value) throw new Error(found.issues.map(({ code }) => code).join(', '));
    return found.value;
  };

  it('is about the filling that was made, and with nothing otherwise it is that', () => {
    const same = tried({});
    // The very same: it was not made again.
    expect(same.filled.shell).toBe(filled.shell);
    expect(same.filled.positions).toEqual(filled.positions);
    expect(same.filled.measures).toEqual(filled.measures);
    expect(same.change.distance).toBe(0);
  });

  it('foretells a waist a little smaller where it is filled less, and larger in softer cloth (Laplace)', () => {
    const waistOf = ({ measures }: typeof filled) =>
      measures.levels.find(({ id }) => id === 'waist')!.found.girth;
    const usual = waistOf(filled);
    expect(
      waistOf(tried({ zone: { upper: 'underbust', lower: 'highHip', share: 0.7 } }).filled),
    ).toBeLessThan(usual);
    expect(waistOf(tried({ stiffness: 0.5 }).filled)).toBeGreaterThan(usual);
    expect(waistOf(tried({ stiffness: 2 }).filled)).toBeLessThan(usual);
  });

  it('lets the throat out without its webs', () => {
    const throat = inside!.shape.braces.find(({ id }) => id.startsWith('throat'))!;
    const without = tried({ without: throat.id });
    expect(without.filled.measures.pulls.map(({ id }) => id)).not.toContain(throat.id);
    expect(without.change.distance).toBeGreaterThan(3);
  });

  it('hangs the heaviest garment of the project on it: the shoulders sink by millimetres', () => {
    const { mass, shoulders, top } = tried({}).garment;
    expect(mass).toBe(5);
    expect(shoulders).toBeGreaterThan(top);
    expect(top).toBeGreaterThan(0);
    expect(shoulders).toBeLessThan(20);
  });

  it('has nothing to try where the form is cut as unrolled', () => {
    // At once, without so much as a body.
    const asUnrolled = { ...project, inside: { recut: false } };
    expect(createPipeline().tryFilling(asUnrolled, options, {})).toMatchObject({
      ok: true,
      value: undefined,
    });
  });
});

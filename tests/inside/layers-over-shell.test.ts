import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

const raw = JSON.parse(readFileSync('shared/demos/petite.loftseam.json', 'utf8'));

function make(inside: object) {
  const project = parseProject(JSON.stringify({ ...raw, inside }));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return sharedPipeline.makeForm(project.value, COARSE);
}

function insideOf(made: ReturnType<typeof make>) {
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return made.value.inside!;
}

// Plane geometry: a shell d inside the body is 2d narrower between two of its walls, d nearer to the pole, and a plate in
// it 2πd shorter round (Steiner). With 10 mm of wadding over cloth of 0.6 mm its middle lies d = 10.3 mm inside.
describe('10 mm of wadding over the shell', () => {
  const form = make({});
  const [bare, covered] = [insideOf(form), insideOf(make({ coverThickness: 10 }))];
  const lengthAt = (inside: typeof bare, id: string, level: string) =>
    inside.shape.braces.find((brace) => brace.id === id)!.rungs.find(({ levelId }) => levelId === level)!
      .length;

  it.each([
    ['web-right', 20.6],
    ['web-left', 20.6],
    ['tie-front', 10.3],
    ['tie-back', 10.3],
    ['strap-bust-right', 10.3],
  ])('takes off %s %d mm', (id, less) => {
    const level = id.startsWith('strap') ? 'bust' : 'waist';
    expect(lengthAt(bare, id, level) - lengthAt(covered, id, level)).toBeCloseTo(less, 6);
  });

  it('makes plates 2π · 10.3 mm shorter round, and leaves less to fill', () => {
    const round = (inside: typeof bare, id: string) => {
      const points = inside.pieces.find((piece) => piece.id === id)!.cutLine;
      let sum = 0;
      for (let i = 0; i < points.length; i += 2) {
        const j = (i + 2) % points.length;
        sum += Math.hypot(points[j] - points[i], points[j + 1] - points[i + 1]);
      }
      return sum;
    };
    // The sewn edges of the two forms differ a little in how they unroll: 2.5 mm at most (2.3 measured).
    const less = round(bare, 'base-plate-1') - round(covered, 'base-plate-1');
    expect(Math.abs(less - 2 * Math.PI * 10.3)).toBeLessThan(2.5);
    // The layer's volume: area times thickness, mm³ in litres; parts inside are smaller too, by less than 0.3 L.
    const layer = (form.ok ? form.value.report.body.area : 0) * 10.3e-6;
    expect(Math.abs(bare.fill.volumeL - covered.fill.volumeL - layer)).toBeLessThan(0.3);
  });

  it('names the layers too where they leave no room for a tube', () => {
    const { issues } = make({ coverThickness: 40 });
    const issue = issues.find(({ code }) => code === 'tube-too-thick');
    expect(inEnglish(issue!.message)).toMatch(
      /at most 0\.\d cm leaves enough round it.*thinner layers over the shell, 4 cm .*now/,
    );
  });
});

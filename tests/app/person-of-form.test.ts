import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { personOfForm } from '../../src/app/scene/person-of-form.ts';
import { makeForm } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH } from '../in-english.ts';

const project = parseProject(readFileSync('shared/demos/large-bust.loftseam.json', 'utf8'));
if (!project.ok) throw new Error('the demo can be read');
const made = makeForm(project.value, { speaker: ENGLISH, targetTriangles: 3000, isDraft: true });
if (!made.ok) throw new Error('the demo can be made');
const [cloth, person] = [made.value, personOfForm(made.value)];

describe('the person under the cloth', () => {
  it('lies behind it between the breasts, by a few centimetres, and nowhere far outside it', () => {
    const [a, b] = [cloth.shell.mesh.positions, person.shell.mesh.positions];
    let [deepest, most] = [0, 0];
    for (let i = 0; i < a.length; i += 3) {
      const apart = Math.hypot(a[i] - b[i], a[i + 1] - b[i + 1], a[i + 2] - b[i + 2]);
      const isMiddle = Math.abs(a[i]) < 30 && a[i + 1] > 0;
      if (isMiddle) deepest = Math.max(deepest, a[i + 1] - b[i + 1]);
      else most = Math.max(most, apart);
    }
    expect(deepest).toBeGreaterThan(15);
    expect(deepest).toBeLessThan(80);
    expect(most).toBeLessThan(40);
  });

  it('has its panels on its own surface', () => {
    for (const { mesh, sourceVertex } of person.shell.panels) {
      sourceVertex.forEach((source, v) => {
        const own = mesh.positions.subarray(3 * v, 3 * v + 3);
        expect([...own]).toEqual([...person.shell.mesh.positions.subarray(3 * source, 3 * source + 3)]);
      });
    }
  });
});

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { nameRevision } from '../../src/core/form/name-revision.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';

const read = parseProject(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
if (!read.ok) throw new Error('demo');
const project: Project = read.value;

it('changes with measures, seams and cloth, not with the name or the units shown', () => {
  const name = nameRevision(project);
  expect(name).toMatch(/^[0-9A-HJKMNP-TV-Z]{6}$/);
  expect(nameRevision({ ...project, name: 'other', displayUnits: 'in' })).toBe(name);
  const { bustGirth } = project.body.measures;
  const others = [
    {
      ...project,
      body: { ...project.body, measures: { ...project.body.measures, bustGirth: Number(bustGirth) + 1 } },
    },
    { ...project, seams: { ...project.seams, lengthBlend: 0.123 } },
    { ...project, cloth: { ...project.cloth, allowance: 12.5 } },
  ].map(nameRevision);
  expect(new Set([name, ...others]).size).toBe(4);
});

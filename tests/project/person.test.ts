import { describe, expect, it } from 'vitest';
import { parseProject, serializeProject } from '../../src/core/project/index.ts';
import { projectForTests } from '../app/fixtures/project-for-tests.ts';

const open = (person: unknown) => parseProject(JSON.stringify({ ...projectForTests(), person }));

describe('whose body it is, in the file', () => {
  it('is left out where nothing was said, as in older files', () => {
    const text = serializeProject(projectForTests());
    expect(text).not.toContain('person');
    expect(parseProject(text)).toMatchObject({ ok: true, value: projectForTests() });
  });

  it.each([{ name: 'Odile' }, { name: 'Odile', label: 'over the corset' }])('comes back: %j', (person) => {
    const text = serializeProject({ ...projectForTests(), person });
    const read = parseProject(text);
    expect(read.ok && read.value.person).toEqual(person);
    // Beside the name, before all that is measured.
    expect(text.indexOf('"person"')).toBeLessThan(text.indexOf('"displayUnits"'));
  });

  it.each([
    ['a name alone', 'Odile', 'person'],
    ['no name', { label: 'over the corset' }, 'person.name'],
    ['an empty name', { name: '' }, 'person.name'],
    ['a name without end', { name: 'x'.repeat(201) }, 'person.name'],
    ['a label without end', { name: 'Odile', label: 'x'.repeat(201) }, 'person.label'],
    ['what is not known', { name: 'Odile', age: 40 }, 'person.age'],
  ])('is refused by name: %s', (_, person, path) => {
    const read = open(person);
    expect(read.ok).toBe(false);
    expect(read.issues.map((issue) => issue.path)).toEqual([path]);
  });
});

import { describe, expect, test } from 'vitest';
import { parseProject, serializeProject } from '../../src/core/project/index.ts';
import { projectForTests } from '../app/fixtures/project-for-tests.ts';
import { inEnglish } from '../in-english.ts';

const entry = {
  date: '2026-03-14',
  state: 'filled',
  levels: { waist: { girth: 766, width: 280 }, hip: { depth: 250 } },
  fillMass: 2.4,
} as const;

describe('making and checking in the file', () => {
  test('files without them open as before, and stay without', () => {
    const plain = projectForTests();
    const opened = parseProject(serializeProject(plain));
    expect(opened.ok && opened.value).toEqual(plain);
    expect(serializeProject(plain)).not.toContain('checking');
  });

  test('what was measured and done comes back', () => {
    const project = {
      ...projectForTests(),
      making: { done: ['use', 'cut'] },
      checking: { entries: [entry] },
    };
    const opened = parseProject(serializeProject(project));
    expect(opened.ok && opened.value).toEqual(project);
  });

  test.each([
    ['a misspelt size', { entries: [{ ...entry, levels: { waist: { girht: 700 } } }] }, 'girht'],
    ['an unknown state', { entries: [{ ...entry, state: 'half' }] }, 'state'],
    ['a girth below nothing', { entries: [{ ...entry, levels: { waist: { girth: -1 } } }] }, 'waist'],
  ])('%s is refused by name', (_, checking, word) => {
    const opened = parseProject(JSON.stringify({ ...projectForTests(), checking }));
    expect(opened.ok).toBe(false);
    expect(opened.issues.some(({ path, message }) => `${path} ${inEnglish(message)}`.includes(word))).toBe(
      true,
    );
  });
});

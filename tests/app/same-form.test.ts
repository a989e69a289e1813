import { expect, test } from 'vitest';
import { isSameForm } from '../../src/app/store/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

test('ticks, readings and whose body it is leave the form as it is, anything else does not', () => {
  const project = projectForTests();
  const entry = { date: '2026-03-14', state: 'filled', levels: {} } as const;
  expect(isSameForm(project, { ...project, making: { done: ['use'] } })).toBe(true);
  expect(isSameForm({ ...project, checking: { entries: [entry] } }, project)).toBe(true);
  expect(isSameForm(project, { ...project, person: { name: 'Odile', label: 'over the corset' } })).toBe(true);
  expect(isSameForm(project, { ...project, inside: { measuredGrowth: 0.01 } })).toBe(false);
  expect(isSameForm(project, { ...project, name: 'Another' })).toBe(false);
});

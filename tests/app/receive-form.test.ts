import { expect, test } from 'vitest';
import { createActions, createAppStore, isFillingAwaited, isFormBehind } from '../../src/app/store/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import type { Project } from '../../src/core/project/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const formOf = (project: Project, ...stages: string[]) => ({ project, stages }) as unknown as Form;

test('a form that was still being filled while something was ticked is the form of what is there', () => {
  const project = projectForTests();
  const store = createAppStore({ project });
  const actions = createActions(store);
  const ticked = { ...project, making: { done: ['use'] } };
  actions.receiveForm(formOf(project, 'cutting'), project, 'full');
  store.setState({ project: ticked, formOf: ticked });
  actions.receiveForm(formOf(project, 'filling', 'cutting'), project, 'full');
  expect(isFormBehind(store.getState())).toBe(false);
  expect(store.getState().form?.project).toBe(ticked);

  // Another measure makes another form.
  store.setState({ project: { ...ticked, name: 'Another' } });
  actions.receiveForm(formOf(ticked, 'filling', 'cutting'), ticked, 'full');
  expect(isFormBehind(store.getState())).toBe(true);
});

test('the filling is awaited until it was tried, where it is wanted', () => {
  const project = projectForTests();
  const awaited = (state: object) =>
    isFillingAwaited({ ...createAppStore({ project }).getState(), ...state });
  expect(awaited({})).toBe(false);
  expect(awaited({ form: formOf(project, 'cutting') })).toBe(true);
  // Tried in vain, it is told among the problems.
  expect(awaited({ form: formOf(project, 'filling', 'cutting') })).toBe(false);
  expect(awaited({ form: formOf(project, 'cutting'), failure: [] })).toBe(false);
  const asUnrolled = { ...project, inside: { recut: false } };
  expect(awaited({ project: asUnrolled, form: formOf(asUnrolled, 'cutting') })).toBe(false);
});

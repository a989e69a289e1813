import { layoutOf } from '../../assembly/index.ts';
import { type Body, fitBody } from '../../body/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage } from '../step.ts';
import { type FormGiven, formStep } from './form-step.ts';

export const bodyStep = formStep<Body, Record<string, never>>({
  id: 'body',
  needs: {},
  section: 'body',
  // A draft may depend on the body before it, so it never stands in for a final one.
  dependsOn: ({ project, options }) => [project.body, options.isDraft ?? false],
  run: (_, { given: { project, options } }, last) =>
    options.isDraft ? fitBody(project.body, last) : fitBody(project.body, undefined, { fair: true }),
});

/** Looked up here already, so that a wrong layout is told with wrong measures. */
export const layoutStep = formStep({
  id: 'layout',
  needs: {},
  dependsOn: ({ project: { seams } }) => [seams.layout, seams.lines],
  run: (_, { given }) => layoutOf(given.project),
});

export const body: Stage<'body', FormGiven> = {
  id: 'body',
  what: phrase('pipeline.body'),
  share: 24,
  steps: [bodyStep, layoutStep],
};

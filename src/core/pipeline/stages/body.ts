import { layoutOf } from '../../assembly/index.ts';
import { type Body, fitBody } from '../../body/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage } from '../step.ts';
import { type FormGiven, formStep, type StepOptions } from './form-step.ts';

export const bodyStep = formStep<Body, Record<string, never>>({
  id: 'body',
  needs: {},
  section: 'body',
  // A draft may depend on the body before it, so it never stands in for a final one.
  dependsOn: ({ project, options }) => [project.body, isRough(options)],
  run: (_, { given: { project, options } }, last) =>
    isRough(options) ? fitBody(project.body, last) : fitBody(project.body, undefined, { fair: true }),
});

/** A shell to try on is sewn: what it leaves out of a whole form is not the body's. */
function isRough({ isDraft = false, isTrialShell = false }: StepOptions): boolean {
  return isDraft && !isTrialShell;
}

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

import { designOfShell, flattenArms } from '../../assembly/index.ts';
import { success } from '../../base/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage } from '../step.ts';
import { bodyStep } from './body.ts';
import { type FormGiven, formStep } from './form-step.ts';
import { flatStep, problemStep } from './panels.ts';
import { cutStep } from './seams.ts';

/** Drafts go without anything inside. */
const isLeftOut = ({ options }: FormGiven): boolean => options.isDraft === true;

/** With its issues, which the design tells after its own. */
export const armsStep = formStep({
  id: 'arms',
  needs: { body: bodyStep },
  isLeftOut,
  dependsOn: () => null,
  run: ({ body }) => success(flattenArms(body.arms)),
});

/** Webs, sleeve and plates. */
export const designStep = formStep({
  id: 'design',
  needs: { body: bodyStep, cut: cutStep, problem: problemStep, flat: flatStep, arms: armsStep },
  section: 'inside',
  isLeftOut,
  dependsOn: ({ project }) => project.inside,
  run: ({ body, cut, problem, flat, arms }, { given }) =>
    designOfShell(
      { ...cut, body, flat, disks: problem.disks, flatArms: arms ?? { ok: false, issues: [] } },
      given.project,
    ),
});

export const inside: Stage<'inside', FormGiven> = {
  id: 'inside',
  what: phrase('pipeline.inside'),
  share: 7,
  steps: [armsStep, designStep],
};

import { assertInvariant, type Issue, type Result, success } from '../../base/index.ts';
import { type LayPlan, layPieces, layTasks } from '../../laying/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage } from '../step.ts';
import { bodyStep } from './body.ts';
import { insideStep, shellPiecesStep, trialPiecesStep } from './cutting.ts';
import { cutFlatStep } from './filling.ts';
import { type FormGiven, formStep } from './form-step.ts';
import { cutStep } from './seams.ts';

const what = phrase('pipeline.laying');

/** How the pieces of every use lie; what cannot be laid is told as a warning, since all can still be cut otherwise. */
export const laidOutStep = formStep({
  id: 'laidOut',
  needs: {
    body: bodyStep,
    cut: cutStep,
    flat: cutFlatStep,
    shell: shellPiecesStep,
    inside: insideStep,
    trial: trialPiecesStep,
  },
  section: 'laying',
  isLeftOut: ({ options }) => options.lays !== true || options.isDraft === true,
  dependsOn: ({ project }) => project.laying ?? null,
  run({ body, cut, flat, shell, inside, trial = [] }, context): Result<LayPlan[]> {
    assertInvariant(inside !== undefined, 'pipeline', 'all pieces are drafted before they are laid', inside);
    const { project } = context.given;
    const form = {
      body,
      shell: cut.shell,
      flat,
      pieces: [...shell.pieces, ...inside.inside.pieces, ...trial],
    };
    const tasks = layTasks(form, project.laying);
    const plans: LayPlan[] = [];
    const issues: Issue[] = [];
    for (const [i, task] of tasks.entries()) {
      const search = layPieces(task);
      for (let step = search.next(); ; step = search.next()) {
        if (context.isCancelled()) return { ok: false, issues: [] };
        if (!step.done) {
          context.onProgress((i + step.value.share) / tasks.length, what);
          continue;
        }
        if (step.value.ok) plans.push(step.value.value);
        issues.push(...step.value.issues.map((issue): Issue => ({ ...issue, severity: 'warning' })));
        break;
      }
    }
    return success(plans, issues);
  },
});

export const laying: Stage<'laying', FormGiven> = {
  id: 'laying',
  what,
  share: 60,
  steps: [laidOutStep],
};

import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import { layFitted, pictureInnerSeams, pictureShellSeams } from './picture-sewing.ts';
import { pictureForm, pictureWork } from './picture-work.ts';
import { type ScenesOfForm, scenesOfForm } from './scenes-of-form.ts';

/**
 * The picture beside a step of this form's order of work: by the step's id, else by the seams the step has; unknown steps get the form as
 * it stands. At most 145 × 85 mm of paper. About 0.3 s for those in space: for all steps, `picturesOfSteps` is quicker.
 */
export function pictureStep(form: Form, step: WorkStep, say: Say): Drawing {
  return drawStep(form, step, say, scenesOfForm(form));
}

/** The pictures of all steps, by their ids; what several of them show is made once. */
export function picturesOfSteps(form: Form, say: Say): Map<string, Drawing> {
  const scenes = scenesOfForm(form);
  const steps = form.making?.steps ?? [];
  return new Map(steps.map((step) => [step.id, drawStep(form, step, say, scenes)]));
}

function drawStep(form: Form, step: WorkStep, say: Say, scenes: ScenesOfForm): Drawing {
  const wish = { form, step, title: say(step.title), say, scenes };
  const drawn = pictureWork(wish);
  if (drawn) return drawn;
  if (step.seams.some(({ kind }) => kind === 'shell')) return pictureShellSeams(wish);
  const has = (id: string): boolean => step.pieces.some((piece) => piece.id === id);
  const braces = form.inside?.shape.braces.filter(({ id }) => has(id)) ?? [];
  if (step.seams.length > 0 && braces.length > 0) return pictureInnerSeams(wish);
  const arms = form.inside?.pieces.filter(({ id, material }) => material === 'arms' && has(id)) ?? [];
  if (step.seams.length > 0 && arms.length > 0) {
    return layFitted(arms, [...new Set(step.seams.map(({ letter }) => letter))], { title: wish.title });
  }
  return pictureForm(wish);
}

import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import { layFlat } from '../picture/index.ts';
import { pictureInnerSeams, pictureShellSeams } from './picture-sewing.ts';
import { pictureWork } from './picture-work.ts';

/**
 * The picture beside a step of this form's order of work. What is sewn is drawn by the seams the step has, whatever it is called; other work by how
 * its id begins; unknown steps get the form as it stands. mm of paper. About 0.1 s for those in space.
 */
export function pictureStep(form: Form, step: WorkStep, say: Say): Drawing {
  const title = say(step.title);
  if (step.seams.some(({ kind }) => kind === 'shell')) {
    return pictureShellSeams(form, step, sewnBefore(form, step), title, say);
  }
  const shape = form.inside?.shape;
  const hasBraces = step.pieces.some(({ id }) => shape?.braces.some((brace) => brace.id === id));
  if (step.seams.length > 0 && hasBraces) return pictureInnerSeams(form, step, title, say);
  const arms = form.inside?.pieces.filter(({ id, material }) => {
    return material === 'arms' && step.pieces.some((piece) => piece.id === id);
  });
  if (step.seams.length > 0 && arms && arms.length > 0) {
    return layFlat(arms, [...new Set(step.seams.map(({ letter }) => letter))], { title });
  }
  return pictureWork({ form, step, title, say });
}

/** Ids of the seams of all earlier steps. */
function sewnBefore({ making }: Form, step: WorkStep): Set<string> {
  const steps = making?.steps ?? [];
  const before = steps.slice(
    0,
    Math.max(
      0,
      steps.findIndex(({ id }) => id === step.id),
    ),
  );
  return new Set(before.flatMap(({ seams }) => seams.map(({ id }) => id)));
}

import type { Say } from '../../core/base/index.ts';
import { prepareStepPictures } from '../../core/booklet/index.ts';
import { writeSvg } from '../../core/export/index.ts';
import type { Form } from '../../core/form/index.ts';
import type { OnStepDrawn } from '../calls/index.ts';

/** Draws the first step, then whichever the page asks for, until it has enough or asks for one that is not there; how many were drawn. */
export async function drawSteps(form: Form, first: string, say: Say, onDrawn: OnStepDrawn): Promise<number> {
  const draw = prepareStepPictures(form, say);
  let count = 0;
  for (let wanted: string | null = first; wanted !== null; count++) {
    const step = form.making?.steps.find(({ id }) => id === wanted);
    if (!step) break;
    wanted = await onDrawn(step.id, writeSvg(draw(step), { say, isCompact: true }));
  }
  return count;
}

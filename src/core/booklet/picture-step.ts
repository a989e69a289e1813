import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import { layFitted, pictureInnerSeams, pictureShellSeams } from './picture-sewing.ts';
import { pictureForm, pictureWork } from './picture-work.ts';
import { type ScenesOfForm, scenesOfForm } from './scenes-of-form.ts';
import type { PictureRoom } from './wish.ts';

/** A picture's room unless the page is narrower: half of an A4 page beside its words, mm of paper. */
export const PICTURE_ROOM: PictureRoom = { width: 145, height: 85 };

/**
 * The picture beside a step of this form's order of work: by the step's id, else by the seams the step has; unknown steps get the form as
 * it stands. At most 145 × 85 mm of paper. About 0.2 s for those in space: for several steps, `prepareStepPictures` is quicker.
 */
export function pictureStep(form: Form, step: WorkStep, say: Say): Drawing {
  return prepareStepPictures(form, say)(step);
}

/** Draws steps of one form as `pictureStep` does, each in about 0.1 s; what several of them show is made once. */
export function prepareStepPictures(form: Form, say: Say, room = PICTURE_ROOM): (step: WorkStep) => Drawing {
  const scenes = scenesOfForm(form);
  return (step) => drawStep(form, step, say, scenes, room);
}

/** The pictures of all steps, by their ids. */
export function picturesOfSteps(form: Form, say: Say, room = PICTURE_ROOM): Map<string, Drawing> {
  return new Map(eachPicture(form, say, room));
}

/** The pictures of the steps one after the other, with their steps' ids, time for something else in between. */
export function* eachPicture(form: Form, say: Say, room = PICTURE_ROOM): Generator<[string, Drawing]> {
  const draw = prepareStepPictures(form, say, room);
  for (const step of form.making?.steps ?? []) yield [step.id, draw(step)];
}

function drawStep(form: Form, step: WorkStep, say: Say, scenes: ScenesOfForm, room: PictureRoom): Drawing {
  const wish = { form, step, title: say(step.title), say, scenes, room };
  const drawn = pictureWork(wish);
  if (drawn) return drawn;
  if (step.seams.some(({ kind }) => kind === 'shell')) return pictureShellSeams(wish);
  const has = (id: string): boolean => step.pieces.some((piece) => piece.id === id);
  const braces = form.inside?.shape.braces.filter(({ id }) => has(id)) ?? [];
  if (step.seams.length > 0 && braces.length > 0) return pictureInnerSeams(wish);
  const arms = form.inside?.pieces.filter(({ id, material }) => material === 'arms' && has(id)) ?? [];
  if (step.seams.length > 0 && arms.length > 0) {
    return layFitted(wish, arms, [...new Set(step.seams.map(({ letter }) => letter))]);
  }
  return pictureForm(wish);
}

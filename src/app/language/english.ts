import { advice } from './english/advice.ts';
import { body } from './english/body.ts';
import { core } from './english/core.ts';
import { frame } from './english/frame.ts';
import { messages } from './english/messages.ts';
import { panels } from './english/panels.ts';
import { seams } from './english/seams.ts';
import { steps } from './english/steps.ts';
import { tape } from './english/tape.ts';
import { workshop } from './english/workshop.ts';

/** Everything the app says. Its shape is what every other language must have. */
export const english = {
  ...frame,
  ...tape,
  ...body,
  ...seams,
  ...panels,
  workshop,
  advice,
  messages,
  steps,
  core,
};

export type Words = typeof english;

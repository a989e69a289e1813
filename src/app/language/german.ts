import type { Words } from './english.ts';
import { advice } from './german/advice.ts';
import { body } from './german/body.ts';
import { core } from './german/core.ts';
import { frame } from './german/frame.ts';
import { messages } from './german/messages.ts';
import { panels } from './german/panels.ts';
import { seams } from './german/seams.ts';
import { steps } from './german/steps.ts';
import { tape } from './german/tape.ts';
import { workshop } from './german/workshop.ts';

/** Everything the app says, in German. */
export const german: Words = {
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

import type { Words } from '../english/app.ts';
import { advice } from './app/advice.ts';
import { body } from './app/body.ts';
import { core } from './app/core.ts';
import { frame } from './app/frame.ts';
import { lateStages } from './app/late-stages.ts';
import { laying } from './app/laying.ts';
import { messages } from './app/messages.ts';
import { panels } from './app/panels.ts';
import { seams } from './app/seams.ts';
import { steps } from './app/steps.ts';
import { tape } from './app/tape.ts';

/** Everything the app says, in French. */
export const words: Words = {
  ...frame,
  ...tape,
  ...body,
  ...seams,
  ...panels,
  ...lateStages,
  advice,
  laying,
  messages,
  steps,
  core,
};

import { phrase } from '../phrases.ts';
import type { Stage } from '../step.ts';
import type { FormGiven } from './form-step.ts';

/** Measures are checked with the fit, which finds more that is wrong with them; this tells that it begins. */
export const tape: Stage<'tape', FormGiven> = {
  id: 'tape',
  what: phrase('pipeline.tape'),
  share: 1,
  steps: [],
};

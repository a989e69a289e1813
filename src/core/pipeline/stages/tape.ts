import type { Stage } from '../step.ts';
import type { FormGiven } from './form-step.ts';

/** Measures are checked with the fit, which finds more that is wrong with them; this tells that it begins. */
export const tape: Stage<'tape', FormGiven> = {
  id: 'tape',
  what: 'Checking the measures',
  share: 1,
  steps: [],
};

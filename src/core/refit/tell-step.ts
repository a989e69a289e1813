import type { Phrase } from '../base/index.ts';
import type { RefitStep } from './judge-refit.ts';
import { phrase } from './phrases.ts';

/** One step in words. */
export function tellStep(step: RefitStep): Phrase {
  switch (step.kind) {
    case 'pads':
      return phrase('refit.pads', step);
    case 'take-in':
      return phrase('refit.take-in', step);
    case 'stays-full':
      return phrase('refit.stays-full', step);
    default:
      return phrase('refit.anew', step);
  }
}

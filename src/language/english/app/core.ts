import type { DisplayUnit } from '../../../core/base/index.ts';
import { type Correction, type CorrectionWords, wordCorrection } from '../../../core/simulate/index.ts';
import type { Numbers } from '../../numbers.ts';

/** What the core says through functions of its own, and names inside sentences. */
export const core = {
  correction: (
    correction: Correction,
    nameOf: (id: string) => string,
    unit: DisplayUnit,
    { mark }: Numbers,
  ): CorrectionWords => {
    const { title, text } = wordCorrection(correction, nameOf, unit);
    return { title: mark(title), text: mark(text) };
  },
  /** Value and limits of something to measure, as the core words them. */
  check: (worded: string): string => worded,
  /** A name inside a sentence: without its capital, where the language writes it small. */
  within: (name: string): string => name.toLowerCase(),
};

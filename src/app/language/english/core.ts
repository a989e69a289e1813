import type { DisplayUnit, Issue } from '../../../core/base/index.ts';
import type { MeasureDefinition, ShapeCategory } from '../../../core/body/index.ts';
import type { Cloth } from '../../../core/flatten/index.ts';
import type { SeamLayout } from '../../../core/seams/index.ts';
import { type Correction, type CorrectionWords, wordCorrection } from '../../../core/simulate/index.ts';
import type { Caution } from '../../../core/supports/index.ts';
import type { Named, WordedMaterial } from '../core-texts.ts';
import type { Numbers } from '../numbers.ts';

/**
 * What the core says, which it says in English. Another language finds its own words by id, or by the English ones where
 * there is no id, and leaves English what it does not know.
 */
export const core = {
  measure: ({ name, how }: MeasureDefinition): { readonly name: string; readonly how: string } => ({
    name,
    how,
  }),
  category: ({ name, why }: ShapeCategory): { readonly name: string; readonly why: string } => ({
    name,
    why,
  }),
  choice: (_category: ShapeCategory, { name }: Named): string => name,
  layout: ({ name, description }: SeamLayout): { readonly name: string; readonly description: string } => ({
    name,
    description,
  }),
  cloth: ({ name }: Cloth): string => name,
  caution: ({ title, text }: Caution): { readonly title: string; readonly text: string } => ({
    title,
    text,
  }),
  material: ({ name, note, unit }: WordedMaterial): WordedMaterial => ({ id: '', name, note, unit }),
  /** Names of panels, seams, levels, pieces, as the core puts them together. */
  name: (english: string): string => english,
  /** Whole sentences: titles and texts of the order of work, checks, progress. */
  text: (english: string): string => english,
  issue: ({ message }: Issue): string => message,
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

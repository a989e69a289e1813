import type { MeasureDefinition } from './measures.ts';
import type { BodyInput } from './types.ts';
import { USUAL_WAIST, type WaistKind } from './waist-kinds.ts';

/** How much lower than the narrowest place the waist is tied, mm: of most people at most (survey of 1988). */
const LOWER: Readonly<Record<WaistKind, number>> = { narrowest: 0, elastic: 50, navel: 110 };
/** Grow with it, and shrink with it. */
const FROM_WAIST_UP = ['backWaistLength', 'frontWaistLength', 'sideLength'];
const FROM_WAIST_DOWN = ['waistToHip', 'waistToHighHip', 'waistHeight'];

/** The usual range of a measure, mm, where the waist is tied as this person ties it. */
export function rangeOfMeasure(
  { id, range }: MeasureDefinition,
  { figure, waist = USUAL_WAIST }: Pick<BodyInput, 'figure' | 'waist'>,
): readonly [min: number, max: number] {
  const [low, high] = range[figure];
  if (FROM_WAIST_UP.includes(id)) return [low, high + LOWER[waist]];
  // Half of a short way is left at least.
  if (FROM_WAIST_DOWN.includes(id)) return [Math.max(0.5 * low, low - LOWER[waist]), high];
  return [low, high];
}

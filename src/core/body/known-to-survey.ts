import { SURVEY_VARIABLES } from './survey-of-waist.ts';
import type { BodyInput, MeasureValue } from './types.ts';

/** Mean of both sides where two are given. */
export function meanValue(value: MeasureValue): number {
  return typeof value === 'number' ? value : 0.5 * (value.left + value.right);
}

/** One number for every typed measure. */
export function meanValues(measures: BodyInput['measures']): Record<string, number> {
  return Object.fromEntries(Object.entries(measures).map(([id, value]) => [id, meanValue(value)]));
}

/** Typed values in the survey's variables: heights become rises above the waist, boxes become ratios. */
export function knownToSurvey(typed: Readonly<Record<string, number>>): Record<string, number> {
  const known: Record<string, number> = {};
  for (const id of SURVEY_VARIABLES) if (typed[id] !== undefined) known[id] = typed[id];
  if (typed.napeHeight !== undefined && typed.waistHeight !== undefined) {
    known.napeRise = typed.napeHeight - typed.waistHeight;
  }
  for (const level of ['bust', 'highHip', 'hip']) {
    const width = typed[`${level}Width`];
    const depth = typed[`${level}Depth`];
    if (width !== undefined && depth !== undefined) known[`${level}Ratio`] = depth / width;
  }
  return known;
}

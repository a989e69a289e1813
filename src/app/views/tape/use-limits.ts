import { type MeasureDefinition, rangeOfMeasure, USUAL_WAIST } from '../../../core/body/index.ts';
import type { Limits } from '../parts/read-length.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** A measure is refused this far beyond the usual range; within, the body only asks to confirm. */
const BEYOND = 0.3;

/** What a measure of the present body may be, mm. */
export function useLimits(measure: MeasureDefinition): Limits {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const waist = useApp((state) => state.project?.body.waist ?? USUAL_WAIST);
  const [min, max] = rangeOfMeasure(measure, { figure, waist });
  return { min: Math.round(min * (1 - BEYOND)), max: Math.round(max * (1 + BEYOND)) };
}

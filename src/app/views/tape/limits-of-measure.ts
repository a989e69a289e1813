import type { Figure, MeasureDefinition } from '../../../core/body/index.ts';
import type { Limits } from '../parts/read-length.ts';

/** A measure is refused this far beyond the usual range; within, the body only asks to confirm. */
const BEYOND = 0.3;

export function limitsOfMeasure(measure: MeasureDefinition, figure: Figure): Limits {
  const [min, max] = measure.range[figure];
  return { min: Math.round(min * (1 - BEYOND)), max: Math.round(max * (1 + BEYOND)) };
}

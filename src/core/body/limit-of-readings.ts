import type { MeasureDefinition } from './measures.ts';
import type { Figure } from './types.ts';

/** Girths that begin above this, mm, are large: bust, waist, hip and those between. */
const LARGE_GIRTH = 500;

/** By how much two readings of a measure may differ, mm: 10 on large girths and 5 elsewhere (common practice, no source). */
export function limitOfReadings(measure: MeasureDefinition, figure: Figure): number {
  return measure.kind === 'girth' && measure.range[figure][0] > LARGE_GIRTH ? 10 : 5;
}

/** Two readings (mm) that differ by more than their limit want a third; then the mean stands. */
export function isThirdReadingWanted(
  measure: MeasureDefinition,
  figure: Figure,
  readings: readonly number[],
): boolean {
  return readings.length === 2 && Math.abs(readings[0] - readings[1]) > limitOfReadings(measure, figure);
}

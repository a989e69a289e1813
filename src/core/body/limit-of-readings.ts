import { findMeasure, type MeasureDefinition } from './measures.ts';
import type { BodyInput, Figure } from './types.ts';

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

/** Some two readings agree: what they say stands, and nothing about it is asked again. */
export function isConfirmed({ readings, figure }: BodyInput, id: string): boolean {
  const measure = findMeasure(id);
  const sorted = (readings?.[id] ?? []).toSorted((a, b) => a - b);
  return (
    measure !== undefined &&
    sorted.some((reading, k) => k > 0 && reading - sorted[k - 1] <= limitOfReadings(measure, figure))
  );
}

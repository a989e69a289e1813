import { type BelievedBody, believeBody } from './believe-body.ts';
import { type Suggestion, suggestMeasures } from './suggest-measures.ts';
import type { Body, BodyInput } from './types.ts';

/** How well the shape of a fitted body is known. mm. */
export interface BodyUncertainty {
  /** Root mean square over the surface of the spread across it. */
  readonly spread: number;
  /** What to measure next, the most telling first; measures that were typed are not among them. */
  readonly suggestions: readonly Suggestion[];
  /** One standard deviation across the surface at the places of a chart grid. */
  readonly veil: Veil;
}

/** Row by row from the base up; `around` places a row, evenly from u = 0 on; rows evenly over the chart's heights. */
export interface Veil {
  readonly around: number;
  readonly rows: number;
  readonly spreads: Float64Array;
}

/**
 * The Gaussian left of all shapes once the tapes are read: priors, survey estimates and typed tapes with the errors people
 * measure with, straightened at the fitted shape. Answers to the questions of shape are taken as true. `body` must be
 * fitted to `input`. Some 20 ms.
 */
export function uncertaintyOfBody(input: BodyInput, body: Body): BodyUncertainty {
  const believed = believeBody(input, body);
  const { sensitivity, grid } = believed;
  const spreads = grid.weights.map((_, i) => Math.sqrt(varianceAt(believed, sensitivity, i)));
  return {
    ...suggestMeasures(input, believed),
    veil: { around: grid.around, rows: grid.rows, spreads },
  };
}

function varianceAt({ covariance, count: n }: BelievedBody, rows: Float64Array, i: number): number {
  let variance = 0;
  for (let j = 0; j < n; j++) {
    let sum = 0;
    for (let k = 0; k < n; k++) sum += covariance[j * n + k] * rows[i * n + k];
    variance += rows[i * n + j] * sum;
  }
  return Math.max(variance, 0);
}

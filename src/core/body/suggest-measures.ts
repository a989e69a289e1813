import type { BelievedBody } from './believe-body.ts';
import type { MeasureId } from './measure-rows.ts';
import { findMeasure } from './measures.ts';
import type { BodyInput } from './types.ts';

/** One further measure, and how well the shape would be known with it. mm. */
export interface Suggestion {
  readonly id: MeasureId;
  /** Root mean square over the surface of one standard deviation across it. */
  readonly before: number;
  readonly after: number;
}

/**
 * What each measure not typed yet would add: one more reading is a rank-one change of the posterior's covariance,
 * Σ − Σ g gᵀ Σ / (s² + gᵀ Σ g) (Sherman and Morrison 1950), whatever it turns out to be. Most telling first.
 */
export function suggestMeasures(
  { figure }: Pick<BodyInput, 'figure'>,
  believed: BelievedBody,
): { readonly spread: number; readonly suggestions: readonly Suggestion[] } {
  const { count: n, covariance, candidates } = believed;
  const moments = momentsOf(believed);
  const before = Math.max(traceOfProduct(moments, covariance), 0);
  const suggestions: Suggestion[] = [];
  for (const [id, { gradient, error }] of candidates) {
    const measure = findMeasure(id);
    if (!measure?.figures.includes(figure)) continue;
    const moved = multiply(covariance, gradient, n);
    const variance = gradient.reduce((sum, g, i) => sum + g * moved[i], 0);
    const weighed = multiply(moments, moved, n);
    const gain = moved.reduce((sum, x, i) => sum + x * weighed[i], 0);
    const after = Math.max(before - gain / (error * error + variance), 0);
    suggestions.push({ id: measure.id, before: Math.sqrt(before), after: Math.sqrt(after) });
  }
  return { spread: Math.sqrt(before), suggestions: suggestions.toSorted((a, b) => a.after - b.after) };
}

/** Mean over the surface of (move across) (move across)ᵀ, n × n: times a covariance, its trace is the mean variance. */
function momentsOf({ count: n, sensitivity, grid }: BelievedBody): Float64Array {
  const moments = new Float64Array(n * n);
  grid.weights.forEach((weight, place) => {
    for (let i = 0; i < n; i++) {
      const a = weight * sensitivity[place * n + i];
      if (a === 0) continue;
      for (let j = 0; j < n; j++) moments[i * n + j] += a * sensitivity[place * n + j];
    }
  });
  return moments;
}

/** Of two symmetric matrices. */
function traceOfProduct(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, x, i) => sum + x * b[i], 0);
}

function multiply(matrix: Float64Array, x: Float64Array, n: number): Float64Array {
  return x.map((_, i) => {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += matrix[i * n + j] * x[j];
    return sum;
  });
}

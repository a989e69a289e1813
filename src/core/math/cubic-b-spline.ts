/**
 * The four cubic B-splines that live on the span from knots[i] to knots[i + 1], of controls i − 3 … i, as polynomials of
 * s, 0 at the span's start and 1 at its end: 4 × 4, coefficient of s^p of the b-th at 4 b + p.
 * Source: de Boor, A Practical Guide to Splines (1978), ch. X, the recurrence, carried out on coefficients.
 */
export function cubicSpanPolynomials(knots: ArrayLike<number>, i: number): Float64Array {
  const start = knots[i];
  const h = knots[i + 1] - start;
  let pieces: number[][] = [[1]];
  for (let degree = 1; degree <= 3; degree++) {
    const next = Array.from({ length: degree + 1 }, () => new Array<number>(degree + 1).fill(0));
    for (let b = 0; b < degree; b++) {
      // pieces[b] belongs to control i − degree + 1 + b; it adds a falling share to the one below and a rising to its own.
      const j = i - degree + 1 + b;
      const width = knots[j + degree] - knots[j];
      const [constant, linear] = [(start - knots[j]) / width, h / width];
      for (let p = 0; p < degree; p++) {
        const value = pieces[b][p];
        next[b + 1][p] += constant * value;
        next[b + 1][p + 1] += linear * value;
        next[b][p] += (1 - constant) * value;
        next[b][p + 1] -= linear * value;
      }
    }
    pieces = next;
  }
  return Float64Array.from(pieces.flat());
}

/** Knots of a cubic B-spline that ends in its first and last control: the inner ones with both ends four times. */
export function clampKnots(breaks: ArrayLike<number>): Float64Array {
  const n = breaks.length;
  return Float64Array.from({ length: n + 6 }, (_, i) => breaks[Math.min(Math.max(i - 3, 0), n - 1)]);
}

/** Where a straight line's controls lie: means of three knots (Greville); one per control. */
export function grevilleAbscissae(knots: Float64Array): Float64Array {
  return Float64Array.from(
    { length: knots.length - 4 },
    (_, i) => (knots[i + 1] + knots[i + 2] + knots[i + 3]) / 3,
  );
}

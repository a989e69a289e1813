/** How often a normal variable lies at least this far from its mean on either side, in standard deviations. */
export function chanceBeyond(pull: number): number {
  // Abramowitz and Stegun 7.1.26: wrong by less than 2e-7.
  const x = Math.abs(pull) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  return series * Math.exp(-x * x);
}

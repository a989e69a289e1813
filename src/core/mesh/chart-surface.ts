/**
 * A smooth surface over a cylinder chart. `u` is an angle (radians) round the trunk with period 2π:
 * 0 = wearer's right side, π/2 = centre front, π = left side, −π/2 (= 3π/2) = centre back.
 * `v` climbs from the base (`vRange[0]`) to the top of the neck (`vRange[1]`), in nominal mm.
 * ∂u × ∂v points outwards.
 */
export interface ChartSurface {
  readonly vRange: readonly [number, number];
  /** True when u → π − u mirrors the surface exactly in the plane x = 0. */
  readonly isMirrorSymmetric: boolean;
  /** Batch evaluation. `chart`: n × 2 (u, v). Returns `out` (n × 3 mm), allocated when not given. */
  evaluate(chart: Float64Array, out?: Float64Array): Float64Array;
}

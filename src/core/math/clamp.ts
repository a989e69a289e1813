/** The value, or the bound it lies beyond; `low` ≤ `high`. */
export function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

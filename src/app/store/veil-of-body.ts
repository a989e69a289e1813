import type { Veil } from '../../core/body/index.ts';
import { clamp } from '../../core/math/index.ts';

/** Known this well there is no veil, and from here on it hides the cloth; mm of one standard deviation. */
export const VEIL_FROM = 2;
export const VEIL_TO = 10;

/** How thick the veil lies at places of the chart (n × 2): 0 = none, 1 = thick. */
export function veilAt(
  chart: Float64Array,
  veil: Veil,
  [low, high]: readonly [number, number],
): Float64Array {
  const thickness = new Float64Array(chart.length / 2);
  for (let i = 0; i < thickness.length; i++) {
    const spread = spreadAt(chart[2 * i], (chart[2 * i + 1] - low) / (high - low), veil);
    thickness[i] = clamp((spread - VEIL_FROM) / (VEIL_TO - VEIL_FROM), 0, 1);
  }
  return thickness;
}

/** Between the four places of the grid around. */
function spreadAt(u: number, share: number, { around, rows, spreads }: Veil): number {
  const x = ((((u / (2 * Math.PI)) % 1) + 1) % 1) * around;
  const y = clamp(share, 0, 1) * (rows - 1);
  const [k, row] = [Math.floor(x) % around, Math.min(Math.floor(y), rows - 2)];
  const at = (r: number, c: number): number => spreads[r * around + (c % around)];
  const along = (r: number): number => at(r, k) + (x - Math.floor(x)) * (at(r, k + 1) - at(r, k));
  return along(row) + (y - row) * (along(row + 1) - along(row));
}

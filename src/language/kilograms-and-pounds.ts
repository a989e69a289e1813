import { kgPerPound } from '../core/base/index.ts';
import type { Tongue } from './catalogue.ts';

/** A range of kg in both systems, as on a list to buy by: `1.6 to 2.6 kg (3.5 to 5.6 lb)`. */
export function kilogramsAndPounds(low: number, high: number, to: string, { fixed }: Tongue): string {
  const [inKg, inPounds] = [1, kgPerPound].map(
    (unit) => `${fixed(low / unit, 1)} ${to} ${fixed(high / unit, 1)}`,
  );
  return `${inKg} kg (${inPounds} lb)`;
}

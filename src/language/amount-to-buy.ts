import type { MaterialLine } from '../core/inside/index.ts';
import type { Tongue } from './catalogue.ts';

/** So much of a thing to buy, as a list tells it; `piece`: what single things are counted by. */
export function amountToBuy(
  quantity: number,
  unit: MaterialLine['unit'],
  tongue: Tongue,
  piece: string,
): string {
  if (unit === 'pieces') return `${tongue.fixed(quantity, 0)} ${piece}`;
  if (unit === 'mm') return tongue.length(quantity);
  if (unit === 'kg') return tongue.mass(quantity);
  return `${tongue.fixed(quantity, quantity < 10 ? 2 : 1)} ${unit}`;
}

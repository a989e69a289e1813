import type { DisplayUnit } from '../../../core/base/index.ts';
import type { Numbers } from '../../../language/index.ts';

/** Beside inches in decimals of them. */
export function sayMillimetres(mm: number, unit: DisplayUnit, numbers: Numbers, decimals = 1): string {
  return unit === 'cm' ? `${numbers.fixed(mm, decimals)}\u00a0mm` : numbers.fineLength(mm, unit);
}

import { type DisplayUnit, formatLength, mmPerInch } from '../core/base/index.ts';
import type { Tongue } from './catalogue.ts';

/** A length to be drawn with a ruler: centimetres to a tenth of a millimetre's two digits, inches to the sixteenth with its decimals. */
export function ruled(
  mm: number,
  unit: DisplayUnit,
  { fixed, mark }: Pick<Tongue, 'fixed' | 'mark'>,
): string {
  if (unit === 'cm') return `${fixed(mm / 10, 2)} cm`;
  const sixteenths = (16 * mm) / mmPerInch;
  const near = formatLength(mm, 'in', { fraction: 16 });
  if (Math.abs(sixteenths - Math.round(sixteenths)) < 0.01) return near;
  return mark(`${near} (${(mm / mmPerInch).toFixed(2)})`);
}

import { formatLength, mmPerInch } from '../core/base/index.ts';

/** mm as inches of a tape, to 1/16; exact when that is the length itself to a hundredth of a sixteenth. */
export function nearInches(mm: number): { readonly text: string; readonly isExact: boolean } {
  const sixteenths = (16 * mm) / mmPerInch;
  const isExact = Math.abs(sixteenths - Math.round(sixteenths)) < 0.01;
  return { text: formatLength(mm, 'in', { fraction: 16 }), isExact };
}

/** True for a length that is a sixteenth of an inch or several, to a hundredth of one. */
export function isInchFraction(mm: number): boolean {
  return nearInches(mm).isExact;
}

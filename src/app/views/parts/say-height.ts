import type { DisplayUnit } from '../../../core/base/index.ts';
import type { Numbers, Words } from '../../../language/index.ts';

/** A height over the waist, mm, in words. */
export function sayHeight(mm: number, unit: DisplayUnit, words: Words['section'], numbers: Numbers): string {
  if (Math.abs(mm) < 0.5) return words.atWaist;
  return (mm > 0 ? words.aboveWaist : words.belowWaist)(numbers.length(Math.abs(mm), unit));
}

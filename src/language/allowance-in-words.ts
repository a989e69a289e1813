import type { Tongue } from './catalogue.ts';
import { nearInches } from './near-inches.ts';

/** A field of a sewing machine takes millimetres, a tape sixteenths of an inch; `about` where these are not the length itself. */
export function allowanceInWords(mm: number, { plain }: Pick<Tongue, 'plain'>, about: string): string {
  const { text, isExact } = nearInches(mm);
  return `${plain(mm, 2)} mm (${isExact ? '' : `${about} `}${text})`;
}

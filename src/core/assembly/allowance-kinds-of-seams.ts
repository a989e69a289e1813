import type { AllowanceKind } from '../pattern/index.ts';
import type { Seam } from '../seams/index.ts';
import type { OrderedSeam } from './order-seams.ts';

/**
 * Which seams of a shell need another allowance than plain ones, by seam id: shoulders, sides, and the line that closes the
 * form, as `orderSeams` leaves it for last.
 */
export function allowanceKindsOfSeams(order: readonly OrderedSeam[]): ReadonlyMap<string, AllowanceKind> {
  return new Map(
    order.flatMap(({ seam, role }): [string, AllowanceKind][] =>
      role === 'closing' || role === 'shoulder' || role === 'side' ? [[seam.id, role]] : [],
    ),
  );
}

/** The seams of the line that closes the form, band included; empty where nothing upright crosses the back. */
export function closingSeams(order: readonly OrderedSeam[]): Seam[] {
  return order.filter(({ role }) => role === 'closing').map(({ seam }) => seam);
}

import type { AllowanceKind } from '../pattern/index.ts';
import type { Seam } from '../seams/index.ts';
import type { OrderedSeam } from './order-seams.ts';

/**
 * Which seams of a shell need another allowance than plain ones, by seam id: shoulders, sides, and the line that closes the
 * form. That is the centre back where there is one, through the neck's band; else the upright line of the back that is sewn
 * first there, the one nearest to its middle.
 */
export function allowanceKindsOfSeams(order: readonly OrderedSeam[]): ReadonlyMap<string, AllowanceKind> {
  const closing = new Set(closingSeams(order));
  return new Map(
    order.flatMap(({ seam, role }): [string, AllowanceKind][] => {
      if (closing.has(seam)) return [[seam.id, 'closing']];
      return role === 'shoulder' || role === 'side' ? [[seam.id, role]] : [];
    }),
  );
}

/** The seams of the line that closes the form, band included; empty where nothing upright crosses the back. */
export function closingSeams(order: readonly OrderedSeam[]): Seam[] {
  const back = order.filter(({ role }) => role === 'back');
  const first = back.find(({ side }) => side === 'centre') ?? back[0];
  if (!first) return [];
  const isOfLine = ({ seam, side }: OrderedSeam): boolean =>
    seam.lineId === first.seam.lineId && side === first.side;
  return order.filter(isOfLine).map(({ seam }) => seam);
}

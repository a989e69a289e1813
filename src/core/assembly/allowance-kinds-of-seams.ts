import type { AllowanceKind } from '../pattern/index.ts';
import type { OrderedSeam } from './order-seams.ts';

/**
 * Which seams of a shell need another allowance than plain ones, by seam id: shoulders, sides, and the line that closes the
 * form. That is the centre back where there is one, through the neck's band; else the upright line of the back that is sewn
 * first there, the one nearest to its middle.
 */
export function allowanceKindsOfSeams(order: readonly OrderedSeam[]): ReadonlyMap<string, AllowanceKind> {
  const closing = closingSeamOf(order);
  return new Map(
    order.flatMap(({ seam, role, side }): [string, AllowanceKind][] => {
      if (closing && seam.lineId === closing.seam.lineId && side === closing.side)
        return [[seam.id, 'closing']];
      return role === 'shoulder' || role === 'side' ? [[seam.id, role]] : [];
    }),
  );
}

function closingSeamOf(order: readonly OrderedSeam[]): OrderedSeam | undefined {
  const back = order.filter(({ role }) => role === 'back');
  return back.find(({ side }) => side === 'centre') ?? back[0];
}

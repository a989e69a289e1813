import type { LayRules } from './rules-of-lay.ts';
import type { AllowedTurn } from './turns-of-piece.ts';
import type { LaidPiece } from './types.ts';

type Place = Pick<LaidPiece, 'piece' | 'x' | 'y' | 'angle'>;

/**
 * The nearest place at which the print goes on over the seams, for the way nearest to how the piece lies; itself where nothing is
 * to be met. mm.
 */
export function snapPlace<P extends Place>(rules: LayRules, place: P): P {
  const way = nearestWay(rules, place);
  return way ? { ...place, x: nearest(place.x, way.latticeX), y: nearest(place.y, way.latticeY) } : place;
}

/** The place next to it that way on its lattice, or `step` mm on where it lies on none. `dx` and `dy` are −1, 0 or 1. */
export function stepPlace<P extends Place>(
  rules: LayRules,
  place: P,
  dx: number,
  dy: number,
  step: number,
): P {
  const way = nearestWay(rules, place);
  return snapPlace(rules, {
    ...place,
    x: place.x + dx * (way?.latticeX?.period ?? step),
    y: place.y + dy * (way?.latticeY?.period ?? step),
  });
}

function nearestWay({ ways }: LayRules, { piece, angle }: Place): AllowedTurn | undefined {
  const off = (way: AllowedTurn): number => Math.abs(Math.sin((way.angle - angle) / 2));
  return ways
    .get(piece)
    ?.reduce<AllowedTurn | undefined>((a, b) => (a && off(a) <= off(b) ? a : b), undefined);
}

function nearest(
  at: number,
  lattice: { readonly period: number; readonly phase: number } | undefined,
): number {
  if (!lattice) return at;
  return lattice.phase + lattice.period * Math.round((at - lattice.phase) / lattice.period);
}

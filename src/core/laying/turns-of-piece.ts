import { type OptionsOf, withUsual } from '../base/index.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import type { Phase } from './match-print.ts';
import type { Stock } from './types.ts';
import type { Use } from './uses.ts';

/** A way a piece may lie, and the lattices on which its origin must then lie; see `LaidPiece`. */
export interface AllowedTurn {
  readonly angle: number;
  readonly latticeX?: Lattice;
  readonly latticeY?: Lattice;
}

interface Lattice {
  readonly period: number;
  readonly phase: number;
}

/** Warp along the cloth, top to the far end. */
const UP = -Math.PI / 2;

/**
 * The ways in which a piece may lie: one or both along the warp, turned off it by its tolerance either way or not at all; any quarter
 * turn where the material has no grain. With a phase in the print, each has the lattices that bring the piece's place in the print:
 * turned by half a turn, it lies as far on the other side of a motif's middle, which is the same for a print that looks alike upside down.
 */
export function turnsOfPiece(piece: string, use: Use, stock: Stock, phase: Phase | undefined): AllowedTurn[] {
  const { print = {}, grainTolerances } = stock;
  const { grainTolerance, ways } = withUsual(LAYING_OPTIONS, stock);
  const most = grainTolerances?.[piece] ?? grainTolerance;
  const off = most > 0 ? [0, most, -most] : [0];
  const isOneWay = use.isCloth && (ways ?? (isPrinted(print) ? 'one' : 'both')) === 'one';
  const quarters = use.id === 'foam' ? [0, 1, 2, 3] : isOneWay ? [0] : [0, 2];
  return quarters.flatMap((quarter) =>
    off.map((angle) => ({
      angle: UP + (quarter * Math.PI) / 2 + angle,
      ...(phase && latticesFor(phase, quarter === 2, print)),
    })),
  );
}

export function isPrinted(print: OptionsOf<(typeof LAYING_OPTIONS)['print']>): boolean {
  return withUsual(LAYING_OPTIONS.print, print).kind !== 'plain';
}

function latticesFor({ along, across }: Phase, isTurned: boolean, print: NonNullable<Stock['print']>) {
  const repeat = withUsual(LAYING_OPTIONS.print, print);
  const sign = isTurned ? -1 : 1;
  const x = { period: repeat.along, phase: repeat.firstAlong + sign * along };
  const y = { period: repeat.across, phase: repeat.firstAcross + sign * (across ?? 0) };
  return {
    ...(x.period > 0 && { latticeX: x }),
    ...(y.period > 0 && across !== undefined && { latticeY: y }),
  };
}

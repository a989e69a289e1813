import { withUsual } from '../../core/base/index.ts';
import { type ClothPrint, LAYING_OPTIONS, wayOfMeeting } from '../../core/laying/index.ts';

/**
 * What changes of a print that was dragged over the lay plan by so many mm along and across: where a motif lies on the body, if the
 * print is met there; else where the first motif lies on the cloth. Whole repeats change nothing.
 */
export function repeatShift(print: ClothPrint, along: number, across: number): ClothPrint {
  const now = withUsual(LAYING_OPTIONS.print, print);
  if (wayOfMeeting(print) === undefined)
    return {
      firstAlong: withinRepeat(now.firstAlong + along, now.along),
      firstAcross: withinRepeat(now.firstAcross + across, now.across),
    };
  // To the far end is up on the body; to the higher selvedge is to the wearer’s right.
  return {
    shiftUp: nearestShift(now.shiftUp + along, now.along),
    shiftAcross: nearestShift(now.shiftAcross - across, now.across),
  };
}

function withinRepeat(at: number, repeat: number): number {
  return repeat > 0 ? round(at - repeat * Math.floor(at / repeat)) : 0;
}

function nearestShift(shift: number, repeat: number): number {
  return repeat > 0 ? round(shift - repeat * Math.round(shift / repeat)) : 0;
}

/** Nobody drags more finely than this. */
const round = (mm: number): number => Math.round(mm * 2) / 2;

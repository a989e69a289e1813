import { formatLength, type Issue } from '../base/index.ts';
import { measureDistanceToPolyline } from '../math/index.ts';
import type { PieceLine } from '../pattern/index.ts';
import { makeOval } from './make-oval.ts';
import type { InsideOptions } from './types.ts';

/** Board kept between a magnet's seat and the plate's edge or the peg's hole, mm. Ours. */
const SEAT_MARGIN = 8;
/** Play of seat and hole on the diameter, mm. */
const PLAY = 0.3;

export interface ArmJoint {
  readonly holes: readonly PieceLine[];
  readonly issues: readonly Issue[];
}

/**
 * Holes in an armhole plate (ring n × 2, up is up): a peg in the middle carries the arm, two magnets over and under it
 * locate it. The arm's own plate is this one's mirror image, so that the two patterns agree face to face by construction.
 * Issues: `magnet-near-cut` with the board that is left.
 */
export function makeArmJoint(ring: Float64Array, side: 'right' | 'left', options: InsideOptions): ArmJoint {
  const peg = (options.pegDiameter ?? 12) / 2 + PLAY / 2;
  const magnet = (options.magnetDiameter ?? 15) / 2 + PLAY / 2;
  const xs = ring.filter((_, i) => i % 2 === 0);
  const ys = ring.filter((_, i) => i % 2 === 1);
  const x = 0.5 * (Math.min(...xs) + Math.max(...xs));
  const y = 0.5 * (Math.min(...ys) + Math.max(...ys));
  const away = peg + magnet + Math.max(SEAT_MARGIN + 4, 0.16 * (Math.max(...ys) - Math.min(...ys)));
  const seats = [y + away, y - away];
  const issues = seats.flatMap((seat): Issue[] => {
    const left = measureDistanceToPolyline(ring, true, x, seat) - magnet;
    if (left >= SEAT_MARGIN) return [];
    const message = `The magnets of the ${side} arm leave ${Math.max(0, left).toFixed(1)} mm of board to the edge of the armhole plate; ${SEAT_MARGIN} mm are needed. Take magnets smaller than ${formatLength(2 * magnet, 'cm')} or a thinner peg.`;
    return [
      {
        code: 'magnet-near-cut',
        path: 'magnetDiameter',
        message,
        severity: 'error',
        measured: left,
        limit: SEAT_MARGIN,
      },
    ];
  });
  return {
    holes: [
      { id: 'peg', name: 'peg', points: makeOval(x, y, peg, peg) },
      { id: 'magnet-up', name: 'magnet up', points: makeOval(x, seats[0], magnet, magnet) },
      { id: 'magnet-down', name: 'magnet down', points: makeOval(x, seats[1], magnet, magnet) },
    ],
    issues: issues.slice(0, 1),
  };
}

/** Pole that faces outwards. Right and left differ, so that a swapped arm is pushed off. */
export function poleOfMagnets(side: 'right' | 'left', part: 'torso' | 'arm'): 'N' | 'S' {
  return (side === 'right') === (part === 'torso') ? 'N' : 'S';
}

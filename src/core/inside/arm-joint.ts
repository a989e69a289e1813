import { type Issue, withUsual } from '../base/index.ts';
import { boundsOfPolyline, isInsidePolygon, measureDistanceToPolyline } from '../math/index.ts';
import type { PieceLine } from '../pattern/index.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { makeOval } from './make-oval.ts';
import { phrase } from './phrases.ts';
import type { InsideOptions, Side } from './types.ts';

/** Board kept between a magnet's seat and the plate's edge or the peg's hole, mm. Ours. */
const SEAT_MARGIN = 8;
/** Play of seat and hole on the diameter, mm. */
const PLAY = 0.3;

export interface ArmJoint {
  readonly holes: readonly PieceLine[];
  readonly issues: readonly Issue[];
}

/** A magnet's seat on the plate's upright axis, and the board left beside it. mm. */
interface Seat {
  readonly y: number;
  readonly toEdge: number;
  readonly toPeg: number;
}

/**
 * Holes in an armhole plate (ring n × 2, up is up): a peg in the middle carries the arm, two magnets over and under it
 * locate it. The arm's own plate is this one's mirror image, so that the two patterns agree face to face by construction.
 * A magnet that would come too near the edge moves towards the peg, at most until it has as much board on either side.
 * Issues: `magnet-near-cut` and `peg-near-cut` with the board that is left and what would fit.
 */
export function makeArmJoint(ring: Float64Array, side: Side, options: InsideOptions): ArmJoint {
  const { pegDiameter, magnetDiameter } = withUsual(INSIDE_OPTIONS, options);
  const peg = pegDiameter / 2 + PLAY / 2;
  const magnet = magnetDiameter / 2 + PLAY / 2;
  const { minX, minY, maxX, maxY } = boundsOfPolyline(ring);
  const [x, y] = [0.5 * (minX + maxX), 0.5 * (minY + maxY)];
  const usual = Math.max(SEAT_MARGIN + 4, 0.16 * (maxY - minY));
  const seatOn = (sign: 1 | -1): Seat => {
    const at = (toPeg: number): Seat => {
      const seat = y + sign * (peg + toPeg + magnet);
      return { y: seat, toPeg, toEdge: boardTo(ring, x, seat) - magnet };
    };
    return at(usual).toEdge >= SEAT_MARGIN ? at(usual) : betweenPegAndEdge(at, usual, magnet);
  };
  const seats = [seatOn(1), seatOn(-1)];
  return {
    holes: [
      { id: 'peg', name: 'peg', points: makeOval(x, y, peg, peg) },
      { id: 'magnet-up', name: 'magnet-up', points: makeOval(x, seats[0].y, magnet, magnet) },
      { id: 'magnet-down', name: 'magnet-down', points: makeOval(x, seats[1].y, magnet, magnet) },
    ],
    issues: [...checkPeg(boardTo(ring, x, y) - peg, side, peg), ...checkSeats(seats, side, magnet)],
  };
}

/** From a point to the plate's edge, mm; negative outside it. */
function boardTo(ring: Float64Array, x: number, y: number): number {
  const distance = measureDistanceToPolyline(ring, true, x, y);
  return isInsidePolygon(ring, x, y) ? distance : -distance;
}

/** The seat with as much board to the peg's hole as to the edge; bisection to a thousandth of a millimetre. */
function betweenPegAndEdge(at: (toPeg: number) => Seat, usual: number, magnet: number): Seat {
  let [low, high] = [-2 * magnet, usual];
  while (high - low > 1e-3) {
    const middle = 0.5 * (low + high);
    if (at(middle).toEdge > middle) low = middle;
    else high = middle;
  }
  return at(low);
}

function checkSeats(seats: readonly Seat[], side: Side, magnet: number): Issue[] {
  const board = ({ toEdge, toPeg }: Seat): number => Math.min(toEdge, toPeg);
  const worst = board(seats[0]) < board(seats[1]) ? seats[0] : seats[1];
  const measured = board(worst);
  if (measured >= SEAT_MARGIN) return [];
  const most = Math.floor(2 * magnet - PLAY + worst.toEdge + worst.toPeg - 2 * SEAT_MARGIN);
  const message = phrase('inside.magnets-near-edge', {
    side,
    magnet: 2 * magnet - PLAY,
    toEdge: worst.toEdge,
    toPeg: worst.toPeg,
    least: SEAT_MARGIN,
    ...(most >= INSIDE_OPTIONS.magnetDiameter.min && { most }),
  });
  const path = 'magnetDiameter';
  return [{ code: 'magnet-near-cut', path, message, severity: 'error', measured, limit: SEAT_MARGIN }];
}

function checkPeg(measured: number, side: Side, peg: number): Issue[] {
  if (measured >= SEAT_MARGIN) return [];
  const most = Math.max(0, Math.floor(2 * (peg + measured - SEAT_MARGIN) - PLAY));
  const message = phrase('inside.peg-near-edge', {
    side,
    peg: 2 * peg - PLAY,
    toEdge: measured,
    least: SEAT_MARGIN,
    most,
  });
  const path = 'pegDiameter';
  return [{ code: 'peg-near-cut', path, message, severity: 'error', measured, limit: SEAT_MARGIN }];
}

/** Pole that faces outwards. Right and left differ, so that a swapped arm is pushed off. */
export function poleOfMagnets(side: Side, part: 'torso' | 'arm'): 'N' | 'S' {
  return (side === 'right') === (part === 'torso') ? 'N' : 'S';
}

import type { KnotId, RAIL } from './rails.ts';

/** Shares of the shift and of the turn, row by row: the hips stay, the chest is furthest aside, the shoulders furthest turned. */
const TWIST: Readonly<Partial<Record<KnotId, readonly [shift: number, turn: number]>>> = {
  highHip: [0, 0.1],
  waist: [0, 0.32],
  underbust: [0.55, 0.5],
  bust: [1, 0.7],
  upperChest: [1, 0.82],
  midArm: [0.85, 0.93],
  shoulderPoint: [0.7, 1],
  shoulderEnd: [0.65, 1],
  midShoulder: [0.55, 1],
  neckBase: [0.45, 1],
  neckMiddle: [0.45, 1],
  neckTop: [0.45, 1],
};

/** How much of the shoulders' turn a row has. */
export function shareOfTurn(knot: KnotId): number {
  return TWIST[knot]?.[1] ?? 0;
}

/** A curved spine, seen from behind and from above: mm to the right, radians with the right side forwards. */
export function twistRows(
  { trunkShift, trunkTurn }: { readonly trunkShift: number; readonly trunkTurn: number },
  set: (rail: keyof typeof RAIL, knot: KnotId, value: number) => void,
): void {
  for (const [knot, [shift, turn]] of Object.entries(TWIST)) {
    set('x0', knot as KnotId, shift * trunkShift);
    set('turn', knot as KnotId, turn * trunkTurn);
  }
}

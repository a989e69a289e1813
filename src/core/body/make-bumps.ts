import type { ChoiceBump } from './choice-bumps.ts';
import { BUMP_STRIDE, type KnotId } from './rails.ts';
import type { ParameterValues, ShapeNumbers } from './shape-parameters.ts';
import { TWIST } from './twist.ts';
import type { Figure } from './types.ts';

interface BumpPair {
  /** Centre of the right one. */
  readonly u: number;
  readonly z: number;
  /** Reaches: radians towards side and centre line, mm of z down and up. */
  readonly side: number;
  readonly centre: number;
  readonly down: number;
  readonly up: number;
  readonly height: number;
  /** Radians by which the bumps turn away from each other. */
  readonly turn: number;
  readonly fullness: number;
  /** Below the centre; as above where left out. */
  readonly fullnessBelow?: number;
  /** Sideways and below; 0 where left out. */
  readonly roundness?: number;
  /** It runs on under the arm; otherwise it dies out before it. */
  readonly runsUnderArm?: boolean;
}

/** Everything that rides on the trunk: breasts first, then blades, seat, collar bones and what was chosen. */
export function makeBumps(p: ParameterValues, numbers: ShapeNumbers, figure: Figure): Float64Array {
  const isBust = figure === 'bust';
  const breast: BumpPair = {
    u: p.bustAngle,
    z: p.zBust + (isBust ? 12 : 0),
    side: isBust ? numbers.bustSide : 0.75,
    centre: reachToCentre(p.bustAngle),
    down: isBust ? 1.2 * (p.zBust - p.zUnderbust) + 12 : 75,
    up: isBust ? numbers.bustReach : 90,
    height: p.bustHeight,
    turn: isBust ? numbers.bustTurn : 0.1,
    fullness: isBust ? numbers.bustFullness : 1.5,
    fullnessBelow: isBust ? numbers.bustFullnessBelow : 1.5,
    roundness: isBust ? numbers.bustRoundness : 0,
    runsUnderArm: isBust,
  };
  const blade = {
    u: -0.92,
    z: p.zUpperChest + 12,
    side: 0.55,
    centre: 0.6,
    down: 110,
    up: 95,
    height: numbers.blade,
    turn: 0.1,
    fullness: 1.5,
  };
  const seat = {
    u: -1.02,
    z: p.zHip + 8,
    side: 0.95,
    centre: 0.58,
    down: 120,
    up: 125,
    height: numbers.seat,
    turn: 0.1,
    fullness: 0.7,
  };
  // A low ridge at the height of the pit of the neck, steeper above than below; it dies out before the arm.
  const collarBone = {
    u: 0.98,
    z: p.zNeckFront + 4,
    side: 0.6,
    centre: 0.5,
    down: 42,
    up: 26,
    height: numbers.collarBone,
    turn: 0.2,
    fullness: 1.5,
  };
  const { right, left } = numbers.breasts;
  const breasts = { ...hang(breast, numbers.bustDrop), height: 0.5 * (right + left) * breast.height };
  const breastSkew = p.bustHeightSkew + 0.5 * (right - left) * breast.height;
  return Float64Array.from([
    ...turned('bust', placePair(breasts, [breastSkew, p.bustAngleSkew, p.bustLevelSkew])),
    ...turned('upperChest', placePair(blade)),
    ...placePair(seat, p.hipZ === 0 ? undefined : [0, 0, p.hipZ * Math.cos(seat.u)]),
    ...turned('neckBase', placePair(collarBone)),
    ...turned('midArm', placeHump(p, numbers)),
    ...numbers.bumps.flatMap((bump) => turned(bump.z > 0 ? 'underbust' : 'highHip', placeChoice(bump))),
  ]);

  function turned(knot: KnotId, bumps: number[]): number[] {
    const turn = (TWIST[knot]?.[1] ?? 0) * numbers.trunkTurn;
    return turn === 0 ? bumps : turnBumps(bumps, turn);
  }
}

/** Breasts that hang: fuller below and steeper to the fold, which stays where it is while the bust points sink. */
function hang(breast: BumpPair, drop: number): BumpPair {
  if (drop === 0) return breast;
  const { down, up, fullness, roundness = 0 } = breast;
  const share = drop / (drop + 60);
  return {
    ...breast,
    down: Math.max(22, down * (1 - 0.15 * share)),
    up: up + 0.3 * drop,
    fullness: Math.min(2.2, fullness + 0.5 * share),
    roundness: Math.min(3, roundness + share),
  };
}

/** One bump on the spine; it dies out at the nape, so that the neck base keeps its tape. */
function placeHump({ zNape }: ParameterValues, { hump, humpBelow }: ShapeNumbers): number[] {
  if (hump === 0) return [];
  const across = 0.85;
  return [
    -0.5 * Math.PI,
    zNape - humpBelow,
    across,
    across,
    1.1 * humpBelow + 45,
    humpBelow,
    hump,
    0,
    -1,
    0.5,
    0,
  ];
}

/** Their directions turned to the right side forwards. */
function turnBumps(bumps: readonly number[], turn: number): number[] {
  const out = [...bumps];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  for (let i = 0; i < out.length; i += BUMP_STRIDE) {
    const [x, y] = [out[i + 7], out[i + 8]];
    out[i + 7] = c * x - s * y;
    out[i + 8] = s * x + c * y;
  }
  return out;
}

function placeChoice(bump: ChoiceBump): number[] {
  const { u, z, across, down, up, height, towards, fullness, roundness } = bump;
  const place = (at: number, x: number): number[] => [
    ...[at, z, across, across, down, up, height, x, Math.sin(towards), fullness, roundness],
  ];
  const x = Math.abs(u) === 0.5 * Math.PI ? 0 : Math.cos(towards);
  return bump.isPair ? [...place(u, x), ...place(Math.PI - u, -x)] : place(u, x);
}

/** Breasts close together end nearer the centre line, or the two would add up to one across the hollow. Radians. */
function reachToCentre(bustAngle: number): number {
  const room = 1.25 * Math.max(0.5 * Math.PI - bustAngle, 0.1);
  // A smooth minimum of 0.62 and the room there is.
  return (0.62 ** -6 + room ** -6) ** (-1 / 6);
}

/** Both bumps of a pair; `skew` holds half of right minus left of (height, u, z). */
function placePair(pair: BumpPair, skew: readonly [number, number, number] = [0, 0, 0]): number[] {
  const { u, z, side, centre, down, up, height, turn, fullness, roundness = 0 } = pair;
  const form = [fullness, roundness, pair.fullnessBelow ?? fullness, pair.runsUnderArm ? 0 : 1];
  const x = Math.sin(turn);
  const y = Math.cos(turn) * Math.sign(Math.sin(u));
  // On the right front, smaller u lies towards the side; at the back the side is at larger u.
  const [below, above] = u > 0 ? [side, centre] : [centre, side];
  return [
    ...[u + skew[1], z + skew[2], below, above, down, up, height + skew[0], x, y, ...form],
    ...[Math.PI - u + skew[1], z - skew[2], above, below, down, up, height - skew[0], -x, y, ...form],
  ];
}

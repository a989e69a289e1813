import { reachToCentre } from './bump-reaches.ts';
import type { ParameterId } from './parameter-ids.ts';
import { hangBump, placeChoiceBumps, placeHump, turnBumps } from './place-choice-bumps.ts';
import { KNOT, KNOT_IDS, KNOTS, type KnotId, RAIL, RAIL_COUNT } from './rails.ts';
import type { ShapeNumbers } from './shape-numbers.ts';
import { twistRows } from './twist-rows.ts';
import type { BodyShape, Figure } from './types.ts';

export type ParameterValues = Record<ParameterId, number>;

/**
 * Squareness of the sections by level; 0 is an ellipse. At chest, navel and hip such that tape and calipers of the 1988 survey
 * agree on average (shared/survey/RESULTS.md); between them common practice, no source.
 */
const SQUARENESS: Record<KnotId, readonly [front: number, back: number]> = {
  base: [0.04, 0.05],
  hip: [0.04, 0.055],
  highHip: [0.008, 0.014],
  waist: [0.002, 0.006],
  underbust: [0.045, 0.05],
  bust: [0.035, 0.045],
  upperChest: [0.06, 0.07],
  midArm: [0.05, 0.055],
  shoulderPoint: [0.035, 0.04],
  shoulderEnd: [0.03, 0.032],
  midShoulder: [0.015, 0.015],
  neckBase: [0, 0],
  neckMiddle: [0, 0],
  neckTop: [0, 0],
};

/** Men's sections where they differ. */
const SQUARENESS_OF_CHEST: Partial<typeof SQUARENESS> = {
  hip: [0.034, 0.05],
  highHip: [0.014, 0.02],
  bust: [0.09, 0.1],
};

type Rails = Float64Array;

/** Builds the surface's data from the unknowns. Pure; costs some microseconds. */
export function buildShape(
  p: ParameterValues,
  numbers: ShapeNumbers,
  figure: Figure,
  isMirrorSymmetric: boolean,
): BodyShape {
  const n = KNOTS.length;
  const rails: Rails = new Float64Array(RAIL_COUNT * n);
  const set = (rail: keyof typeof RAIL, knot: KnotId, value: number): void => {
    rails[RAIL[rail] * n + KNOT_IDS.indexOf(knot)] = value;
  };
  const extra: Partial<Record<KnotId, number>> = {
    hip: p.kHip,
    highHip: p.kHighHip,
    waist: p.kWaist,
    underbust: p.kUnderbust,
    bust: p.kBust,
  };
  const squareness = figure === 'bust' ? SQUARENESS : { ...SQUARENESS, ...SQUARENESS_OF_CHEST };
  for (const knot of KNOT_IDS) {
    const [front, back] = squareness[knot];
    set('kF', knot, front + (extra[knot] ?? 0));
    set('kB', knot, back + (extra[knot] ?? 0));
  }
  setTrunk(p, set);
  setSides(numbers.sideBack, set);
  setShoulders(p, numbers.shoulderForm, set);
  setNeck(p, numbers, set);
  twistRows(numbers, set);
  return {
    isMirrorSymmetric,
    vRange: [KNOT.base, KNOT.neckTop],
    knots: KNOTS,
    rises: placeRises(p),
    rails,
    bumps: makeBumps(p, numbers, figure),
    armhole: { yaw: p.armYaw, front: p.armFront, back: p.armBack, turn: numbers.trunkTurn },
  };
}

/** A step between rows never shrinks below about this, mm, whatever a search tries. */
const LEAST_STEP = 2;

/**
 * On the trunk nearly the heights themselves; above it, where front, side and back part, the chart's own spacing in the
 * measure of this body. Only where the splines run: rows stay at their heights even if a search crosses them.
 */
function placeRises(p: ParameterValues): Float64Array {
  const { zBase, zHip, zHighHip, zUnderbust, zBust, zUpperChest } = p;
  const trunk = [zBase, zHip, zHighHip, 0, zUnderbust, zBust, zUpperChest];
  const above = 0.5 * (p.zNape + p.zNeckSide) - zUpperChest;
  const rises = new Float64Array(KNOTS.length);
  rises[0] = zBase;
  for (let k = 1; k < KNOTS.length; k++) {
    const share = (KNOTS[k] - KNOTS[k - 1]) / (KNOT.neckBase - KNOT.upperChest);
    const step = k < trunk.length ? trunk[k] - trunk[k - 1] : share * above;
    rises[k] = rises[k - 1] + 0.5 * (step + Math.hypot(step, 2 * LEAST_STEP));
  }
  return rises;
}

type SetRail = (rail: keyof typeof RAIL, knot: KnotId, value: number) => void;

function setTrunk(p: ParameterValues, set: SetRail): void {
  const level = (knot: KnotId, a: number, d: number, y: number, z: number): void => {
    set('a', knot, a);
    set('yF', knot, y + d);
    set('yB', knot, y - d);
    for (const rail of ['zS', 'zF', 'zB'] as const) set(rail, knot, z);
  };
  level('base', 0.985 * p.aHip, 0.97 * p.dHip, p.yHip + 1, p.zBase);
  level('hip', p.aHip, p.dHip, p.yHip, p.zHip);
  level('highHip', p.aHighHip, p.dHighHip, p.yHighHip, p.zHighHip);
  level('waist', p.aWaist, p.dWaist, 0, 0);
  level('underbust', p.aUnderbust, p.dUnderbust, p.yUnderbust, p.zUnderbust);
  level('bust', p.aBust, p.dBust, p.yBust, p.zBust);
  level('upperChest', p.aUpperChest, p.dUpperChest, p.yUpperChest, p.zUpperChest);
  // The lowest row stays level, for the form to stand on.
  set('dz', 'hip', p.hipZ);
  set('dz', 'highHip', 0.45 * p.hipZ);
  set('dz', 'underbust', 0.3 * p.armpitZ);
  set('dz', 'bust', 0.6 * p.armpitZ);
  set('dz', 'upperChest', p.armpitZ);
}

/** The side line: behind the middle of every row, all the way up. */
function setSides(sideBack: ShapeNumbers['sideBack'], set: SetRail): void {
  const { hip, highHip, waist, underbust, bust, upperChest, neck } = sideBack;
  for (const [knot, value] of Object.entries({
    base: hip,
    hip,
    highHip,
    waist,
    underbust,
    bust,
    upperChest,
  })) {
    set('yS', knot as KnotId, value);
  }
  for (const knot of ['midArm', 'shoulderPoint', 'shoulderEnd', 'midShoulder', 'neckBase'] as const)
    set('yS', knot, neck);
}

/** Rows from the upper chest to the neck base: the front follows the breastbone, the back the spine, the side the arm stump and the shoulder line. */
function setShoulders(p: ParameterValues, shoulderForm: number, set: SetRail): void {
  const span = KNOT.neckBase - KNOT.upperChest;
  const frontChest = p.yUpperChest + p.dUpperChest;
  const backChest = p.yUpperChest - p.dUpperChest;
  const frontNeck = p.yNeck + p.dNeck;
  const backNeck = p.yNeck - p.dNeck;
  for (const knot of ['midArm', 'shoulderPoint', 'shoulderEnd', 'midShoulder'] as const) {
    const f = (KNOT[knot] - KNOT.upperChest) / span;
    const swell = Math.sin(Math.PI * f);
    set('yF', knot, frontChest + (frontNeck - frontChest) * f + p.fullFront * swell);
    set('yB', knot, backChest + (backNeck - backChest) * f - p.roundBack * swell);
    set('zF', knot, p.zUpperChest + (p.zNeckFront - p.zUpperChest) * f);
    set('zB', knot, p.zUpperChest + (p.zNape - p.zUpperChest) * f);
  }
  // The armhole's plane rises from the armpit to the shoulder point; the arm stump bulges beyond it.
  const armShare = (KNOT.midArm - KNOT.upperChest) / (KNOT.shoulderPoint - KNOT.upperChest);
  const alongArm = (from: number, to: number): number => from + (to - from) * armShare;
  set('a', 'midArm', alongArm(p.aUpperChest, p.xShoulder) + p.armBulge);
  set('a', 'shoulderPoint', p.xShoulder);
  set('a', 'midShoulder', 0.5 * (p.xShoulder + p.aNeck) + 2);
  set('zS', 'midArm', alongArm(p.zUpperChest, p.zShoulder));
  set('zS', 'shoulderPoint', p.zShoulder);
  set('zS', 'midShoulder', 0.5 * (p.zShoulder + p.zNeckSide) - 1 + shoulderForm);
  // Close to the shoulder point, and on the way to the middle of the shoulder: otherwise the splines stand out in a corner.
  const end = (KNOT.shoulderEnd - KNOT.shoulderPoint) / (KNOT.midShoulder - KNOT.shoulderPoint);
  const toEnd = (from: number, to: number): number => from + end * (to - from);
  set('a', 'shoulderEnd', toEnd(p.xShoulder, 0.5 * (p.xShoulder + p.aNeck) + 2));
  set('zS', 'shoulderEnd', toEnd(p.zShoulder, 0.5 * (p.zShoulder + p.zNeckSide) - 1 + shoulderForm) + 1.5);
  set('da', 'shoulderEnd', toEnd(p.shoulderX, 0.5 * p.shoulderX));
  set('dz', 'shoulderEnd', toEnd(p.shoulderZ, 0.5 * p.shoulderZ));
  set('da', 'midArm', 0.5 * p.shoulderX);
  set('da', 'shoulderPoint', p.shoulderX);
  set('da', 'midShoulder', 0.5 * p.shoulderX);
  set('dz', 'midArm', 0.5 * p.shoulderZ + 0.5 * p.armpitZ);
  set('dz', 'shoulderPoint', p.shoulderZ);
  set('dz', 'midShoulder', 0.5 * p.shoulderZ);
}

/** Neck stub: base on the body, top in one plane (the neck plate, lower in front), and a row between that keeps the side hollow smooth. */
function setNeck(p: ParameterValues, numbers: ShapeNumbers, set: SetRail): void {
  const base = {
    a: p.aNeck,
    yF: p.yNeck + p.dNeck,
    yB: p.yNeck - p.dNeck,
    zS: p.zNeckSide,
    zF: p.zNeckFront,
    zB: p.zNape,
  };
  // A row with zS = (zF + zB) / 2 and no squareness lies in a plane.
  // Nearly round; but no deeper than the base in its own plane leaves room for, or the throat would fold where a base lies flat.
  const baseDepth = Math.hypot(p.dNeck, 0.5 * (p.zNape - p.zNeckFront));
  const depth = Math.min(0.93 * p.aNeck, 0.95 * baseDepth) * (1 + p.neckSize);
  const d = depth * Math.cos(numbers.neckTilt);
  const y = p.yNeck + 0.35 * numbers.neckStub + 0.5 * numbers.neckForward;
  const z = p.zNeckSide + numbers.neckStub;
  const rise = d * Math.tan(numbers.neckTilt);
  const top = {
    a: 0.9 * p.aNeck * (1 + p.neckSize),
    yF: y + d,
    yB: y - d,
    zS: z,
    zF: z - rise,
    zB: z + rise,
  };
  const share = (KNOT.neckMiddle - KNOT.neckBase) / (KNOT.neckTop - KNOT.neckBase);
  for (const rail of ['a', 'yF', 'yB', 'zS', 'zF', 'zB'] as const) {
    set(rail, 'neckBase', base[rail]);
    set(rail, 'neckMiddle', base[rail] + share * (top[rail] - base[rail]));
    set(rail, 'neckTop', top[rail]);
  }
  // Most of the narrowing happens low down, where the shoulder runs into the neck.
  set('a', 'neckMiddle', base.a + 0.8 * (top.a - base.a));
}

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
  /** Below; 0 where left out. */
  readonly swell?: number;
  /** It runs on under the arm; otherwise it dies out before it. */
  readonly runsUnderArm?: boolean;
}

function makeBumps(p: ParameterValues, numbers: ShapeNumbers, figure: Figure): Float64Array {
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
    swell: isBust ? numbers.bustSwell : 0,
    runsUnderArm: isBust,
  };
  const blade = {
    u: -0.92,
    z: p.zUpperChest + 12,
    side: 0.55,
    centre: 0.95,
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
  const breasts = { ...hangBump(breast, numbers.bustDrop), height: 0.5 * (right + left) * breast.height };
  const breastSkew = p.bustHeightSkew + 0.5 * (right - left) * breast.height;
  const turn = (knot: KnotId, bumps: number[]): number[] => turnBumps(knot, numbers.trunkTurn, bumps);
  return Float64Array.from([
    ...turn('bust', placePair(breasts, [breastSkew, p.bustAngleSkew, p.bustLevelSkew])),
    ...turn('upperChest', placePair(blade)),
    ...placePair(seat, p.hipZ === 0 ? undefined : [0, 0, p.hipZ * Math.cos(seat.u)]),
    ...turn('neckBase', placePair(collarBone)),
    ...turn('midArm', placeHump(p.zNape, numbers.hump, numbers.humpBelow)),
    ...placeChoiceBumps(numbers.bumps, numbers.trunkTurn),
  ]);
}

/** Both bumps of a pair; `skew` holds half of right minus left of (height, u, z). */
function placePair(pair: BumpPair, skew: readonly [number, number, number] = [0, 0, 0]): number[] {
  const { u, z, side, centre, down, up, height, turn, fullness, roundness = 0 } = pair;
  const form = [
    fullness,
    roundness,
    pair.fullnessBelow ?? fullness,
    pair.runsUnderArm ? 0 : 1,
    pair.swell ?? 0,
  ];
  const x = Math.sin(turn);
  const y = Math.cos(turn) * Math.sign(Math.sin(u));
  // On the right front, smaller u lies towards the side; at the back the side is at larger u.
  const [below, above] = u > 0 ? [side, centre] : [centre, side];
  return [
    ...[u + skew[1], z + skew[2], below, above, down, up, height + skew[0], x, y, ...form],
    ...[Math.PI - u + skew[1], z - skew[2], above, below, down, up, height - skew[0], -x, y, ...form],
  ];
}

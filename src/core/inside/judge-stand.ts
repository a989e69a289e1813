import hardware from '../../../shared/hardware.json' with { type: 'json' };
import { type Issue, withUsual } from '../base/index.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { checkStem, wallOfTube } from './packing-of-tube.ts';
import { phrase } from './phrases.ts';
import type { InsideOptions } from './types.ts';

export const GRAVITY = 9.81;
/** Tilt at which a loaded form must still come back, degrees: our own criterion, no standard for dress forms is known. */
const LEAST_TIP_ANGLE_DEG = 10;
/** Lean of the pole that the eye does not mind, mm. Ours. */
const MOST_LEAN = 15;

/** Foot, casters and ballast under the base plate take about so much, mm. Ours. */
const LEAST_OVER_FLOOR = 60;

/** A mass with its height over the floor and its distance from the pole. kg, mm. */
export interface StandMass {
  readonly name: string;
  readonly mass: number;
  readonly z: number;
  readonly x: number;
}

export interface StandFindings {
  readonly tipAngleDeg: number;
  /** Level push at `pushHeight` that tips it, N. */
  readonly pushForce: number;
  readonly pushHeight: number;
  /** kg to add on the legs, 30 mm over the floor, to reach the least angle; 0 when it does. */
  readonly ballast: number;
  /** The pole under the garment's one-sided weight: sideways at the base plate, mm, and its slope there, radians. */
  readonly lean: number;
  readonly leanAngle: number;
  /** The waist over the floor, mm, and whether that is an adult's usual one. */
  readonly waistHeight: number;
  readonly isHeightAssumed: boolean;
  /** What hangs on it: kg, mm off the pole, mm over the floor. */
  readonly load: { readonly mass: number; readonly offset: number; readonly height: number };
  /** From the middle to the nearest edge over which it tips, mm. */
  readonly tippingDistance: number;
  readonly totalMass: number;
}

const BALLAST_HEIGHT = 30;

/**
 * Statics of tipping over the line between two neighbouring feet, d = R cos(π/N) from the pole: the load tips it at
 * tan θ = (d − x)/z with x, z of the common centre of mass; a level push F at height h does at F h = M g (d − x); ballast
 * at zb: mb ≥ (tanθ Σmz + Σmx − d M)/(d − zb tanθ).
 */
export function judgeTipping(
  masses: readonly StandMass[],
  legs: number,
  legRadius: number,
  pushHeight: number,
): Pick<StandFindings, 'tipAngleDeg' | 'pushForce' | 'ballast' | 'tippingDistance' | 'totalMass'> {
  const total = masses.reduce((sum, { mass }) => sum + mass, 0);
  const momentX = masses.reduce((sum, { mass, x }) => sum + mass * x, 0);
  const momentZ = masses.reduce((sum, { mass, z }) => sum + mass * z, 0);
  const d = legRadius * Math.cos(Math.PI / legs);
  const tan = Math.tan((LEAST_TIP_ANGLE_DEG * Math.PI) / 180);
  return {
    tipAngleDeg: (Math.atan2(d - momentX / total, momentZ / total) * 180) / Math.PI,
    pushForce: Math.max(0, (GRAVITY * (total * d - momentX)) / pushHeight),
    ballast: Math.max(0, (tan * momentZ + momentX - d * total) / (d - BALLAST_HEIGHT * tan)),
    tippingDistance: d,
    totalMass: total,
  };
}

/**
 * A pole held at its foot, with a moment M = m g e at its free end: sideways M L²/(2 E I), slope M L/(E I) there, with
 * I = π (D⁴ − d⁴)/64 (Euler–Bernoulli, any handbook's cantilever table). mm, kg, GPa; wall ≥ D/2 means solid.
 */
export function leanOfPole(pole: {
  readonly diameter: number;
  readonly wall: number;
  readonly freeLength: number;
  readonly youngsModulusGPa: number;
  readonly mass: number;
  readonly offset: number;
}): { lean: number; angle: number } {
  const bore = Math.max(0, pole.diameter - 2 * pole.wall);
  const inertia = (Math.PI / 64) * (pole.diameter ** 4 - bore ** 4);
  const stiffness = pole.youngsModulusGPa * 1000 * inertia;
  const moment = pole.mass * GRAVITY * pole.offset;
  return {
    lean: (moment * pole.freeLength ** 2) / (2 * stiffness),
    angle: (moment * pole.freeLength) / stiffness,
  };
}

interface FormOnStand {
  readonly mass: number;
  readonly middle: number;
  readonly base: number;
  readonly shoulder: number;
  readonly waistHeight: number;
  readonly isHeightAssumed?: boolean;
}

/**
 * Lean and tipping of a form on its stand. `form`: mass of shell and filling, height of its middle over the waist,
 * heights of base plate and shoulder over the waist (negative below), the waist's own over the floor. Issues name what is too heavy or too low, with the
 * numbers that would do.
 */
export function judgeStand(
  form: FormOnStand,
  options: InsideOptions,
): { findings: StandFindings; issues: Issue[] } {
  const stand = standOf(form, options);
  const { waist, garment, offset, diameter, wall, material, legs, legRadius } = stand;
  const pushHeight = waist + form.shoulder;
  const tipping = judgeTipping([...stand.masses, garment], legs, legRadius, pushHeight);
  const youngsModulusGPa = hardware.youngsModulusGPa[material];
  const freeLength = Math.max(0, waist + form.base);
  const bent = leanOfPole({ diameter, wall, freeLength, youngsModulusGPa, mass: garment.mass, offset });
  const issues = [
    ...checkTipping(stand, tipping),
    ...checkLean(stand, bent.lean),
    ...checkHeight(form, waist),
    ...checkWall(stand),
    ...checkStem(options),
  ];
  const load = { mass: garment.mass, offset: garment.x, height: garment.z };
  const height = { waistHeight: waist, isHeightAssumed: form.isHeightAssumed === true };
  const findings = { ...tipping, ...height, pushHeight, load, lean: bent.lean, leanAngle: bent.angle };
  return { findings, issues };
}

/** The options with their usual values, and the masses they make. */
function standOf(form: FormOnStand, options: InsideOptions) {
  const waist = form.waistHeight;
  const usual = withUsual(INSIDE_OPTIONS, options);
  const { garmentOffset: offset, standMass, poleMaterial: material, tubeDiameter: diameter } = usual;
  const { legs, legRadius, garmentMass } = usual;
  // Three quarters of the stand's mass lie in its foot.
  const masses: StandMass[] = [
    { name: 'form', mass: form.mass, z: waist + form.middle, x: 0 },
    { name: 'foot', mass: 0.75 * standMass, z: 50, x: 0 },
    { name: 'pole', mass: 0.25 * standMass, z: waist / 2, x: 0 },
  ];
  return {
    waist,
    offset,
    material,
    diameter,
    wall: wallOfTube(options),
    legs,
    legRadius,
    masses,
    garment: {
      name: 'garment',
      mass: garmentMass,
      z: options.garmentHeight ?? waist,
      x: offset,
    } satisfies StandMass,
  };
}

type Stand = ReturnType<typeof standOf>;

/** Tilting short of the least angle: ballast, legs or a garment that would do, each by the statics of `judgeTipping`. */
function checkTipping(stand: Stand, tipping: ReturnType<typeof judgeTipping>): Issue[] {
  const { tipAngleDeg, ballast, tippingDistance: d } = tipping;
  if (tipAngleDeg >= LEAST_TIP_ANGLE_DEG) return [];
  const { garment, masses, legs } = stand;
  const tan = Math.tan((LEAST_TIP_ANGLE_DEG * Math.PI) / 180);
  const all = [...masses, garment];
  const total = all.reduce((sum, { mass }) => sum + mass, 0);
  const needed = all.reduce((sum, { mass, x, z }) => sum + mass * (x + tan * z), 0) / total;
  const legsNeeded = Math.ceil(needed / Math.cos(Math.PI / legs) / 10) * 10;
  // What the bare form has to spare, over what a kilogram of the garment takes.
  const spare = masses.reduce((sum, { mass, x, z }) => sum + mass * (d - x - tan * z), 0);
  const most = spare / (garment.x + tan * garment.z - d);
  const tips = {
    tipAngleDeg,
    leastAngleDeg: LEAST_TIP_ANGLE_DEG,
    ballast: roundUp(ballast),
    legRadius: legsNeeded,
  };
  const message =
    most > 0
      ? phrase('stand.tips-under-garment', {
          ...tips,
          mass: garment.mass,
          offset: garment.x,
          most: Math.floor(10 * most) / 10,
        })
      : phrase('stand.tips-under-form', tips);
  const path = most > 0 ? 'garmentMass' : 'legRadius';
  const [measured, limit] = [tipAngleDeg, LEAST_TIP_ANGLE_DEG];
  return [{ code: 'stand-tips', path, message, severity: 'error', measured, limit }];
}

/** To a tenth, so that what is told is enough. */
function roundUp(value: number): number {
  return Math.ceil(10 * value) / 10;
}

function checkLean({ garment, offset }: Stand, lean: number): Issue[] {
  if (lean <= MOST_LEAN) return [];
  const message = phrase('stand.pole-leans', { lean, mass: garment.mass, offset, most: MOST_LEAN });
  const path = 'tubeDiameter';
  return [{ code: 'pole-leans', path, message, severity: 'warning', measured: lean, limit: MOST_LEAN }];
}

/** The base plate has to hang over the foot. */
function checkHeight({ base }: FormOnStand, waist: number): Issue[] {
  const limit = Math.ceil(LEAST_OVER_FLOOR - base);
  if (waist >= limit) return [];
  const message = phrase('stand.form-too-low', {
    waist,
    base: waist + base,
    leastBase: LEAST_OVER_FLOOR,
    leastWaist: limit,
  });
  const path = 'waistHeight';
  return [{ code: 'form-too-low', path, message, severity: 'error', measured: waist, limit }];
}

function checkWall({ material, diameter, wall }: Stand): Issue[] {
  const limit = diameter / 2;
  if (wall <= limit) return [];
  const message = phrase('stand.wall-too-thick', { wall, diameter, material, most: limit });
  const path = 'tubeWall';
  return [{ code: 'wall-too-thick', path, message, severity: 'warning', measured: wall, limit }];
}

/** A tube to be had as a pole; `diameter` outside and `wall`, mm. */
export interface Tube {
  readonly id: string;
  readonly name: string;
  readonly material: string;
  readonly diameter: number;
  readonly wall: number;
  /** Key of the table's sources. */
  readonly source: string;
}
/** Tubes usually to be had as poles. */
export const TUBES: readonly Tube[] = hardware.tubes;

import hardware from '../../../shared/hardware.json' with { type: 'json' };
import type { Issue } from '../base/index.ts';
import type { InsideOptions } from './types.ts';

const GRAVITY = 9.81;
/** Tilt at which a loaded form must still come back, degrees: our own criterion, no standard for dress forms is known. */
const LEAST_TIP_ANGLE_DEG = 10;
/** Lean of the pole that the eye does not mind, mm. Ours. */
const MOST_LEAN = 15;

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

/**
 * Lean and tipping of a form on its stand. `form`: mass of shell and filling, height of its middle over the waist,
 * heights of base plate and bust over the waist (negative below). Issues name what is too heavy, with the ballast needed.
 */
export function judgeStand(
  form: { readonly mass: number; readonly middle: number; readonly base: number; readonly bust: number },
  options: InsideOptions,
): { findings: StandFindings; issues: Issue[] } {
  const waist = options.waistHeight ?? 1040;
  const garment = options.garmentMass ?? 3;
  const offset = options.garmentOffset ?? 60;
  const standMass = options.standMass ?? 6;
  const material = options.poleMaterial ?? 'steel';
  const diameter = options.tubeDiameter ?? 25;
  const wall = options.tubeWall ?? (material === 'beech' ? diameter / 2 : 1.5);
  const freeLength = waist + form.base;
  const pushHeight = waist + form.bust;
  // Three quarters of the stand's mass lie in its foot.
  const masses = [
    { name: 'form', mass: form.mass, z: waist + form.middle, x: 0 },
    { name: 'garment', mass: garment, z: waist, x: offset },
    { name: 'foot', mass: 0.75 * standMass, z: 50, x: 0 },
    { name: 'pole', mass: 0.25 * standMass, z: waist / 2, x: 0 },
  ];
  const tipping = judgeTipping(masses, options.legs ?? 5, options.legRadius ?? 300, pushHeight);
  const youngsModulusGPa = hardware.youngsModulusGPa[material];
  const bent = leanOfPole({ diameter, wall, freeLength, youngsModulusGPa, mass: garment, offset });
  const issues: Issue[] = [];
  if (tipping.tipAngleDeg < LEAST_TIP_ANGLE_DEG) {
    const message = `A garment of ${garment} kg is too heavy for this stand: it tips at ${tipping.tipAngleDeg.toFixed(1)}°, and our own criterion is ${LEAST_TIP_ANGLE_DEG}°. Put ${tipping.ballast.toFixed(1)} kg on the legs, or take longer legs.`;
    issues.push({
      code: 'stand-tips',
      path: 'garmentMass',
      message,
      severity: 'error',
      measured: tipping.tipAngleDeg,
      limit: LEAST_TIP_ANGLE_DEG,
    });
  }
  if (bent.lean > MOST_LEAN) {
    const message = `The pole leans ${bent.lean.toFixed(0)} mm under ${garment} kg hung ${offset} mm off it; ${MOST_LEAN} mm are hardly seen. Take a thicker or stiffer tube.`;
    issues.push({
      code: 'pole-leans',
      path: 'tubeDiameter',
      message,
      severity: 'warning',
      measured: bent.lean,
      limit: MOST_LEAN,
    });
  }
  return { findings: { ...tipping, pushHeight, lean: bent.lean, leanAngle: bent.angle }, issues };
}

export type Tube = (typeof hardware.tubes)[number];
/** Tubes usually to be had as poles. */
export const TUBES: readonly Tube[] = hardware.tubes;

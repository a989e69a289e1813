import { type ClothStiffness, SLACK, TAUT, WRINKLED } from './types.ts';

/** A cloth as the sums want it: stiffness and compliance, N/mm and mm/N. */
export interface ClothLaw {
  readonly c11: number;
  readonly c12: number;
  readonly c22: number;
  readonly c33: number;
  /** Compliance along warp, along weft, across (Poisson's, positive), and 1 / shear. */
  readonly along: number;
  readonly weft: number;
  readonly across: number;
  readonly shear: number;
}

export function lawOfCloth({ warp, weft, shear, poisson }: ClothStiffness): ClothLaw {
  const rest = 1 - (poisson * poisson * weft) / warp;
  return {
    c11: warp / rest,
    c12: (poisson * weft) / rest,
    c22: weft / rest,
    c33: shear,
    along: 1 / warp,
    weft: 1 / weft,
    across: poisson / warp,
    shear: 1 / shear,
  };
}

/** Places in the array that `relaxCloth` fills. */
export const ENERGY = 0;
/** S11, S22, S12. */
export const STRESS = 1;
/** dS/dE, of (E11, E22, 2 E12): 11, 12, 13, 22, 23, 33. */
export const TANGENT = 4;
export const STATE = 10;
/** Cosine and sine of the direction of pull, where wrinkled. */
export const DIRECTION = 11;
export const RELAXED_SIZE = 13;

/**
 * Energy (N/mm), second Piola–Kirchhoff tension and tangent of a cloth that cannot be pushed, at Green strain e11, e22 and
 * g = 2 e12: the least of ½ (E + P) : C : (E + P) over all wrinkling strains P that are not negative. That is convex, so a state
 * that satisfies its conditions is the only one: taut (P = 0), slack (no tension), or wrinkled, with pull along one
 * direction t, which makes the most of E_tt² / (t t : C⁻¹ : t t). `pushed` mixes in that share of the law without wrinkles.
 * Sources: Pipkin, "The relaxed energy density for isotropic elastic membranes", IMA J. Appl. Math. 36 (1986); for any
 * elastic law, Pipkin, "Relaxed energy densities for large deformations of membranes", IMA J. Appl. Math. 52 (1994).
 */
export function relaxCloth(
  law: ClothLaw,
  e11: number,
  e22: number,
  g: number,
  pushed: number,
  out: Float64Array,
): void {
  const s11 = law.c11 * e11 + law.c12 * e22;
  const s22 = law.c12 * e11 + law.c22 * e22;
  const s12 = law.c33 * g;
  const energy = (s11 * e11 + s22 * e22 + s12 * g) / 2;
  out[DIRECTION] = 1;
  out[DIRECTION + 1] = 0;
  let kept = pushed;
  if (s11 + s22 > 0 && s11 * s22 >= s12 * s12) {
    out[STATE] = TAUT;
    out.fill(0, ENERGY, STATE);
    kept = 1;
  } else if (e11 + e22 <= 0 && 4 * e11 * e22 >= g * g) {
    out[STATE] = SLACK;
    out.fill(0, ENERGY, STATE);
  } else {
    out[STATE] = WRINKLED;
    pullAlong(law, e11, e22, g, findPull(law, e11, e22, g), 1 - pushed, out);
  }
  out[ENERGY] += kept * energy;
  out[STRESS] += kept * s11;
  out[STRESS + 1] += kept * s22;
  out[STRESS + 2] += kept * s12;
  out[TANGENT] += kept * law.c11;
  out[TANGENT + 1] += kept * law.c12;
  out[TANGENT + 3] += kept * law.c22;
  out[TANGENT + 5] += kept * law.c33;
}

/** `share` of the wrinkled state with pull at the angle `at` from warp. Tangent by the implicit function theorem. */
function pullAlong(
  law: ClothLaw,
  e11: number,
  e22: number,
  g: number,
  at: number,
  share: number,
  out: Float64Array,
): void {
  const c = Math.cos(at);
  const s = Math.sin(at);
  const cc = c * c;
  const ss = s * s;
  const cs = c * s;
  const shear = law.shear - 2 * law.across;
  const h = law.along * cc * cc + law.weft * ss * ss + shear * cc * ss;
  const h1 = cs * (4 * (law.weft * ss - law.along * cc) + 2 * shear * (cc - ss));
  const strain = e11 * cc + e22 * ss + g * cs;
  const sigma = strain / h;
  const slope = slopeOfPull(law, e11, e22, g, c, s)[1];
  // Second derivative of the energy by the angle is strain · slope / h², below 0 at the most.
  const curve = strain * slope < 0 ? -(h * h) / (strain * slope) : 0;
  const q1 = sigma * (-2 * cs - (0.5 * h1 * cc) / h);
  const q2 = sigma * (2 * cs - (0.5 * h1 * ss) / h);
  const q3 = sigma * (cc - ss - (0.5 * h1 * cs) / h);
  const stiff = share / h;
  const turn = share * curve;
  out[ENERGY] = (share * sigma * strain) / 2;
  out[STRESS] = share * sigma * cc;
  out[STRESS + 1] = share * sigma * ss;
  out[STRESS + 2] = share * sigma * cs;
  out[TANGENT] = stiff * cc * cc + turn * q1 * q1;
  out[TANGENT + 1] = stiff * cc * ss + turn * q1 * q2;
  out[TANGENT + 2] = stiff * cc * cs + turn * q1 * q3;
  out[TANGENT + 3] = stiff * ss * ss + turn * q2 * q2;
  out[TANGENT + 4] = stiff * ss * cs + turn * q2 * q3;
  out[TANGENT + 5] = stiff * cs * cs + turn * q3 * q3;
  out[DIRECTION] = c;
  out[DIRECTION + 1] = s;
}

/** d/dθ of E_tt / √h times h^1.5, and its own derivative by θ where it is 0. */
function slopeOfPull(
  law: ClothLaw,
  e11: number,
  e22: number,
  g: number,
  c: number,
  s: number,
): [number, number] {
  const cc = c * c;
  const ss = s * s;
  const cs = c * s;
  const shear = law.shear - 2 * law.across;
  const h = law.along * cc * cc + law.weft * ss * ss + shear * cc * ss;
  const h1 = cs * (4 * (law.weft * ss - law.along * cc) + 2 * shear * (cc - ss));
  const h2 =
    law.along * (12 * cc * ss - 4 * cc * cc) +
    law.weft * (12 * cc * ss - 4 * ss * ss) +
    2 * shear * (1 - 8 * cc * ss);
  const strain = e11 * cc + e22 * ss + g * cs;
  const strain1 = 2 * cs * (e22 - e11) + g * (cc - ss);
  const strain2 = 2 * (cc - ss) * (e22 - e11) - 4 * g * cs;
  return [strain1 * h - 0.5 * strain * h1, strain2 * h + 0.5 * (strain1 * h1 - strain * h2)];
}

/** Angle of pull of a wrinkled state: Newton from the direction of the largest strain, by a scan where that went astray. */
function findPull(law: ClothLaw, e11: number, e22: number, g: number): number {
  const start = Math.atan2(g, e11 - e22) / 2;
  const near = polishPull(law, e11, e22, g, start);
  if (isPull(law, e11, e22, g, near)) return near;
  const samples = 90;
  let best = start;
  let most = -Infinity;
  for (let i = 0; i < samples; i++) {
    const at = (Math.PI * i) / samples;
    const c = Math.cos(at);
    const s = Math.sin(at);
    const strain = e11 * c * c + e22 * s * s + g * c * s;
    const value = strain / Math.sqrt(complianceAlong(law, c, s));
    if (value > most) {
      most = value;
      best = at;
    }
  }
  return narrowPull(law, e11, e22, g, best - Math.PI / samples, best + Math.PI / samples);
}

function complianceAlong(law: ClothLaw, c: number, s: number): number {
  const cc = c * c;
  const ss = s * s;
  return law.along * cc * cc + law.weft * ss * ss + (law.shear - 2 * law.across) * cc * ss;
}

function polishPull(law: ClothLaw, e11: number, e22: number, g: number, start: number): number {
  let at = start;
  for (let i = 0; i < 12; i++) {
    const [value, slope] = slopeOfPull(law, e11, e22, g, Math.cos(at), Math.sin(at));
    if (!(slope < 0)) return Number.NaN;
    const step = -value / slope;
    at += Math.max(-0.4, Math.min(0.4, step));
    if (Math.abs(step) < 1e-9) return at;
  }
  return at;
}

/** The conditions of the least energy: pull along t, wrinkles across it. */
function isPull(law: ClothLaw, e11: number, e22: number, g: number, at: number): boolean {
  const c = Math.cos(at);
  const s = Math.sin(at);
  const cc = c * c;
  const ss = s * s;
  const strain = e11 * cc + e22 * ss + g * c * s;
  if (!(strain > 0)) return false;
  const acrossStrain = e11 * ss + e22 * cc - g * c * s;
  const across = (law.along + law.weft - law.shear) * cc * ss - law.across * (cc * cc + ss * ss);
  const sigma = strain / complianceAlong(law, c, s);
  const scale = Math.abs(e11) + Math.abs(e22) + Math.abs(g);
  const [value] = slopeOfPull(law, e11, e22, g, c, s);
  return (
    sigma * across - acrossStrain >= -1e-9 * scale &&
    Math.abs(value) <= 1e-7 * scale * complianceAlong(law, c, s)
  );
}

/** Bisection between two angles where the slope changes its sign from + to −. */
function narrowPull(law: ClothLaw, e11: number, e22: number, g: number, from: number, to: number): number {
  let low = from;
  let high = to;
  for (let i = 0; i < 50; i++) {
    const at = (low + high) / 2;
    if (slopeOfPull(law, e11, e22, g, Math.cos(at), Math.sin(at))[0] > 0) low = at;
    else high = at;
  }
  return (low + high) / 2;
}

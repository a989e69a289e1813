import { cubicSplineMoments, findSplineInterval } from '../math/index.ts';
import type { BodyShape } from './types.ts';

/**
 * Rails: numbers that run up the body as C² splines of the chart height v.
 * Legend: a half-width (mean of right and left), da half of right minus left; yF, yB front and back centre lines;
 * kF, kB squareness of the front and back half of a section; zS, zF, zB heights of the side, front and back of a
 * row; dz half of right minus left side height.
 */
export const RAIL = { a: 0, da: 1, yF: 2, yB: 3, kF: 4, kB: 5, zS: 6, dz: 7, zF: 8, zB: 9 } as const;
export const RAIL_COUNT = 10;

/** Chart heights (nominal mm) of the rail knots; the same for every body, so that layouts follow. */
export const KNOT = {
  base: -270,
  hip: -218,
  highHip: -100,
  waist: 0,
  underbust: 55,
  bust: 118,
  upperChest: 165,
  midArm: 230,
  shoulderPoint: 285,
  midShoulder: 355,
  neckBase: 425,
  neckTop: 465,
} as const;
export type KnotId = keyof typeof KNOT;
export const KNOT_IDS = Object.keys(KNOT) as KnotId[];
export const KNOTS = Float64Array.from(Object.values(KNOT));
/** The armpit lies just above the upper chest row, at the bottom of the armhole. */
export const ARMPIT_V = 178;
const ARM_MIDDLE = 0.5 * (ARMPIT_V + KNOT.shoulderPoint);

/**
 * One bump, numbers per bump: centre (u, z), reach towards smaller and larger u (radians), down and up (mm of z),
 * height, direction x, y, fullness (0 = pointed, 2.2 = nearly flat on top). Bumps live in (u, z), not (u, v): above the
 * chest v runs faster than z in front, and a bump in v ended there in a crease.
 */
export const BUMP_STRIDE = 10;

/** Evaluates points of a shape; holds the spline moments, so make it once per shape. */
export class ShapeEvaluator {
  private readonly moments: Float64Array;
  private readonly row = new Float64Array(RAIL_COUNT);
  private rowV = Number.NaN;

  constructor(private readonly shape: BodyShape) {
    const n = shape.knots.length;
    this.moments = new Float64Array(shape.rails.length);
    for (let rail = 0; rail < RAIL_COUNT; rail++) {
      const values = shape.rails.subarray(rail * n, (rail + 1) * n);
      this.moments.set(cubicSplineMoments(shape.knots, values), rail * n);
    }
  }

  /** All rails at height v; the returned array is overwritten by the next call. */
  railsAt(v: number): Float64Array {
    if (v === this.rowV) return this.row;
    const { knots, rails } = this.shape;
    const n = knots.length;
    const i = findSplineInterval(knots, v);
    const h = knots[i + 1] - knots[i];
    const b = (v - knots[i]) / h;
    const a = 1 - b;
    const ca = ((a * a * a - a) * h * h) / 6;
    const cb = ((b * b * b - b) * h * h) / 6;
    for (let rail = 0, o = i; rail < RAIL_COUNT; rail++, o += n) {
      this.row[rail] = a * rails[o] + b * rails[o + 1] + ca * this.moments[o] + cb * this.moments[o + 1];
    }
    this.rowV = v;
    return this.row;
  }

  /**
   * The point of the surface at (u, v), written to out[offset…offset + 2].
   * Section: x = a (c − k cos 3u)/(1 − k), y = yM + d (s + k sin 3u)/(1 − k), an ellipse with a third harmonic:
   * C∞ in u, box ±a × [yB, yF] whatever k, convex for k < 1/9. Rows tilt by a quadratic in s.
   */
  point(u: number, v: number, out: Float64Array, offset = 0): void {
    this.pointAt(u, Math.cos(u), Math.sin(u), v, out, offset);
  }

  /** `point` with the cosine and sine of u at hand. */
  pointAt(u: number, c: number, s: number, v: number, out: Float64Array, offset: number): void {
    const r = this.railsAt(v);
    // cos 3u and sin 3u from the triple-angle identities.
    const c3 = c * (4 * c * c - 3);
    const s3 = s * (3 - 4 * s * s);
    const w = 0.5 * (1 + s);
    const k = r[RAIL.kB] + (r[RAIL.kF] - r[RAIL.kB]) * w;
    const scale = 1 / (1 - k);
    const middle = 0.5 * (r[RAIL.yF] + r[RAIL.yB]);
    const depth = 0.5 * (r[RAIL.yF] - r[RAIL.yB]);
    const side = (c - k * c3) * scale;
    out[offset] = (r[RAIL.a] + r[RAIL.da] * side) * side;
    out[offset + 1] = middle + depth * (s + k * s3) * scale;
    out[offset + 2] =
      r[RAIL.zS] * (1 - s * s) +
      0.5 * r[RAIL.zF] * s * (s + 1) +
      0.5 * r[RAIL.zB] * s * (s - 1) +
      r[RAIL.dz] * c;
    this.addBumps(u, v, out, offset);
  }

  private addBumps(u: number, v: number, out: Float64Array, offset: number): void {
    const { bumps } = this.shape;
    const open = openness(u, v);
    if (open === 0) return;
    for (let i = 0; i < bumps.length; i += BUMP_STRIDE) {
      const dz = out[offset + 2] - bumps[i + 1];
      if (dz > 1.5 * bumps[i + 5] || dz < -1.5 * bumps[i + 4]) continue;
      let du = u - bumps[i];
      du -= 2 * Math.PI * Math.round(du / (2 * Math.PI));
      const q = reachSquared(du, bumps[i + 2], bumps[i + 3]) + reachSquared(dz, bumps[i + 4], bumps[i + 5]);
      if (q >= 1) continue;
      // (1 − q)^2.5 (1 + fullness q): round top, C² where it meets the body.
      const rest = 1 - q;
      const height = bumps[i + 6] * open * rest * rest * Math.sqrt(rest) * (1 + bumps[i + 9] * q);
      out[offset] += height * bumps[i + 7];
      out[offset + 1] += height * bumps[i + 8];
    }
  }
}

/** (t / reach)² with one reach below 0 and another above, joined smoothly (C∞ in t). */
function reachSquared(t: number, below: number, above: number): number {
  const low = 1 / (below * below);
  const high = 1 / (above * above);
  const blend = 0.35 * Math.min(below, above);
  const sign = t / Math.sqrt(t * t + blend * blend);
  return t * t * (0.5 * (low + high) + 0.5 * (high - low) * sign);
}

/** 0 in the arm stump, 1 away from it, C² between: bumps of the trunk must not dent the armhole. */
function openness(u: number, v: number): number {
  const dv = (v - ARM_MIDDLE) / 62;
  const fromRight = Math.abs(u - 2 * Math.PI * Math.round(u / (2 * Math.PI)));
  const du = Math.min(fromRight, Math.PI - fromRight) / 0.6;
  const t = (du * du + dv * dv - 0.8) / 2.4;
  if (t <= 0) return 0;
  return t >= 1 ? 1 : t * t * t * (t * (6 * t - 15) + 10);
}

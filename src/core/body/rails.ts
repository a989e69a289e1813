import { cubicSplineMoments, findSplineInterval } from '../math/index.ts';
import { acrossOval, fromOval, MOST_RADIUS, radiusTowards } from './armhole-oval.ts';
import { BUMP_STRIDE, measureReaches, REACH_STRIDE, reachSquared } from './bump-reaches.ts';
import { makeChartRise } from './chart-rise.ts';
import { RIM_FADES_AT, RimGap } from './rim-gap.ts';
import { TrunkNetEvaluator } from './trunk-net.ts';
import type { BodyShape } from './types.ts';

/**
 * Rails: numbers that run up the body as C² splines of the rise t, which on the trunk is the height itself. Splines of
 * the chart height v drew a ledge wherever a body's rows crowd, because v spaces them as on an average body.
 * Legend: a half-width (mean of right and left), da half of right minus left; yF, yB front and back centre lines;
 * kF, kB squareness of the front and back half of a section; zS, zF, zB heights of the side, front and back of a
 * row; dz half of right minus left side height; yS how far the widest point of a section lies behind its middle; x0 how
 * far a row is shifted to the right; turn how far it is turned about its middle (radians, the right side forwards).
 */
export const RAIL = {
  a: 0,
  da: 1,
  yF: 2,
  yB: 3,
  kF: 4,
  kB: 5,
  zS: 6,
  dz: 7,
  zF: 8,
  zB: 9,
  yS: 10,
  x0: 11,
  turn: 12,
} as const;
export const RAIL_COUNT = 13;

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
  shoulderEnd: 306,
  midShoulder: 355,
  neckBase: 425,
  neckMiddle: 441,
  neckTop: 465,
} as const;
export type KnotId = keyof typeof KNOT;
export const KNOT_IDS = Object.keys(KNOT) as KnotId[];
export const KNOTS = Float64Array.from(Object.values(KNOT));
/** The armpit lies just above the upper chest row, at the bottom of the armhole. */
export const ARMPIT_V = 178;
/** The armhole's middle and half height in v. */
export const ARMHOLE_MIDDLE = 0.5 * (ARMPIT_V + KNOT.shoulderPoint);
export const ARMHOLE_REACH = 0.5 * (KNOT.shoulderPoint - ARMPIT_V);
/** Squared distance that still counts as on the oval. */
const ON_RIM = 1e-9;
/** The pull towards the armhole's plane ends at this many times the oval (squared). */
const PLANE_FADES_AT = 1.5;
/** Further than this from the oval (squared) nothing of the arm is felt. */
const FAR_FROM_ARM = Math.max(PLANE_FADES_AT, RIM_FADES_AT);

/** Evaluates points of a shape; holds the spline moments, so make it once per shape. */
export class ShapeEvaluator {
  private readonly moments: Float64Array;
  private readonly riseOf: (v: number) => number;
  private readonly reaches: Float64Array;
  private readonly row = new Float64Array(RAIL_COUNT);
  private rowV = Number.NaN;
  private readonly scratch = new Float64Array(3);
  /** The faired trunk that stands in for the rails. */
  private readonly net: TrunkNetEvaluator | undefined;
  /** Per side: heights of armpit and shoulder point, where the plane hangs. */
  private readonly hinges: { lowZ: number; highZ: number }[] = [];
  /** Per side: how far the faired trunk misses the armhole's plane along the rim. */
  private readonly rims: [right: RimGap | undefined, left: RimGap | undefined] = [undefined, undefined];
  /** The place last looked for by `locateAtArm`, in half axes of the armhole's oval: to the front, and up. */
  private across = 0;
  private up = 0;
  /** Per side: x on the armhole's plane = offset + slopeY y + slopeZ z. */
  private readonly planes: readonly [right: Float64Array, left: Float64Array];

  constructor(private readonly shape: BodyShape) {
    const n = shape.knots.length;
    this.moments = new Float64Array(shape.rails.length);
    for (let rail = 0; rail < RAIL_COUNT && !shape.net; rail++) {
      const values = shape.rails.subarray(rail * n, (rail + 1) * n);
      this.moments.set(cubicSplineMoments(shape.rises, values), rail * n);
    }
    this.riseOf = makeChartRise(shape.knots, shape.rises);
    this.reaches = measureReaches(shape.bumps);
    this.net = shape.net && new TrunkNetEvaluator(shape.net, shape.knots);
    this.planes = [this.findArmholePlane(1), this.findArmholePlane(-1)];
  }

  /** The plane through armpit and shoulder point, turned by the yaw so that its front edge lies further in. */
  private findArmholePlane(outward: 1 | -1): Float64Array {
    const u = outward === 1 ? 0 : Math.PI;
    const p = new Float64Array(6);
    this.trunkPoint(u, Math.cos(u), Math.sin(u), ARMPIT_V, p, 0);
    this.trunkPoint(u, Math.cos(u), Math.sin(u), KNOT.shoulderPoint, p, 3);
    const { yaw, turn } = this.shape.armhole;
    const slopeY = Math.tan(-outward * yaw - turn);
    this.hinges.push({ lowZ: p[2], highZ: p[5] });
    const slopeZ = (p[3] - p[0] - slopeY * (p[4] - p[1])) / (p[5] - p[2]);
    return Float64Array.from([p[0] - slopeY * p[1] - slopeZ * p[2], slopeY, slopeZ]);
  }

  private rimOf(c: number): RimGap {
    const side = c > 0 ? 0 : 1;
    let rim = this.rims[side];
    if (!rim) {
      rim = new RimGap((x, y) => {
        const { armhole } = this.shape;
        const radius = radiusTowards(armhole, x, y);
        const up = radius * y;
        const u = fromOval(armhole, radius * x, up);
        return this.planeGap(side === 0 ? u : Math.PI - u, ARMHOLE_MIDDLE + ARMHOLE_REACH * up);
      });
      this.rims[side] = rim;
    }
    return rim;
  }

  /** All rails at height v; the returned array is overwritten by the next call. */
  railsAt(v: number): Float64Array {
    if (v === this.rowV) return this.row;
    const { rises, rails } = this.shape;
    const n = rises.length;
    const t = this.riseOf(v);
    const i = findSplineInterval(rises, t);
    const h = rises[i + 1] - rises[i];
    const b = (t - rises[i]) / h;
    const a = 1 - b;
    const ca = ((a * a * a - a) * h * h) / 6;
    const cb = ((b * b * b - b) * h * h) / 6;
    for (let rail = 0, o = i; rail < RAIL_COUNT; rail++, o += n) {
      this.row[rail] = a * rails[o] + b * rails[o + 1] + ca * this.moments[o] + cb * this.moments[o + 1];
    }
    this.rowV = v;
    return this.row;
  }

  /** How far a rail lies above the straight between its neighbours at knot k, mm. */
  bendAt(rail: keyof typeof RAIL, k: number): number {
    const { rises, rails } = this.shape;
    const values = rails.subarray(RAIL[rail] * rises.length);
    const share = (rises[k] - rises[k - 1]) / (rises[k + 1] - rises[k - 1]);
    return values[k] - (values[k - 1] + share * (values[k + 1] - values[k - 1]));
  }

  /**
   * The point of the surface at (u, v), written to out[offset…offset + 2].
   * Section: x = a (c − k cos 3u)/(1 − k), y = yM + d (s + k sin 3u)/(1 − k), an ellipse with a third harmonic:
   * C∞ in u, box ±a × [yB, yF] whatever k, convex for k < 1/9. The sides lie yS behind the middle: y is sheared by
   * yS cos² u, which leaves front, back and girth nearly as they are. Rows tilt by a quadratic in s.
   */
  point(u: number, v: number, out: Float64Array, offset = 0): void {
    this.pointAt(u, Math.cos(u), Math.sin(u), v, out, offset);
  }

  /** `point` with the cosine and sine of u at hand. */
  pointAt(u: number, c: number, s: number, v: number, out: Float64Array, offset: number): void {
    this.trunkPoint(u, c, s, v, out, offset);
    const pull = this.planePull(c, u, v);
    if (pull > 0) {
      const plane = this.planes[c > 0 ? 0 : 1];
      const flat = plane[0] + plane[1] * out[offset + 1] + plane[2] * out[offset + 2];
      out[offset] += pull * (flat - out[offset]);
    } else if (this.net && this.locateAtArm(c, u, v) < RIM_FADES_AT) {
      out[offset] -= this.rimOf(c).shiftAt(this.across, this.up);
    }
  }

  /** How far the point lies from the armhole's plane along x, before the pull; mm. */
  planeGap(u: number, v: number): number {
    const p = this.scratch;
    this.trunkPoint(u, Math.cos(u), Math.sin(u), v, p, 0);
    const plane = this.planes[Math.cos(u) > 0 ? 0 : 1];
    return p[0] - (plane[0] + plane[1] * p[1] + plane[2] * p[2]);
  }

  /**
   * 1 on the armhole's oval and inside it, fading to 0 (C²) outside: draws the edge into one plane, so that a flat
   * plate closes it. Rows stay level: only x moves. A faired trunk comes to the plane by itself: 0 right outside.
   */
  planePull(c: number, u: number, v: number): number {
    const q = this.locateAtArm(c, u, v);
    if (this.net) return q <= 1 + ON_RIM ? 1 : 0;
    if (q >= PLANE_FADES_AT) return 0;
    return q <= 1 ? 1 : 1 - smoothStep((q - 1) / (PLANE_FADES_AT - 1));
  }

  /** Where a place lies to the armhole's oval: into `across` and `up`; squared distance, or more than any fade if far. */
  private locateAtArm(c: number, u: number, v: number): number {
    const up = (v - ARMHOLE_MIDDLE) / ARMHOLE_REACH;
    const { armhole } = this.shape;
    const far = armhole.radii ? MOST_RADIUS * MOST_RADIUS * FAR_FROM_ARM : FAR_FROM_ARM;
    if (up * up >= far) return FAR_FROM_ARM;
    let du = c > 0 ? u : Math.PI - u;
    du -= 2 * Math.PI * Math.round(du / (2 * Math.PI));
    const across = acrossOval(armhole, du, up);
    if (across * across + up * up >= far) return FAR_FROM_ARM;
    const radius = radiusTowards(armhole, across, up);
    this.across = across / radius;
    this.up = up / radius;
    return this.across * this.across + this.up * this.up;
  }

  /** The trunk with its arm stumps and bumps, before the armholes are drawn flat. */
  private trunkPoint(u: number, c: number, s: number, v: number, out: Float64Array, offset: number): void {
    if (this.net) this.net.point(u, v, out, offset);
    else this.railsPoint(c, s, v, out, offset);
    this.addBumps(u, v, out, offset);
  }

  /** The trunk by its rails alone, without bumps. */
  railsPoint(c: number, s: number, v: number, out: Float64Array, offset: number): void {
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
    out[offset + 1] = middle + depth * (s + k * s3) * scale - r[RAIL.yS] * c * c;
    out[offset + 2] =
      r[RAIL.zS] * (1 - s * s) +
      0.5 * r[RAIL.zF] * s * (s + 1) +
      0.5 * r[RAIL.zB] * s * (s - 1) +
      r[RAIL.dz] * c;
    moveRow(r, middle, out, offset);
  }

  /** How far the bumps move the point at (u, v), mm: x and y; z stays. */
  bumpsAt(u: number, v: number): readonly [number, number] {
    const p = new Float64Array(6);
    const [c, s] = [Math.cos(u), Math.sin(u)];
    if (this.net) this.net.point(u, v, p, 0);
    else this.railsPoint(c, s, v, p, 0);
    this.trunkPoint(u, c, s, v, p, 3);
    return [p[3] - p[0], p[4] - p[1]];
  }

  private addBumps(u: number, v: number, out: Float64Array, offset: number): void {
    const { bumps } = this.shape;
    const z = out[offset + 2];
    let open = -1;
    for (let i = 0, k = 0; i < bumps.length; i += BUMP_STRIDE, k++) {
      const dz = z - bumps[i + 1];
      if (dz > 1.5 * bumps[i + 5] || dz < -1.5 * bumps[i + 4]) continue;
      const share = this.bumpShare(k, u, dz);
      if (share === 0) continue;
      if (open < 0) open = openness(u, v);
      const height = bumps[i + 6] * (1 - bumps[i + 12] * (1 - open)) * share;
      out[offset] += height * bumps[i + 7];
      out[offset + 1] += height * bumps[i + 8];
    }
  }

  /** How much of its height the k-th bump has at u, dz above its centre, before it is kept out of the arm. */
  private bumpShare(k: number, u: number, dz: number): number {
    const { bumps } = this.shape;
    const i = k * BUMP_STRIDE;
    let du = u - bumps[i];
    if (du > Math.PI || du < -Math.PI) du -= 2 * Math.PI * Math.round(du / (2 * Math.PI));
    const along = reachSquared(dz, this.reaches, k * REACH_STRIDE + 3);
    const across = reachSquared(du, this.reaches, k * REACH_STRIDE);
    let q = across + along;
    if (q >= 1) return 0;
    // (1 − q)^2.5 (1 + fullness q + roundness (q_across² + q_down²)): C² where it meets the body and at mid height.
    // Fullness passes from its value below to that above over half a
    // reach; swell holds q small below, so that the bump stays full there.
    const reach = 0.25 * (bumps[i + 4] + bumps[i + 5]);
    const lift = 0.5 + (0.5 * dz) / Math.sqrt(dz * dz + reach * reach);
    q -= bumps[i + 13] * (1 - lift) * along * (1 - q);
    const rest = 1 - q;
    const fullness = bumps[i + 11] + (bumps[i + 9] - bumps[i + 11]) * lift;
    const round = bumps[i + 10] * (across * across + (dz < 0 ? along * along : 0));
    return rest * rest * Math.sqrt(rest) * (1 + fullness * q + round);
  }

  /**
   * Passes a pull on the point at (u, v) on to what the point is made of: points of the bare trunk (`onTrunk`) and heights
   * of bumps (`onBump`, the bump's number). The transpose of the surface's derivative.
   */
  passPull(u: number, v: number, pull: ArrayLike<number>, onTrunk: OnTrunk, onBump: OnBump): void {
    const c = Math.cos(u);
    const share = this.planePull(c, u, v);
    let x = pull[0];
    let y = pull[1];
    let z = pull[2];
    if (share > 0) {
      const [, slopeY, slopeZ] = this.planes[c > 0 ? 0 : 1];
      const flat = share * x;
      x -= flat;
      y += flat * slopeY;
      z += flat * slopeZ;
      this.passPlane(u, v, flat, onTrunk);
    }
    this.passSkin(u, v, x, y, z, onTrunk, onBump);
  }

  /** A pull on the point before it is drawn to the armhole's plane. */
  private passSkin(
    u: number,
    v: number,
    x: number,
    y: number,
    z: number,
    onTrunk: OnTrunk,
    onBump: OnBump,
  ): void {
    this.trunkPoint(u, Math.cos(u), Math.sin(u), v, this.scratch, 0);
    const height = this.scratch[2];
    const open = openness(u, v);
    const { bumps } = this.shape;
    let upwards = z;
    for (let i = 0, k = 0; i < bumps.length; i += BUMP_STRIDE, k++) {
      const dz = height - bumps[i + 1];
      if (dz > 1.5 * bumps[i + 5] || dz < -1.5 * bumps[i + 4]) continue;
      const here = this.bumpShare(k, u, dz);
      if (here === 0) continue;
      const above = this.bumpShare(k, u, dz + Z_STEP);
      const outward = (1 - bumps[i + 12] * (1 - open)) * (x * bumps[i + 7] + y * bumps[i + 8]);
      onBump(k, outward * here);
      upwards += (outward * bumps[i + 6] * (above - here)) / Z_STEP;
    }
    onTrunk(u, v, x, y, upwards);
  }

  /** The gradient of `planeGap`. */
  passGap(u: number, v: number, onTrunk: OnTrunk, onBump: OnBump): void {
    const [, slopeY, slopeZ] = this.planes[Math.cos(u) > 0 ? 0 : 1];
    this.passSkin(u, v, 1, -slopeY, -slopeZ, onTrunk, onBump);
    this.passPlane(u, v, -1, onTrunk);
  }

  /** A pull along x on the armhole's plane beside the point (u, v), passed on to armpit and shoulder point. */
  private passPlane(u: number, v: number, pull: number, onTrunk: OnTrunk): void {
    const isRight = Math.cos(u) > 0;
    const side = isRight ? 0 : Math.PI;
    const [, slopeY, slopeZ] = this.planes[isRight ? 0 : 1];
    const { lowZ, highZ } = this.hinges[isRight ? 0 : 1];
    this.trunkPoint(u, Math.cos(u), Math.sin(u), v, this.scratch, 0);
    const up = (this.scratch[2] - lowZ) / (highZ - lowZ);
    const low = pull * (1 - up);
    const high = pull * up;
    onTrunk(side, ARMPIT_V, low, -slopeY * low, -slopeZ * low);
    onTrunk(side, KNOT.shoulderPoint, high, -slopeY * high, -slopeZ * high);
  }
}

/** Turns a point with its row about the row's middle, and shifts it sideways. */
function moveRow(r: Float64Array, middle: number, out: Float64Array, offset: number): void {
  const turn = r[RAIL.turn];
  if (turn !== 0) {
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const [x, y] = [out[offset], out[offset + 1] - middle];
    out[offset] = c * x - s * y;
    out[offset + 1] = middle + s * x + c * y;
  }
  out[offset] += r[RAIL.x0];
}

/** Takes a pull (x, y, z) on the bare trunk's point at (u, v). */
export type OnTrunk = (u: number, v: number, x: number, y: number, z: number) => void;
/** Takes a pull on a bump's height. */
export type OnBump = (bump: number, pull: number) => void;

/** Step for the slope of a bump upwards, mm. */
const Z_STEP = 1e-3;

/** 0 in the arm stump, 1 away from it, C² between: bumps of the trunk must not dent the armhole. */
function openness(u: number, v: number): number {
  const dv = (v - ARMHOLE_MIDDLE) / 62;
  const fromRight = Math.abs(u - 2 * Math.PI * Math.round(u / (2 * Math.PI)));
  const du = Math.min(fromRight, Math.PI - fromRight) / 0.6;
  const t = (du * du + dv * dv - 0.8) / 2.4;
  if (t <= 0) return 0;
  return t >= 1 ? 1 : smoothStep(t);
}

/** 0 to 1 with no slope or bend at the ends. */
function smoothStep(t: number): number {
  return t * t * t * (t * (6 * t - 15) + 10);
}

import { distanceInPlane, findSlot } from '../math/index.ts';
import type { PreparedDisk } from './prepare-disk.ts';

/**
 * Stiffness of the outline against turning away from its free shape: Σ B (θ − θ_free)² / h over chosen
 * boundary vertices, B = 8 b³ as of an edge band b wide. Without it a boundary that must change length
 * takes it up by zig-zags at mesh scale.
 */
export interface OutlineBending {
  /** 3 per bent vertex: before, itself, after. */
  readonly vertices: Int32Array;
  /** Turning angle at rest, radians. */
  readonly restAngles: Float64Array;
  /** B / h, mm². */
  readonly stiffness: Float64Array;
  /** 6 per bent vertex: slots of blocks 00, 11, 22, 10, 20, 21, and whether block rows are swapped. */
  readonly slots: Int32Array;
  readonly isTurned: Uint8Array;
}

const bandWidth = 5;
/** Sharper turns than this are corners and stay free, radians. */
const cornerAngle = 0.5;

export const noBending: OutlineBending = {
  vertices: new Int32Array(0),
  restAngles: new Float64Array(0),
  stiffness: new Float64Array(0),
  slots: new Int32Array(0),
  isTurned: new Uint8Array(0),
};

/**
 * Bending of the outline about the shape of `flat`. `isStiff`: per boundary place, whether it bends at all
 * (false at ends of seams and along free edges).
 */
export function makeOutlineBending(
  disk: PreparedDisk,
  flat: Float64Array,
  isStiff: Uint8Array,
): OutlineBending {
  const { boundary, pattern } = disk;
  const n = boundary.length;
  const vertices: number[] = [];
  const restAngles: number[] = [];
  const stiffness: number[] = [];
  for (let k = 0; k < n; k++) {
    if (!isStiff[k]) continue;
    const [p, v, q] = [boundary[(k + n - 1) % n], boundary[k], boundary[(k + 1) % n]];
    const angle = turnAngle(flat, p, v, q);
    if (Math.abs(angle) > cornerAngle) continue;
    const before = distanceInPlane(flat, p, v);
    const after = distanceInPlane(flat, v, q);
    vertices.push(p, v, q);
    restAngles.push(angle);
    stiffness.push((8 * bandWidth ** 3) / (0.5 * (before + after)));
  }
  const count = restAngles.length;
  const slots = new Int32Array(6 * count);
  const isTurned = new Uint8Array(6 * count);
  const pairs = [0, 0, 1, 1, 2, 2, 1, 0, 2, 0, 2, 1];
  for (let k = 0; k < count; k++) {
    for (let s = 0; s < 6; s++) {
      const row = vertices[3 * k + pairs[2 * s]];
      const column = vertices[3 * k + pairs[2 * s + 1]];
      slots[6 * k + s] = findSlot(pattern, row, column);
      isTurned[6 * k + s] = row < column ? 1 : 0;
    }
  }
  return {
    vertices: Int32Array.from(vertices),
    restAngles: Float64Array.from(restAngles),
    stiffness: Float64Array.from(stiffness),
    slots,
    isTurned,
  };
}

/** Signed turn of the path p → v → q at v, radians, left positive. */
export function turnAngle(flat: Float64Array, p: number, v: number, q: number): number {
  const ax = flat[2 * v] - flat[2 * p];
  const ay = flat[2 * v + 1] - flat[2 * p + 1];
  const bx = flat[2 * q] - flat[2 * v];
  const by = flat[2 * q + 1] - flat[2 * v + 1];
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

/** Energy alone, mm². */
export function measureBending(bending: OutlineBending, flat: Float64Array): number {
  const { vertices, restAngles, stiffness } = bending;
  let energy = 0;
  for (let k = 0; k < restAngles.length; k++) {
    const r = turnAngle(flat, vertices[3 * k], vertices[3 * k + 1], vertices[3 * k + 2]) - restAngles[k];
    energy += stiffness[k] * r * r;
  }
  return energy;
}

/** Adds gradient and Hessian (exact, or Gauss–Newton when `isProjected`); returns the energy. */
export function addBending(
  bending: OutlineBending,
  flat: Float64Array,
  gradient: Float64Array,
  values: Float64Array,
  isProjected: boolean,
): number {
  const { vertices, restAngles, stiffness, slots, isTurned } = bending;
  const u = new Float64Array(6);
  let energy = 0;
  for (let k = 0; k < restAngles.length; k++) {
    const p = 2 * vertices[3 * k];
    const v = 2 * vertices[3 * k + 1];
    const q = 2 * vertices[3 * k + 2];
    const ax = flat[v] - flat[p];
    const ay = flat[v + 1] - flat[p + 1];
    const bx = flat[q] - flat[v];
    const by = flat[q + 1] - flat[v + 1];
    const a2 = 1 / (ax * ax + ay * ay);
    const b2 = 1 / (bx * bx + by * by);
    const r = Math.atan2(ax * by - ay * bx, ax * bx + ay * by) - restAngles[k];
    const w = stiffness[k];
    energy += w * r * r;
    // θ = angle(b) − angle(a); gradient of angle(e) is (−y, x)/|e|².
    u[0] = -ay * a2;
    u[1] = ax * a2;
    u[4] = -by * b2;
    u[5] = bx * b2;
    u[2] = -u[0] - u[4];
    u[3] = -u[1] - u[5];
    const force = 2 * w * r;
    gradient[p] += force * u[0];
    gradient[p + 1] += force * u[1];
    gradient[v] += force * u[2];
    gradient[v + 1] += force * u[3];
    gradient[q] += force * u[4];
    gradient[q + 1] += force * u[5];
    // Second derivative of angle(e): [[2xy, y² − x²], [y² − x², −2xy]] / |e|⁴.
    const bend = isProjected ? 0 : force;
    const aXX = -bend * 2 * ax * ay * a2 * a2;
    const aXY = -bend * (ay * ay - ax * ax) * a2 * a2;
    const bXX = bend * 2 * bx * by * b2 * b2;
    const bXY = bend * (by * by - bx * bx) * b2 * b2;
    for (let s = 0; s < 6; s++) {
      const i = s < 3 ? s : s === 3 ? 1 : 2;
      const j = s < 3 ? s : s === 5 ? 1 : 0;
      const h = s === 0 || s === 1 ? 1 : s === 3 ? -1 : 0;
      const g = s === 1 || s === 2 ? 1 : s === 5 ? -1 : 0;
      const xx = 2 * w * u[2 * i] * u[2 * j] + h * aXX + g * bXX;
      const xy = 2 * w * u[2 * i] * u[2 * j + 1] + h * aXY + g * bXY;
      const yx = 2 * w * u[2 * i + 1] * u[2 * j] + h * aXY + g * bXY;
      const yy = 2 * w * u[2 * i + 1] * u[2 * j + 1] - h * aXX - g * bXX;
      const slot = 4 * slots[6 * k + s];
      const turned = isTurned[6 * k + s];
      values[slot] += xx;
      values[slot + 1] += turned ? yx : xy;
      values[slot + 2] += turned ? xy : yx;
      values[slot + 3] += yy;
    }
  }
  return energy;
}

import type { ShellShape } from './pose-bodies.ts';
import {
  type ClothLaw,
  ENERGY,
  lawOfCloth,
  RELAXED_SIZE,
  relaxCloth,
  STRESS,
  TANGENT,
} from './relax-cloth.ts';
import { addAt, type ShellSums } from './shell-sums.ts';
import type { Membrane } from './types.ts';

/** Triangles ready for the sums: rest areas, and the gradients at rest of corners two and three, by warp and weft. */
export interface RestTriangles {
  readonly triangles: Uint32Array;
  /** #F, mm². */
  readonly areas: Float64Array;
  /** #F × 4, 1/mm. */
  readonly slopes: Float64Array;
  readonly laws: readonly ClothLaw[];
  readonly clothOf: Uint8Array;
}

export function restTriangles({ triangles, restEdges, cloths, clothOf }: Membrane): RestTriangles {
  const count = triangles.length / 3;
  const areas = new Float64Array(count);
  const slopes = new Float64Array(4 * count);
  for (let t = 0; t < count; t++) {
    const at = 4 * t;
    const x1 = restEdges[at];
    const y1 = restEdges[at + 1];
    const x2 = restEdges[at + 2];
    const y2 = restEdges[at + 3];
    const twice = x1 * y2 - x2 * y1;
    areas[t] = twice / 2;
    slopes[at] = y2 / twice;
    slopes[at + 1] = -x2 / twice;
    slopes[at + 2] = -y1 / twice;
    slopes[at + 3] = x1 / twice;
  }
  return {
    triangles,
    areas,
    slopes,
    laws: cloths.map(lawOfCloth),
    clothOf: clothOf ?? new Uint8Array(count),
  };
}

/** E11, E22 and 2 E12 of triangle t into `out` from 0, its two stretched threads (warp, weft) from 3. */
export function strainTriangle(
  { triangles, slopes }: RestTriangles,
  t: number,
  x: Float64Array,
  out: Float64Array,
): void {
  const p = 3 * triangles[3 * t];
  const q = 3 * triangles[3 * t + 1];
  const r = 3 * triangles[3 * t + 2];
  const a1 = slopes[4 * t];
  const a2 = slopes[4 * t + 1];
  const b1 = slopes[4 * t + 2];
  const b2 = slopes[4 * t + 3];
  const ux = x[q] - x[p];
  const uy = x[q + 1] - x[p + 1];
  const uz = x[q + 2] - x[p + 2];
  const vx = x[r] - x[p];
  const vy = x[r + 1] - x[p + 1];
  const vz = x[r + 2] - x[p + 2];
  const fx = a1 * ux + b1 * vx;
  const fy = a1 * uy + b1 * vy;
  const fz = a1 * uz + b1 * vz;
  const gx = a2 * ux + b2 * vx;
  const gy = a2 * uy + b2 * vy;
  const gz = a2 * uz + b2 * vz;
  out[0] = (fx * fx + fy * fy + fz * fz - 1) / 2;
  out[1] = (gx * gx + gy * gy + gz * gz - 1) / 2;
  out[2] = fx * gx + fy * gy + fz * gz;
  out[3] = fx;
  out[4] = fy;
  out[5] = fz;
  out[6] = gx;
  out[7] = gy;
  out[8] = gz;
}

/**
 * Adds the energy gradient of all cloth and, if asked, the exact tangent together with that of the pressure on it (`pressure`,
 * #F or more). Returns the energy, N mm. Constant strain triangles: the second derivative by corners a and b is
 * area · [(∇a · S ∇b) I + F Qab Fᵀ], and the three of one row add up to nothing.
 */
export function addMembrane(
  sums: ShellSums,
  rest: RestTriangles,
  shape: ShellShape,
  pushed: number,
  pressure: Float64Array,
  withTangent: boolean,
): number {
  const { atPoints } = sums;
  const { triangles, areas, slopes, laws, clothOf } = rest;
  const strain = new Float64Array(9);
  const state = new Float64Array(RELAXED_SIZE);
  const blocks = new Float64Array(54);
  let energy = 0;
  for (let t = 0; t < areas.length; t++) {
    strainTriangle(rest, t, shape.positions, strain);
    relaxCloth(laws[clothOf[t]], strain[0], strain[1], strain[2], pushed, state);
    const area = areas[t];
    energy += area * state[ENERGY];
    const s11 = area * state[STRESS];
    const s22 = area * state[STRESS + 1];
    const s12 = area * state[STRESS + 2];
    const a1 = slopes[4 * t];
    const a2 = slopes[4 * t + 1];
    const b1 = slopes[4 * t + 2];
    const b2 = slopes[4 * t + 3];
    const p = 3 * triangles[3 * t];
    const q = 3 * triangles[3 * t + 1];
    const r = 3 * triangles[3 * t + 2];
    for (let k = 0; k < 3; k++) {
      const warp = s11 * strain[3 + k] + s12 * strain[6 + k];
      const weft = s12 * strain[3 + k] + s22 * strain[6 + k];
      const atQ = a1 * warp + a2 * weft;
      const atR = b1 * warp + b2 * weft;
      atPoints[q + k] += atQ;
      atPoints[r + k] += atR;
      atPoints[p + k] -= atQ + atR;
    }
    if (!withTangent) continue;
    fillBlocks(state, strain, area, a1, a2, b1, b2, blocks);
    if (pressure[t] !== 0) addPressureTangent(shape.positions, p, q, r, pressure[t], blocks);
    scatterTriangle(sums, shape, t, triangles, blocks);
  }
  return energy;
}

/** Blocks 00, 11, 22, 10, 20, 21 of a triangle, 9 numbers each. */
function fillBlocks(
  state: Float64Array,
  strain: Float64Array,
  area: number,
  a1: number,
  a2: number,
  b1: number,
  b2: number,
  blocks: Float64Array,
): void {
  const s11 = state[STRESS];
  const s22 = state[STRESS + 1];
  const s12 = state[STRESS + 2];
  const d11 = state[TANGENT];
  const d12 = state[TANGENT + 1];
  const d13 = state[TANGENT + 2];
  const d22 = state[TANGENT + 3];
  const d23 = state[TANGENT + 4];
  const d33 = state[TANGENT + 5];
  // dS by the corner's part of the strain, for a pull along the warp (w) and the weft (f) thread.
  const aw1 = a1 * d11 + a2 * d13;
  const aw2 = a1 * d12 + a2 * d23;
  const aw3 = a1 * d13 + a2 * d33;
  const af1 = a2 * d12 + a1 * d13;
  const af2 = a2 * d22 + a1 * d23;
  const af3 = a2 * d23 + a1 * d33;
  const bw1 = b1 * d11 + b2 * d13;
  const bw3 = b1 * d13 + b2 * d33;
  const bf1 = b2 * d12 + b1 * d13;
  const bf2 = b2 * d22 + b1 * d23;
  const bf3 = b2 * d23 + b1 * d33;
  const aa = a1 * (s11 * a1 + s12 * a2) + a2 * (s12 * a1 + s22 * a2);
  const bb = b1 * (s11 * b1 + s12 * b2) + b2 * (s12 * b1 + s22 * b2);
  const ba = b1 * (s11 * a1 + s12 * a2) + b2 * (s12 * a1 + s22 * a2);
  const aaWW = aw1 * a1 + aw3 * a2;
  const aaWF = aw2 * a2 + aw3 * a1;
  const aaFF = af2 * a2 + af3 * a1;
  const bbWW = bw1 * b1 + bw3 * b2;
  const bbWF = bf1 * b1 + bf3 * b2;
  const bbFF = bf2 * b2 + bf3 * b1;
  const baWW = aw1 * b1 + aw3 * b2;
  const baFW = aw2 * b2 + aw3 * b1;
  const baWF = af1 * b1 + af3 * b2;
  const baFF = af2 * b2 + af3 * b1;
  for (let i = 0; i < 3; i++) {
    const wi = area * strain[3 + i];
    const fi = area * strain[6 + i];
    for (let j = 0; j < 3; j++) {
      const wj = strain[3 + j];
      const fj = strain[6 + j];
      const diagonal = i === j ? area : 0;
      const k11 = diagonal * aa + wi * (aaWW * wj + aaWF * fj) + fi * (aaWF * wj + aaFF * fj);
      const k22 = diagonal * bb + wi * (bbWW * wj + bbWF * fj) + fi * (bbWF * wj + bbFF * fj);
      // Rows of the third corner, columns of the second.
      const k21 = diagonal * ba + wi * (baWW * wj + baWF * fj) + fi * (baFW * wj + baFF * fj);
      const at = 3 * i + j;
      const turned = 3 * j + i;
      blocks[9 + at] = k11;
      blocks[18 + at] = k22;
      blocks[45 + at] = k21;
      blocks[36 + at] = -k21 - k22;
      blocks[27 + turned] = -k21 - k11;
    }
  }
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) blocks[3 * i + j] = -blocks[27 + 3 * i + j] - blocks[36 + 3 * i + j];
}

/**
 * Adds the symmetric half of what pressure p on a triangle adds to the tangent; with one pressure over a closed surface, or one whose
 * border is held, the other half cancels. Source: Hibbitt, "Some follower forces and load stiffness", Int. J. Numer. Methods Eng.
 * 14 (1979).
 */
export function addPressureTangent(
  x: Float64Array,
  p: number,
  q: number,
  r: number,
  pressure: number,
  blocks: Float64Array,
): void {
  const share = pressure / 12;
  addCross(blocks, 27, x, p, q, r, share);
  addCross(blocks, 45, x, q, r, p, share);
  addCross(blocks, 36, x, r, p, q, -share);
}

/** blocks += share · [a + b − 2c]×. */
function addCross(
  blocks: Float64Array,
  at: number,
  x: Float64Array,
  a: number,
  b: number,
  c: number,
  share: number,
): void {
  const wx = share * (x[a] + x[b] - 2 * x[c]);
  const wy = share * (x[a + 1] + x[b + 1] - 2 * x[c + 1]);
  const wz = share * (x[a + 2] + x[b + 2] - 2 * x[c + 2]);
  blocks[at + 1] -= wz;
  blocks[at + 2] += wy;
  blocks[at + 3] += wz;
  blocks[at + 5] -= wx;
  blocks[at + 6] -= wy;
  blocks[at + 7] += wx;
}

function scatterTriangle(
  sums: ShellSums,
  shape: ShellShape,
  t: number,
  triangles: Uint32Array,
  blocks: Float64Array,
): void {
  const { slots } = sums.shell;
  if (slots[6 * t] >= 0) {
    for (let k = 0; k < 6; k++) {
      const slot = slots[6 * t + k];
      addAt(sums.tangent, slot >> 1, blocks, 9 * k, (slot & 1) === 1);
    }
  } else scatterCorners(sums, shape, triangles, 3 * t, blocks);
}

/** Blocks of a triangle through bodies, to wherever its corners belong. */
export function scatterCorners(
  sums: ShellSums,
  shape: ShellShape,
  triangles: Uint32Array,
  at: number,
  blocks: Float64Array,
): void {
  const p = triangles[at];
  const q = triangles[at + 1];
  const r = triangles[at + 2];
  sums.addBlock(shape, p, p, blocks, 0);
  sums.addBlock(shape, q, q, blocks, 9);
  sums.addBlock(shape, r, r, blocks, 18);
  sums.addBlock(shape, q, p, blocks, 27);
  sums.addBlock(shape, r, p, blocks, 36);
  sums.addBlock(shape, r, q, blocks, 45);
}

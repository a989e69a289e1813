import { addPressureTangent, scatterCorners } from './add-membrane.ts';
import type { ShellShape } from './pose-bodies.ts';
import type { ShellSums } from './shell-sums.ts';

/** Adds minus the force of pressure (#T, N/mm²) on every face, a third of pressure × area at each corner. */
export function addPressure(sums: ShellSums, x: Float64Array, pressure: Float64Array): void {
  const { faces } = sums.shell;
  const { atPoints } = sums;
  for (let t = 0; t < pressure.length; t++) {
    if (pressure[t] === 0) continue;
    const share = -pressure[t] / 6;
    const p = 3 * faces[3 * t];
    const q = 3 * faces[3 * t + 1];
    const r = 3 * faces[3 * t + 2];
    const ux = x[q] - x[p];
    const uy = x[q + 1] - x[p + 1];
    const uz = x[q + 2] - x[p + 2];
    const vx = x[r] - x[p];
    const vy = x[r + 1] - x[p + 1];
    const vz = x[r + 2] - x[p + 2];
    const fx = share * (uy * vz - uz * vy);
    const fy = share * (uz * vx - ux * vz);
    const fz = share * (ux * vy - uy * vx);
    atPoints[p] += fx;
    atPoints[p + 1] += fy;
    atPoints[p + 2] += fz;
    atPoints[q] += fx;
    atPoints[q + 1] += fy;
    atPoints[q + 2] += fz;
    atPoints[r] += fx;
    atPoints[r + 1] += fy;
    atPoints[r + 2] += fz;
  }
}

/** Adds the tangent of the pressure on closing faces; that on cloth comes with the cloth. */
export function addClosingTangent(sums: ShellSums, shape: ShellShape, pressure: Float64Array): void {
  const { faces, clothCount } = sums.shell;
  const blocks = new Float64Array(54);
  for (let t = clothCount; t < pressure.length; t++) {
    if (pressure[t] === 0) continue;
    blocks.fill(0);
    const [p, q, r] = faces.subarray(3 * t, 3 * t + 3);
    addPressureTangent(shape.positions, 3 * p, 3 * q, 3 * r, pressure[t], blocks);
    scatterCorners(sums, shape, faces, 3 * t, blocks);
  }
}

/**
 * Work of the pressure, N mm, while every point goes straight from x to y: exact, as force times way is a quadratic in the
 * way gone (Simpson's rule). With one pressure on a closed surface it is pressure × gain of volume.
 */
export function workOfPressure(
  faces: Uint32Array,
  pressure: Float64Array,
  x: Float64Array,
  y: Float64Array,
): number {
  let work = 0;
  for (let t = 0; t < pressure.length; t++) {
    if (pressure[t] === 0) continue;
    const p = 3 * faces[3 * t];
    const q = 3 * faces[3 * t + 1];
    const r = 3 * faces[3 * t + 2];
    const way0 = y[p] - x[p] + y[q] - x[q] + y[r] - x[r];
    const way1 = y[p + 1] - x[p + 1] + y[q + 1] - x[q + 1] + y[r + 1] - x[r + 1];
    const way2 = y[p + 2] - x[p + 2] + y[q + 2] - x[q + 2] + y[r + 2] - x[r + 2];
    let sum = 0;
    for (let k = 0; k < 3; k++) {
      const s = k / 2;
      const m = 1 - s;
      const ux = m * (x[q] - x[p]) + s * (y[q] - y[p]);
      const uy = m * (x[q + 1] - x[p + 1]) + s * (y[q + 1] - y[p + 1]);
      const uz = m * (x[q + 2] - x[p + 2]) + s * (y[q + 2] - y[p + 2]);
      const vx = m * (x[r] - x[p]) + s * (y[r] - y[p]);
      const vy = m * (x[r + 1] - x[p + 1]) + s * (y[r + 1] - y[p + 1]);
      const vz = m * (x[r + 2] - x[p + 2]) + s * (y[r + 2] - y[p + 2]);
      const weight = k === 1 ? 4 : 1;
      sum += weight * ((uy * vz - uz * vy) * way0 + (uz * vx - ux * vz) * way1 + (ux * vy - uy * vx) * way2);
    }
    work += (pressure[t] * sum) / 36;
  }
  return work;
}

/** Volume within faces that close, mm³, measured from one of their points: exact enough for thin shells far from the origin. */
export function volumeOfFaces(faces: Uint32Array, x: Float64Array): number {
  if (faces.length === 0) return 0;
  const o = 3 * faces[0];
  let sum = 0;
  for (let t = 0; t < faces.length; t += 3) {
    const p = 3 * faces[t];
    const q = 3 * faces[t + 1];
    const r = 3 * faces[t + 2];
    const ax = x[p] - x[o];
    const ay = x[p + 1] - x[o + 1];
    const az = x[p + 2] - x[o + 2];
    const bx = x[q] - x[o];
    const by = x[q + 1] - x[o + 1];
    const bz = x[q + 2] - x[o + 2];
    const cx = x[r] - x[o];
    const cy = x[r + 1] - x[o + 1];
    const cz = x[r + 2] - x[o + 2];
    sum += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return sum / 6;
}

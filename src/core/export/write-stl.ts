import { assertInvariant } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';

const HEADER = 80;
const FACET = 50;
/** Must not begin with “solid”: that word announces the text form. */
const TITLE = 'binary STL, millimetres, z up';

export interface StlOptions {
  /** Size of the model: 0.2 for one fifth; default 1. */
  readonly scale?: number;
  /** Move the lowest point to z = 0, as a printer's bed wants it. */
  readonly standsOnZero?: boolean;
}

/**
 * A mesh as binary STL in millimetres, z up: 80 bytes of header, the number of facets, 50 bytes each (unit normal, three
 * corners, 32-bit reals little endian). STL names no unit; programs take it as millimetres. Facets without area are left
 * out. O(triangles). Throws on numbers that are not finite.
 */
export function writeStl({ positions, triangles }: Mesh, options: StlOptions = {}): Uint8Array {
  const { scale = 1, standsOnZero = false } = options;
  let floor = 0;
  if (standsOnZero) {
    floor = Number.POSITIVE_INFINITY;
    for (const vertex of triangles) floor = Math.min(floor, positions[3 * vertex + 2]);
  }
  const corners = new Float32Array(9);
  const bytes = new Uint8Array(HEADER + 4 + (FACET * triangles.length) / 3);
  const view = new DataView(bytes.buffer);
  for (const [i, letter] of [...TITLE].entries()) bytes[i] = letter.charCodeAt(0);
  let at = HEADER + 4;
  let count = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 9; k++) {
      const value = positions[3 * triangles[t + Math.floor(k / 3)] + (k % 3)];
      assertInvariant(Number.isFinite(value), 'export', 'every position of a mesh is finite', value);
      corners[k] = scale * (value - (k % 3 === 2 ? floor : 0));
    }
    const normal = normalOf(corners);
    if (!normal) continue;
    for (let k = 0; k < 3; k++) view.setFloat32(at + 4 * k, normal[k], true);
    for (let k = 0; k < 9; k++) view.setFloat32(at + 12 + 4 * k, corners[k], true);
    at += FACET;
    count++;
  }
  view.setUint32(HEADER, count, true);
  return bytes.slice(0, at);
}

function normalOf(c: Float32Array): [number, number, number] | null {
  const [ux, uy, uz] = [c[3] - c[0], c[4] - c[1], c[5] - c[2]];
  const [vx, vy, vz] = [c[6] - c[0], c[7] - c[1], c[8] - c[2]];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(x, y, z);
  return length > 0 ? [x / length, y / length, z / length] : null;
}

import { doSegmentsTouch } from '../math/index.ts';

/**
 * Pairs of boundary edges that touch or cross although they are not neighbours: place numbers along the
 * loop, 2 per crossing. `flat`: #V × 2 mm; `boundary`: vertex loop. Exact; sweeps along x, about O(n √n).
 */
export function findSelfCrossings(flat: Float64Array, boundary: Int32Array): number[] {
  const n = boundary.length;
  const left = new Float64Array(n);
  const right = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    const a = flat[2 * boundary[k]];
    const b = flat[2 * boundary[(k + 1) % n]];
    left[k] = Math.min(a, b);
    right[k] = Math.max(a, b);
  }
  const order = Uint32Array.from(left.keys()).sort((i, j) => left[i] - left[j]);
  const crossings: number[] = [];
  let active: number[] = [];
  for (const k of order) {
    active = active.filter((q) => right[q] >= left[k]);
    for (const q of active) {
      const gap = Math.abs(k - q);
      if (gap === 1 || gap === n - 1) continue;
      if (doEdgesTouch(flat, boundary, k, q)) crossings.push(Math.min(k, q), Math.max(k, q));
    }
    active.push(k);
  }
  return crossings;
}

function doEdgesTouch(flat: Float64Array, boundary: Int32Array, k: number, q: number): boolean {
  const n = boundary.length;
  const [a, b] = [2 * boundary[k], 2 * boundary[(k + 1) % n]];
  const [c, d] = [2 * boundary[q], 2 * boundary[(q + 1) % n]];
  const [ay, by, cy, dy] = [flat[a + 1], flat[b + 1], flat[c + 1], flat[d + 1]];
  if (Math.max(ay, by) < Math.min(cy, dy) || Math.max(cy, dy) < Math.min(ay, by)) return false;
  return doSegmentsTouch(flat[a], ay, flat[b], by, flat[c], cy, flat[d], dy);
}

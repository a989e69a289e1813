import { doSegmentsTouch } from '../math/index.ts';

/** True when two edges of a closed outline (n × 2) that are not neighbours share a point. Exact; sweeps along x. */
export function crossesItself(outline: Float64Array): boolean {
  const n = outline.length / 2;
  const end = (k: number): number => 2 * ((k + 1) % n);
  const left = Float64Array.from({ length: n }, (_, k) => Math.min(outline[2 * k], outline[end(k)]));
  const right = Float64Array.from({ length: n }, (_, k) => Math.max(outline[2 * k], outline[end(k)]));
  const order = Uint32Array.from(left.keys()).sort((a, b) => left[a] - left[b]);
  let active: number[] = [];
  for (const k of order) {
    active = active.filter((q) => right[q] >= left[k]);
    for (const q of active) {
      const apart = Math.abs(k - q);
      if (apart === 1 || apart === n - 1) continue;
      if (doEdgesTouch(outline, 2 * k, end(k), 2 * q, end(q))) return true;
    }
    active.push(k);
  }
  return false;
}

function doEdgesTouch(o: Float64Array, a: number, b: number, c: number, d: number): boolean {
  const [ay, by, cy, dy] = [o[a + 1], o[b + 1], o[c + 1], o[d + 1]];
  if (Math.max(ay, by) < Math.min(cy, dy) || Math.max(cy, dy) < Math.min(ay, by)) return false;
  return doSegmentsTouch(o[a], ay, o[b], by, o[c], cy, o[d], dy);
}

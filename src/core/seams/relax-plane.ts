import { nextHalfedge } from '../mesh/index.ts';

const MAX_ROUNDS = 40;
/** Rounds end when no vertex moves more than this part of its edges' mean length. */
const STILL = 0.001;
/** Over-relaxation: steps are taken this much further than each vertex alone would like. */
const REACH = 1.5;

/**
 * Moves plane coordinates (#V × 2, in place) so that mesh edges come as near as they can to the lengths they have in
 * space. Each vertex in turn goes where its edges on average want it.
 * Source: the stress majorization of de Leeuw (1977), one vertex at a time, edges weighted alike. O(rounds · #F).
 */
export function relaxPlane(plane: Float64Array, positions: Float64Array, triangles: Uint32Array): void {
  const { starts, neighbours, lengths } = listEdges(positions, triangles);
  const count = plane.length / 2;
  const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
  let largest = Number.POSITIVE_INFINITY;
  for (let round = 0; round < MAX_ROUNDS && largest > (STILL * mean) ** 2; round++) {
    largest = 0;
    for (let k = 0; k < count; k++) {
      // To and fro, so that moves travel both ways.
      const i = round % 2 === 0 ? k : count - 1 - k;
      const from = starts[i];
      const to = starts[i + 1];
      if (from === to) continue;
      const x = plane[2 * i];
      const y = plane[2 * i + 1];
      let moveX = 0;
      let moveY = 0;
      for (let n = from; n < to; n++) {
        const dx = x - plane[2 * neighbours[n]];
        const dy = y - plane[2 * neighbours[n] + 1];
        const excess = 1 - lengths[n] / Math.sqrt(dx * dx + dy * dy);
        moveX -= dx * excess;
        moveY -= dy * excess;
      }
      moveX *= REACH / (to - from);
      moveY *= REACH / (to - from);
      plane[2 * i] = x + moveX;
      plane[2 * i + 1] = y + moveY;
      largest = Math.max(largest, moveX * moveX + moveY * moveY);
    }
  }
}

/** Largest |ln(length in the plane / length in space)| over all edges. */
export function measureStretch(plane: Float64Array, positions: Float64Array, triangles: Uint32Array): number {
  let worst = 1;
  for (let e = 0; e < triangles.length; e++) {
    const a = triangles[e];
    const b = triangles[nextHalfedge(e)];
    const x = plane[2 * a] - plane[2 * b];
    const y = plane[2 * a + 1] - plane[2 * b + 1];
    const ratio = Math.sqrt(x * x + y * y) / measureGap(positions, a, b);
    worst = Math.max(worst, ratio, 1 / ratio);
  }
  return Math.log(worst);
}

/** True when every triangle is counter-clockwise. */
export function isUnfolded(plane: Float64Array, triangles: Uint32Array): boolean {
  for (let e = 0; e < triangles.length; e += 3) {
    const a = 2 * triangles[e];
    const b = 2 * triangles[e + 1];
    const c = 2 * triangles[e + 2];
    const twiceArea =
      (plane[b] - plane[a]) * (plane[c + 1] - plane[a + 1]) -
      (plane[b + 1] - plane[a + 1]) * (plane[c] - plane[a]);
    if (!(twiceArea > 0)) return false;
  }
  return true;
}

function measureGap(p: Float64Array, a: number, b: number): number {
  const x = p[3 * a] - p[3 * b];
  const y = p[3 * a + 1] - p[3 * b + 1];
  const z = p[3 * a + 2] - p[3 * b + 2];
  return Math.sqrt(x * x + y * y + z * z);
}

/** Neighbours in compressed rows with their distance in space. Inner edges are listed twice: they weigh double. */
function listEdges(positions: Float64Array, triangles: Uint32Array) {
  const count = positions.length / 3;
  const starts = new Uint32Array(count + 1);
  for (const v of triangles) starts[v + 1] += 2;
  for (let v = 0; v < count; v++) starts[v + 1] += starts[v];
  const fill = starts.slice(0, count);
  const neighbours = new Uint32Array(2 * triangles.length);
  const lengths = new Float64Array(2 * triangles.length);
  for (let e = 0; e < triangles.length; e++) {
    const a = triangles[e];
    const b = triangles[nextHalfedge(e)];
    const length = measureGap(positions, a, b);
    neighbours[fill[a]] = b;
    lengths[fill[a]++] = length;
    neighbours[fill[b]] = a;
    lengths[fill[b]++] = length;
  }
  return { starts, neighbours, lengths };
}

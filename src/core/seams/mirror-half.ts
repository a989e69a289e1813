import { assertInvariant } from '../base/index.ts';
import type { ChartSurface, Mesh } from '../mesh/index.ts';
import type { HalfMesh } from './mesh-right-half.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './resolve-lines.ts';

/** Both halves welded at the centre lines: right vertices, then left ones; right triangles, then their mirror images. */
export interface WholeMesh {
  readonly mesh: Mesh;
  readonly chart: Float64Array;
  /** Right vertex → left vertex; a centre vertex maps to itself. Only entries of the right half. */
  readonly mirrorVertex: Uint32Array;
  readonly halfTriangleCount: number;
}

/**
 * Adds the left half: chart u → π − u, triangles turned over. On a mirror symmetric surface left positions are the
 * right ones with x negated, bit for bit, and centre vertices get x = 0 exactly; otherwise all are evaluated.
 */
export function mirrorHalf(half: HalfMesh, surface: ChartSurface): WholeMesh {
  const rightCount = half.chart.length / 2;
  const mirrorVertex = new Uint32Array(rightCount);
  let total = rightCount;
  for (let v = 0; v < rightCount; v++) {
    const u = half.chart[2 * v];
    mirrorVertex[v] = u === CENTRE_FRONT || u === CENTRE_BACK ? v : total++;
  }
  const chart = new Float64Array(2 * total);
  chart.set(half.chart);
  const positions = new Float64Array(3 * total);
  surface.evaluate(half.chart, positions.subarray(0, 3 * rightCount));
  for (let v = 0; v < rightCount; v++) {
    const left = mirrorVertex[v];
    if (left === v) continue;
    chart[2 * left] = Math.PI - half.chart[2 * v];
    chart[2 * left + 1] = half.chart[2 * v + 1];
  }
  if (surface.isMirrorSymmetric) mirrorPositions(positions, mirrorVertex);
  else surface.evaluate(chart.subarray(2 * rightCount), positions.subarray(3 * rightCount));
  const n = half.triangles.length;
  const triangles = new Uint32Array(2 * n);
  triangles.set(half.triangles);
  for (let e = 0; e < n; e += 3) {
    triangles[n + e] = mirrorVertex[half.triangles[e]];
    triangles[n + e + 1] = mirrorVertex[half.triangles[e + 2]];
    triangles[n + e + 2] = mirrorVertex[half.triangles[e + 1]];
  }
  return { mesh: { positions, triangles }, chart, mirrorVertex, halfTriangleCount: n / 3 };
}

function mirrorPositions(positions: Float64Array, mirrorVertex: Uint32Array): void {
  mirrorVertex.forEach((left, v) => {
    if (left === v) {
      assertInvariant(
        Math.abs(positions[3 * v]) < 1e-6,
        'seams',
        'a symmetric surface has its centre at x = 0',
        positions[3 * v],
      );
      positions[3 * v] = 0;
      return;
    }
    positions[3 * left] = -positions[3 * v];
    positions[3 * left + 1] = positions[3 * v + 1];
    positions[3 * left + 2] = positions[3 * v + 2];
  });
}

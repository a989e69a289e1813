import type { ChartSurface } from '../mesh/index.ts';
import { frameAt } from './gap-between.ts';

/** A surface moved outwards along its normals by `distance` mm: what lies on so much wadding. Five evaluations a point. */
export function offsetSurface(surface: ChartSurface, distance: number): ChartSurface {
  if (distance === 0) return surface;
  return {
    vRange: surface.vRange,
    isMirrorSymmetric: surface.isMirrorSymmetric,
    evaluate(chart, out = new Float64Array((chart.length / 2) * 3)) {
      for (let i = 0; i < chart.length / 2; i++) {
        const { point, normal } = frameAt(surface, chart[2 * i], chart[2 * i + 1]);
        for (let a = 0; a < 3; a++) out[3 * i + a] = point[a] + distance * normal[a];
      }
      return out;
    },
  };
}

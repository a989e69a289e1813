import { boundsOfPolyline, clamp, distanceInSpace, locateInPolygon } from '../math/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './resolve-lines.ts';

/** The right half of a surface sampled on a grid: enough to lay out meshes of even density, never used for positions. */
export interface SurfaceGrid {
  readonly columns: number;
  readonly rows: number;
  readonly vRange: readonly [number, number];
  /** rows × columns × 3. */
  readonly positions: Float64Array;
  /** rows × columns: mm along the row from the centre back. */
  readonly across: Float64Array;
  /** rows × columns: mm up the column from the base. */
  readonly up: Float64Array;
}

/** Samples rows × columns points; O(rows · columns) evaluations. */
export function sampleSurfaceGrid(surface: ChartSurface, columns = 41, rows = 81): SurfaceGrid {
  const { vRange } = surface;
  const chart = new Float64Array(2 * rows * columns);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const k = 2 * (j * columns + i);
      chart[k] = CENTRE_BACK + ((CENTRE_FRONT - CENTRE_BACK) * i) / (columns - 1);
      chart[k + 1] = vRange[0] + ((vRange[1] - vRange[0]) * j) / (rows - 1);
    }
  }
  const p = surface.evaluate(chart);
  const across = new Float64Array(rows * columns);
  const up = new Float64Array(rows * columns);
  for (let k = 0; k < rows * columns; k++) {
    if (k % columns > 0) across[k] = across[k - 1] + distanceInSpace(p, k - 1, k);
    if (k >= columns) up[k] = up[k - columns] + distanceInSpace(p, k - columns, k);
  }
  return { columns, rows, vRange, positions: p, across, up };
}

/** Area of the right half outside the armhole polygon (chart n × 2), mm²; cells count by their middle. */
export function estimateHalfArea(grid: SurfaceGrid, armhole: Float64Array): number {
  const { columns, rows, positions: p, vRange } = grid;
  const { minX, maxX, minY, maxY } = boundsOfPolyline(armhole);
  let sum = 0;
  for (let j = 0; j + 1 < rows; j++) {
    const v = vRange[0] + ((vRange[1] - vRange[0]) * (j + 0.5)) / (rows - 1);
    for (let i = 0; i + 1 < columns; i++) {
      const u = CENTRE_BACK + ((CENTRE_FRONT - CENTRE_BACK) * (i + 0.5)) / (columns - 1);
      const isNear = u > minX && u < maxX && v > minY && v < maxY;
      if (isNear && locateInPolygon(armhole, u, v) > 0) continue;
      const a = 3 * (j * columns + i);
      const b = a + 3;
      const c = a + 3 * columns;
      const d = c + 3;
      // Half the cross product of the diagonals.
      const ux = p[d] - p[a];
      const uy = p[d + 1] - p[a + 1];
      const uz = p[d + 2] - p[a + 2];
      const wx = p[c] - p[b];
      const wy = p[c + 1] - p[b + 1];
      const wz = p[c + 2] - p[b + 2];
      sum += 0.5 * Math.hypot(uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx);
    }
  }
  return sum;
}

/** A grid table read between its points, bilinearly; u and v are kept inside the grid. */
export function readGrid(grid: SurfaceGrid, table: Float64Array, u: number, v: number): number {
  const { columns, rows, vRange } = grid;
  const x = ((u - CENTRE_BACK) / (CENTRE_FRONT - CENTRE_BACK)) * (columns - 1);
  const y = ((v - vRange[0]) / (vRange[1] - vRange[0])) * (rows - 1);
  const i = clamp(Math.floor(x), 0, columns - 2);
  const j = clamp(Math.floor(y), 0, rows - 2);
  const a = x - i;
  const b = y - j;
  const k = j * columns + i;
  const low = table[k] + a * (table[k + 1] - table[k]);
  const high = table[k + columns] + a * (table[k + columns + 1] - table[k + columns]);
  return low + b * (high - low);
}

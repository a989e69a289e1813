import type { ChartSurface } from '../mesh/index.ts';
import { meshCell } from './mesh-cell.ts';
import type { SurfaceGrid } from './surface-grid.ts';
import type { Cell } from './trace-cells.ts';

export interface HalfMesh {
  /** #V × 2; the network's vertices come first. */
  readonly chart: Float64Array;
  /** Counter-clockwise in the chart. */
  readonly triangles: Uint32Array;
}

/**
 * Triangulates every cell with points about `spacing` apart; borders keep their points and get no others, so
 * neighbouring cells fit. O(n log n).
 */
export function meshRightHalf(
  cells: readonly Cell[],
  networkChart: Float64Array,
  surface: ChartSurface,
  grid: SurfaceGrid,
  spacing: number,
): HalfMesh {
  const chart: number[] = Array.from(networkChart);
  const triangles: number[] = [];
  for (const cell of cells) {
    const numbers = new Map<number, number>();
    const vertices: number[] = [];
    for (const v of cell.border) {
      if (numbers.has(v)) continue;
      numbers.set(v, vertices.length);
      vertices.push(v);
    }
    const borderChart = new Float64Array(2 * vertices.length);
    vertices.forEach((v, i) => {
      borderChart[2 * i] = networkChart[2 * v];
      borderChart[2 * i + 1] = networkChart[2 * v + 1];
    });
    const border = cell.border.map((v) => numbers.get(v)!);
    const filled = meshCell(border, borderChart, surface, grid, spacing);
    for (let i = borderChart.length; i < filled.chart.length; i += 2) {
      vertices.push(chart.length / 2);
      chart.push(filled.chart[i], filled.chart[i + 1]);
    }
    for (const corner of filled.triangles) triangles.push(vertices[corner]);
  }
  return { chart: Float64Array.from(chart), triangles: Uint32Array.from(triangles) };
}

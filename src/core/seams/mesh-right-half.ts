import { cellPlane } from './cell-plane.ts';
import { fillOutline } from './fill-outline.ts';
import type { SurfaceGrid } from './surface-grid.ts';
import type { Cell } from './trace-cells.ts';
import { triangulateOutline } from './triangulate-outline.ts';

export interface HalfMesh {
  /** #V × 2; the network's vertices come first. */
  readonly chart: Float64Array;
  /** Counter-clockwise in the chart. */
  readonly triangles: Uint32Array;
}

/** Points are kept this part of the spacing away from seams and level lines. */
const CLEARANCE = 0.6;

/**
 * Triangulates every cell with points about `spacing` apart; borders keep their points and get no others, so
 * neighbouring cells fit. O(n log n).
 */
export function meshRightHalf(
  cells: readonly Cell[],
  networkChart: Float64Array,
  grid: SurfaceGrid,
  spacing: number,
): HalfMesh {
  const chart: number[] = Array.from(networkChart);
  const triangles: number[] = [];
  for (const cell of cells) {
    const known = new Map<number, number>();
    const vertices: number[] = [];
    for (const v of cell.border) {
      if (known.has(v)) continue;
      known.set(v, vertices.length);
      vertices.push(v);
    }
    const plane = cellPlane(grid, middleColumn(cell.border, networkChart));
    const outline = new Float64Array(2 * cell.border.length);
    cell.border.forEach((v, i) => {
      outline[2 * i] = plane.x(networkChart[2 * v], networkChart[2 * v + 1]);
      outline[2 * i + 1] = plane.y(networkChart[2 * v + 1]);
    });
    const inner = fillOutline(outline, spacing, CLEARANCE * spacing);
    const points = new Float64Array(2 * vertices.length + inner.length);
    for (let i = 0; i < cell.border.length; i++) {
      points.set(outline.subarray(2 * i, 2 * i + 2), 2 * known.get(cell.border[i])!);
    }
    points.set(inner, 2 * vertices.length);
    const border = cell.border.map((v) => known.get(v)!);
    const filled = triangulateOutline(points, border, 2);
    for (let k = vertices.length; k < points.length / 2; k++) {
      const v = plane.v(points[2 * k + 1]);
      vertices.push(chart.length / 2);
      chart.push(plane.u([points[2 * k]], v)[0], v);
    }
    for (const corner of filled) triangles.push(vertices[corner]);
  }
  return { chart: Float64Array.from(chart), triangles: Uint32Array.from(triangles) };
}

function middleColumn(border: Uint32Array, chart: Float64Array): number {
  let [low, high] = [Infinity, -Infinity];
  for (const v of border) {
    low = Math.min(low, chart[2 * v]);
    high = Math.max(high, chart[2 * v]);
  }
  return (low + high) / 2;
}

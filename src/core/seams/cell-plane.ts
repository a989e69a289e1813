import { clamp } from '../math/index.ts';
import { readGrid, type SurfaceGrid } from './surface-grid.ts';

/**
 * Nearly isometric plane coordinates of a region: x = mm along the row from the region's middle column,
 * y = mm up that column. One-to-one, since both grow strictly.
 */
export interface CellPlane {
  readonly x: (u: number, v: number) => number;
  readonly y: (v: number) => number;
  /** v of the row at height y. */
  readonly v: (y: number) => number;
  /** u at x on the row v. */
  readonly u: (x: number, v: number) => number;
}

/** `columnU`: the region's middle column. */
export function cellPlane(grid: SurfaceGrid, columnU: number): CellPlane {
  const { columns, rows, vRange, across, up } = grid;
  const column = Float64Array.from({ length: rows }, (_, j) => readGrid(grid, up, columnU, rowV(j)));
  function rowV(j: number): number {
    return vRange[0] + ((vRange[1] - vRange[0]) * j) / (rows - 1);
  }
  return {
    x: (u, v) => readGrid(grid, across, u, v) - readGrid(grid, across, columnU, v),
    y: (v) => readGrid(grid, up, columnU, v),
    v: (y) => {
      const place = findPlace((j) => column[j], rows, y);
      return vRange[0] + ((vRange[1] - vRange[0]) * place) / (rows - 1);
    },
    u: (x, v) => {
      const value = x + readGrid(grid, across, columnU, v);
      const y = ((v - vRange[0]) / (vRange[1] - vRange[0])) * (rows - 1);
      const j = clamp(Math.floor(y), 0, rows - 2);
      const lower = j * columns;
      const blend = (i: number): number =>
        across[lower + i] + (y - j) * (across[lower + columns + i] - across[lower + i]);
      return -Math.PI / 2 + (Math.PI * findPlace(blend, columns, value)) / (columns - 1);
    },
  };
}

/** Fractional index of `value` in a rising table of `count` entries. */
function findPlace(read: (i: number) => number, count: number, value: number): number {
  let low = 0;
  let high = count - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (read(middle) <= value) low = middle;
    else high = middle;
  }
  const gap = read(high) - read(low);
  return gap > 0 ? low + (value - read(low)) / gap : low;
}

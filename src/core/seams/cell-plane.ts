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
  /** u of many x on the row v. */
  readonly u: (x: ArrayLike<number>, v: number) => number[];
}

/** `columnU`: the region's middle column. */
export function cellPlane(grid: SurfaceGrid, columnU: number): CellPlane {
  const { columns, rows, vRange, across, up } = grid;
  const column = Float64Array.from({ length: rows }, (_, j) => readGrid(grid, up, columnU, rowV(j)));
  function rowV(j: number): number {
    return vRange[0] + ((vRange[1] - vRange[0]) * j) / (rows - 1);
  }
  const u0 = -Math.PI / 2;
  return {
    x: (u, v) => readGrid(grid, across, u, v) - readGrid(grid, across, columnU, v),
    y: (v) => readGrid(grid, up, columnU, v),
    v: (y) => {
      const place = findPlace(column, y);
      return vRange[0] + ((vRange[1] - vRange[0]) * place) / (rows - 1);
    },
    u: (x, v) => {
      const y = ((v - vRange[0]) / (vRange[1] - vRange[0])) * (rows - 1);
      const j = Math.min(rows - 2, Math.max(0, Math.floor(y)));
      const row = new Float64Array(columns);
      for (let i = 0; i < columns; i++) {
        const low = across[j * columns + i];
        row[i] = low + (y - j) * (across[(j + 1) * columns + i] - low);
      }
      const start = readGrid(grid, across, columnU, v);
      return Array.from(x, (value) => u0 + (Math.PI * findPlace(row, value + start)) / (columns - 1));
    },
  };
}

/** Fractional index of `value` in a rising table. */
function findPlace(table: Float64Array, value: number): number {
  let low = 0;
  let high = table.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (table[middle] <= value) low = middle;
    else high = middle;
  }
  const gap = table[high] - table[low];
  return gap > 0 ? low + (value - table[low]) / gap : low;
}

import type { CellGrid } from './free-space.ts';

/** The grain line should run over at least this share of the piece's height (common practice). */
export const SHORTEST_GRAIN_SHARE = 1 / 3;
const WANTED_SHARE = 0.4;

/**
 * Places for the grain line: vertical runs of free cells (level lines may be crossed, so the grid must not hold
 * them), best first by preference for the left third, then the middle, then the right. Each is two points,
 * bottom and top. When no run is long enough, the single longest. Empty when no cell is free. O(cells).
 */
export function findGrainPlaces(grid: CellGrid, pieceHeight: number): Float64Array[] {
  const runs = longestRuns(grid);
  const wanted = [WANTED_SHARE, SHORTEST_GRAIN_SHARE].map(
    (share) => Math.ceil((share * pieceHeight) / grid.cell) + 1,
  );
  for (const cells of wanted) {
    const fitting = runs.filter((run) => run.length >= cells);
    if (fitting.length === 0) continue;
    const columns = [0.25, 0.5, 0.75, 0.08, 0.92].map(
      (share) => fitting[Math.floor(share * (fitting.length - 1))],
    );
    return columns.flatMap((run) =>
      [0.5, 0.1, 0.9].map((share) =>
        grainAt(grid, run.column, run.from + share * (run.length - cells), cells),
      ),
    );
  }
  const longest = runs.reduce((best, run) => (run.length > best.length ? run : best), runs[0]);
  return longest ? [grainAt(grid, longest.column, longest.from, longest.length)] : [];
}

function grainAt(grid: CellGrid, column: number, fromRow: number, cells: number): Float64Array {
  const x = grid.left + (column + 0.5) * grid.cell;
  const y = grid.bottom + (fromRow + 0.5) * grid.cell;
  return Float64Array.of(x, y, x, y + (cells - 1) * grid.cell);
}

interface Run {
  readonly column: number;
  readonly from: number;
  readonly length: number;
}

/** The longest free run of each column that has one, left to right. */
function longestRuns(grid: CellGrid): Run[] {
  const runs: Run[] = [];
  for (let column = 0; column < grid.columns; column++) {
    let best: Run = { column, from: 0, length: 0 };
    let length = 0;
    for (let row = 0; row < grid.rows; row++) {
      length = grid.taken[row * grid.columns + column] ? 0 : length + 1;
      if (length > best.length) best = { column, from: row - length + 1, length };
    }
    if (best.length > 0) runs.push(best);
  }
  return runs;
}

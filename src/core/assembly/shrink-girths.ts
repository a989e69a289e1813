import type { FlattenProblem } from '../flatten/index.ts';
import { type Mesh, measurePath } from '../mesh/index.ts';
import type { SeamedShell } from '../seams/index.ts';

/** Rows of the shell with the share of their girth that is cut, rising. */
interface RowShare {
  readonly v: number;
  readonly share: number;
}

/**
 * The problem for cloth that grows under filling or is covered: every row is drawn in, level by its own share, about an
 * upright axis, so the panels come out smaller in girth alone. Level lines keep their drawn-in length; uprights and
 * shoulders keep the body's, as lengths typed in. `cutGirth`: girth on the body → girth to cut, mm. O(vertices).
 */
export function shrinkGirths(
  problem: FlattenProblem,
  shell: SeamedShell,
  cutGirth: (girth: number) => number,
): FlattenProblem {
  const rows = sharesOfRows(shell, cutGirth);
  const axis = middleDepth(shell);
  const disks = problem.disks.map((mesh, d) => drawIn(mesh, shell.panels[d].chart, rows, axis));
  const isLevel = (disk: number, vertices: Uint32Array): boolean => {
    const { chart } = shell.panels[disk];
    return vertices.every((vertex) => Math.abs(chart[2 * vertex + 1] - chart[2 * vertices[0] + 1]) < 1e-9);
  };
  const keptPaths = problem.keptPaths.map((path) => {
    if (isLevel(path.disk, path.vertices)) return path;
    return { ...path, length: measurePath(problem.disks[path.disk], path.vertices) };
  });
  return { ...problem, disks, keptPaths };
}

/** Every level, and over them the neck; between two rows the share changes smoothly with the height. */
function sharesOfRows(shell: SeamedShell, cutGirth: (girth: number) => number): RowShare[] {
  const neck = shell.openings.find(({ id }) => id === 'neck');
  const loops = [...shell.levels, ...(neck ? [neck] : [])];
  const rows = loops.map(({ vertices }) => {
    const closed = Uint32Array.of(...vertices, vertices[0]);
    const girth = measurePath(shell.mesh, closed);
    return { v: shell.chart[2 * vertices[0] + 1], share: cutGirth(girth) / girth };
  });
  return rows.sort((a, b) => a.v - b.v);
}

function drawIn(mesh: Mesh, chart: Float64Array, rows: readonly RowShare[], axis: number): Mesh {
  const positions = mesh.positions.slice();
  for (let i = 0; 3 * i < positions.length; i++) {
    const share = shareAt(rows, chart[2 * i + 1]);
    positions[3 * i] *= share;
    positions[3 * i + 1] = axis + share * (positions[3 * i + 1] - axis);
  }
  return { ...mesh, positions };
}

function shareAt(rows: readonly RowShare[], v: number): number {
  const k = rows.findIndex((row) => row.v >= v);
  if (k < 0) return rows[rows.length - 1].share;
  if (k === 0) return rows[0].share;
  const [a, b] = [rows[k - 1], rows[k]];
  return a.share + ((b.share - a.share) * (v - a.v)) / (b.v - a.v);
}

/** Half way between the foremost and the hindmost point. */
function middleDepth({ mesh }: SeamedShell): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 1; i < mesh.positions.length; i += 3) {
    least = Math.min(least, mesh.positions[i]);
    most = Math.max(most, mesh.positions[i]);
  }
  return 0.5 * (least + most);
}

import { type Result, success } from '../base/index.ts';
import {
  type FlatDisk,
  type FlattenOptions,
  type FlattenProblem,
  flattenTogether,
} from '../flatten/index.ts';
import { type Mesh, measureFlatPath } from '../mesh/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { nameFlattenIssues } from './name-flatten-issues.ts';

/**
 * The flat panels, lying upright, with their points moved (#V × 2 mm each) and then as little more as it takes to have partners
 * equal again, mark by mark, and the rims of the openings as long as they were: they are sewn to plates. Strain stays that of
 * the panels as they were unrolled: what the moves ask of the cloth is for the filled form to tell. Issues as `flattenTogether`.
 */
export function recutPanels(
  shell: SeamedShell,
  problem: FlattenProblem,
  flat: readonly FlatDisk[],
  moves: readonly Float64Array[],
  options: Pick<FlattenOptions, 'isCancelled' | 'onProgress'> = {},
): Result<FlatDisk[]> {
  const moved = flat.map(({ positions }, d) => positions.map((x, i) => x + moves[d][i]));
  const recut: FlattenProblem = {
    ...problem,
    disks: problem.disks.map((mesh, d) => standUpright(mesh, moved[d])),
    keptPaths: shell.panels.flatMap(({ edges }, disk) =>
      edges
        .filter(({ kind }) => kind === 'opening')
        .map(({ id, vertices }) => {
          return { disk, vertices, length: measureFlatPath(flat[disk].positions, vertices), sum: id };
        }),
    ),
  };
  const made = flattenTogether(recut, options);
  if (!made.ok) return { ok: false, issues: nameFlattenIssues(made.issues, shell) };
  return success(
    made.value.map(({ positions, strain: { summary } }, d) => {
      const { strain } = flat[d];
      return { positions, strain: { ...strain, summary: { ...strain.summary, areaFlat: summary.areaFlat } } };
    }),
  );
}

/** A flat panel as a mesh in space, its up the body's. */
function standUpright({ triangles }: Mesh, flat: Float64Array): Mesh {
  const positions = new Float64Array((3 * flat.length) / 2);
  for (let v = 0; 2 * v < flat.length; v++) {
    positions[3 * v] = flat[2 * v];
    positions[3 * v + 2] = flat[2 * v + 1];
  }
  return { positions, triangles };
}
